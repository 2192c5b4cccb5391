package rules

import (
	"fmt"
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// checkBees: fliers go home in the first day; the morning after shows who is
// light of bees.
func (p *pass) checkBees(n *nucCase) {
	made := n.yard.of(n.MadeUp)
	if n.MadeUp.IsZero() || !n.has.NearBees || n.yard.today > made+p.days(practice.SettlingTime) || p.seenSince(n, made) {
		return
	}
	f := Finding{
		Rule: CheckBees, Of: n.subject(), Act: ActCheckBees, Since: n.MadeUp.Instant,
		What: "some of its bees fly home",
		Why:  fmt.Sprintf("made up %s with bees of a yard they can fly back to", made.Short()),
		Do:   "Check the bees, add a cup where there are few",
		Sure: sureCalendar,
		Used: []practice.Key{practice.LossOfBroodCombs, practice.LossOfShutInBees, practice.SettlingTime, practice.MoveDistanceLeast},
	}
	f.From, f.Best, f.By = course.Days(made+1, made+1, made+p.days(practice.SettlingTime), n.yard.zone)
	p.add(n.yard, f)
}

// seenSince tells whether anybody saw or added bees on a day after one.
func (p *pass) seenSince(n *nucCase, day calendar.Day) bool {
	if n.Bees.Said() && n.yard.of(n.Bees.At) > day {
		return true
	}
	for _, t := range n.Got {
		if t.Cups > 0 && n.yard.of(t.At) > day {
			return true
		}
	}
	return false
}

// weak: fewer bees than the night needs.
func (p *pass) weak(n *nucCase) {
	if !n.has.Weak() || !n.kept(p.now) {
		return
	}
	cups := math.Ceil((n.has.Need - n.has.Bees) / p.numbers.Get(practice.BeesPerCup))
	f := Finding{
		Rule: Weak, Of: n.subject(), Act: ActAddBees, Amount: cups, Since: n.has.BeesFrom.Instant,
		What: fmt.Sprintf("weak: about %s bees, the night needs %s", bees(n.has.Bees), bees(n.has.Need)),
		Why:  fmt.Sprintf("%s, a %s", p.beesFrom(n), n.yard.strength.Night()),
		Do:   fmt.Sprintf("Add %s of bees in the evening", count(int(cups), "cup")),
		Sure: sureReckoned,
		Used: []practice.Key{practice.NeedAt8C, practice.NeedAt14C, practice.NeedAt20C, practice.ThinWoodFactor, practice.BeesPerCup, practice.HouseBeeDeaths, practice.ForagerDeaths},
	}
	if n.has.WeakThen() {
		f.Severity = Pressing
	} else {
		f.Act, f.Amount, f.Do = ActNone, 0, "See at the next look how many there are"
		f.Why += "; dwindled since by reckoning"
	}
	f.From, f.Best, f.By = course.Days(n.yard.today, n.yard.today, n.yard.today, n.yard.zone)
	p.add(n.yard, f)
}

func (p *pass) beesFrom(n *nucCase) string {
	day := n.yard.of(n.has.BeesFrom).Short()
	if n.Bees.Said() && n.Bees.At == n.has.BeesFrom {
		return fmt.Sprintf("bees on %g sides on %s", n.Bees.Value, day)
	}
	return fmt.Sprintf("made up %s with %g cups", day, n.has.MadeCups)
}

// light: food for a few days only.
func (p *pass) light(n *nucCase) {
	if !n.has.Light(p.numbers) || !n.kept(p.now) {
		return
	}
	last := int(n.has.FoodDays)
	f := Finding{
		Rule: Light, Of: n.subject(), Act: ActFeed, Amount: p.numbers.Get(practice.SyrupPerFeed),
		What: fmt.Sprintf("light: food for %s", count(last, "day")),
		Why:  fmt.Sprintf("about %.0f g of food for %s bees", math.Round(n.has.Food/10)*10, bees(n.has.Bees)),
		Do:   fmt.Sprintf("Feed %g l syrup, inside, in the evening", p.numbers.Get(practice.SyrupPerFeed)),
		Sure: sureReckoned,
		Used: []practice.Key{practice.LightBelow, practice.SugarPerDay, practice.HoneyPerSide, practice.SyrupPerFeed},
	}
	if n.yard.yard.Forage == book.InDearth {
		f.Do, f.Amount = "Feed fondant, no syrup in dearth", 0
	}
	if last == 0 {
		f.Severity, f.What = Pressing, "light: food for less than a day"
	}
	by := n.yard.today + calendar.Day(last)
	f.From, f.Best, f.By = course.Days(n.yard.today, by, by, n.yard.zone)
	p.add(n.yard, f)
}
