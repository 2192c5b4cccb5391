package rules

import (
	"fmt"
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/strength"
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
		Why:  fmt.Sprintf("made up %s with bees of a yard they can fly back to", made.ShortFrom(p.today)),
		Do:   "Check the bees, add a cup where there are few",
		Sure: sureCalendar,
		Used: []practice.Key{practice.LossOfBroodCombs, practice.LossOfShutInBees, practice.SettlingTime, practice.MoveDistanceLeast},
	}
	f.From, f.Best, f.By = course.Days(made+1, made+1, made+p.days(practice.SettlingTime), n.yard.zone)
	p.addTo(n, f)
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
	if !n.kept(p.now) {
		return
	}
	if !n.has.Weak() {
		p.weakAhead(n)
		return
	}
	f := Finding{
		Rule: Weak, Of: n.subject(), Since: n.has.BeesFrom.Instant,
		What: fmt.Sprintf("weak: about %s bees, the night needs %s", bees(n.has.Bees), bees(n.has.Need)),
		Why:  p.beesFrom(n) + ", a " + n.yard.night,
		Sure: sureReckoned,
		Used: []practice.Key{
			practice.NeedAt8C, practice.NeedAt14C, practice.NeedAt20C, practice.ThinWoodFactor, practice.LookError, practice.AddBeesUnder,
			practice.BeesPerSide, practice.CombSideArea, practice.BeesPerCup, practice.HouseBeeDeaths, practice.ForagerDeaths,
		},
	}
	by := n.yard.today
	if n.has.WeakSince() {
		by = n.yard.of(n.has.BeesFrom)
	}
	p.strengthen(n, &f)
	f.From, f.Best, f.By = course.Days(by, by, by, n.yard.zone)
	p.addTo(n, f)
}

// strengthen says what helps: bees where many are wanting, warmth where few
// are, a look where nobody has seen that they are few.
func (p *pass) strengthen(n *nucCase, f *Finding) {
	switch {
	case !n.has.WeakThen():
		f.Do = "See at the next look how many there are"
		f.Why += "; dwindled since by reckoning"
	case n.has.TooFew(p.numbers):
		f.Severity, f.Act = Pressing, ActAddBees
		f.Amount = math.Ceil((n.has.Need - n.has.Bees) / p.numbers.Get(practice.BeesPerCup))
		f.Do = fmt.Sprintf("Add %s of bees", count(int(f.Amount), "cup"))
		if home := p.packs; stays(home, n.Yard) {
			f.Do += " of its own yard"
			f.Why += fmt.Sprintf("; %s is on standstill", home.Name)
		}
		f.Why += "; best in the evening"
	default:
		f.Severity, f.Act, f.Amount = Pressing, ActNarrowEntrance, p.door(n.has.Bees)
		f.Do = fmt.Sprintf("Narrow the entrance to %.1f cm², insulate, feed", f.Amount)
		if n.Entrance.Said() && n.Entrance.Value <= f.Amount {
			f.Act, f.Do = ActNone, "Its entrance is narrow already: insulate, feed"
		}
	}
}

// door is the entrance in cm² that so many bees can guard.
func (p *pass) door(bees float64) float64 { return strength.Door(bees, p.numbers) }

func (p *pass) beesFrom(n *nucCase) string {
	day := n.yard.of(n.has.BeesFrom).ShortFrom(p.today)
	if n.Bees.Said() && n.Bees.At == n.has.BeesFrom {
		words := fmt.Sprintf("bees on %s on %s", sides(n.Bees.Value), day)
		if n.has.BeesSeen > 0 {
			words += fmt.Sprintf(" (%s, weighed with those reckoned)", bees(n.has.BeesSeen))
		}
		if n.has.SideGuess {
			words += fmt.Sprintf(", sides of %g dm² assumed", p.numbers.Get(practice.CombSideArea))
		}
		return words
	}
	return fmt.Sprintf("made up %s with %g cups", day, n.has.MadeCups)
}

// light: food for a few days only.
func (p *pass) light(n *nucCase) {
	if !n.kept(p.now) {
		return
	}
	if !n.has.Light(p.numbers) {
		p.lightAhead(n)
		return
	}
	last := calendar.Day(n.has.FoodDays)
	food := fmt.Sprintf("about %.0f g of food", math.Round(n.has.Food/10)*10)
	if n.has.BeesKnown {
		food += fmt.Sprintf(" for %s bees", bees(n.has.Bees))
	}
	f := Finding{
		Rule: Light, Of: n.subject(),
		What: fmt.Sprintf("light: food for %s", count(int(last), "day")),
		Why:  food + "; feed in the evening",
		Sure: sureReckoned,
		Used: []practice.Key{practice.LightBelow, practice.StarvedAfter, practice.SugarPerDay, practice.HoneyPerSide, practice.CombSideArea, practice.SyrupPerFeed},
	}
	p.feed(n, &f)
	if last == 0 {
		f.Severity, f.What = Pressing, "light: food for less than a day"
	}
	by := n.yard.today + last
	if out := n.has.FoodOut; out != 0 {
		by = out
		p.foodOut(n, out, &f)
	}
	f.From, f.Best, f.By = course.Days(min(by, n.yard.today), by, by, n.yard.zone)
	p.addTo(n, f)
}

// feed says what a nuc is fed.
func (p *pass) feed(n *nucCase, f *Finding) {
	f.Act = ActFeed
	switch {
	case n.yard.today < n.yard.shutUntil:
		f.Do = "Feed fondant, no syrup among robbers"
	case n.yard.yard.Forage == book.InDearth:
		f.Do = "Feed fondant, no syrup in dearth"
	default:
		f.Amount = p.numbers.Get(practice.SyrupPerFeed)
		f.Do = fmt.Sprintf("Feed %g l syrup, inside", f.Amount)
	}
}

// foodOut tells of a nuc whose food has run out, and that it may have starved
// when that was days ago.
func (p *pass) foodOut(n *nucCase, out calendar.Day, f *Finding) {
	f.What = "no food since " + out.ShortFrom(p.today)
	if n.Stores.Said() && n.Stores.Value == 0 && n.yard.of(n.Stores.At) == out {
		f.Sure = sureSeen
	}
	if n.yard.today >= out+p.days(practice.StarvedAfter) {
		f.What += ": starved?"
		f.Do = "Look whether it lives, then feed fondant"
		if f.Amount > 0 {
			f.Do = fmt.Sprintf("Look whether it lives, then feed %g l syrup", f.Amount)
		}
	}
}

// sides is a number of sides of comb in words; a side may be half covered.
func sides(n float64) string {
	if n == 1 {
		return "1 side"
	}
	return fmt.Sprintf("%g sides", n)
}
