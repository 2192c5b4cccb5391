package rules

import (
	"fmt"
	"math"

	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// toldAhead tells whether a day lies ahead, and no further than such things are
// told.
func (p *pass) toldAhead(n *nucCase, d calendar.Day) bool {
	return d > n.yard.today && d <= n.yard.today+p.days(practice.StrengthToldAhead)
}

// weakAhead tells of a nuc that will have too few bees within days, so that they
// are counted on that day: so few that they are too few for a usual night. One cold
// night to come makes no line of every nuc; weak tells of those when it is there.
func (p *pass) weakAhead(n *nucCase) {
	a := n.has.Ahead
	if !p.toldAhead(n, a.Weak) || a.WeakBees >= n.has.Usual {
		return
	}
	f := Finding{
		Rule: Weak, Of: n.subject(), Since: n.has.BeesFrom.Instant,
		What: "weak from " + a.Weak.ShortFrom(p.today),
		Why:  fmt.Sprintf("about %s bees then, the night needs %s; %s", bees(a.WeakBees), bees(a.WeakNeed), p.beesFrom(n)),
		Do:   "See at the next look how many there are",
		Sure: sureReckoned,
		Used: []practice.Key{practice.StrengthAhead, practice.StrengthToldAhead, practice.HouseBeeDeaths, practice.ForagerDeaths, practice.UsualNight, practice.LookError},
	}
	f.From, f.Best, f.By = course.Days(a.Weak, a.Weak, a.Weak, n.yard.zone)
	p.addTo(n, f)
}

// lightAhead tells of a nuc that will be light within days, so that it is fed on
// that day.
func (p *pass) lightAhead(n *nucCase) {
	from := n.has.Ahead.Light
	if !p.toldAhead(n, from) {
		return
	}
	f := Finding{
		Rule: Light, Of: n.subject(),
		What: "light from " + from.ShortFrom(p.today),
		Why:  fmt.Sprintf("about %.0f g of food, enough for %s today; feed in the evening", math.Round(n.has.Food/10)*10, count(int(n.has.FoodDays), "day")),
		Sure: sureReckoned,
		Used: []practice.Key{practice.StrengthAhead, practice.StrengthToldAhead, practice.LightBelow, practice.SugarPerDay, practice.SyrupPerFeed},
	}
	p.feed(n, &f)
	last := from + p.days(practice.LightBelow) - 1
	f.From, f.Best, f.By = course.Days(from, from, last, n.yard.zone)
	p.addTo(n, f)
}
