package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// Prospect is what is to be expected of the queen of one nuc that was looked at.
type Prospect struct {
	Proven bool
	From   calendar.Day // not ready before: too young, too few days since eggs were seen, or a wait after a treatment
	Sure   float64      // the chance that she is the one who was given, if one lays; 0: her descent is in doubt

	eggs  *course.Eggs
	after int     // days from her first egg to ready
	good  float64 // the share of those who lay that are good enough
}

// Prospect is that of the queen of a nuc; false where none is on her way.
func (p *Planner) Prospect(n *book.Nuc) (k Prospect, ok bool) {
	of, held := p.course.Of(n), p.course.Held(n)
	if held.From == 0 || of.Emerged.IsZero() {
		return k, false
	}
	chances := held.Chances()
	k = Prospect{
		Proven: n.Holds.Condition == book.GoodBrood && of.Condition == book.GoodBrood,
		Sure:   chances.Sure(), eggs: p.course.Eggs(n),
		after: p.numbers.Days(practice.ReadyAfterFirstEgg), good: p.rates().Link[GoodOfLaying].Mean(),
	}
	switch {
	case p.view.DescentIn(n) == book.DescentDoubtful:
		k.Sure = 0
	case k.Proven:
		k.Sure = 1
	}
	zone := p.course.Zone(n.Yard)
	k.From = calendar.DayOf(of.Emerged, zone) + p.days(practice.LeastAgeAtHandOver)
	if !of.ReadyAt.IsZero() {
		k.From = max(k.From, calendar.DayOf(of.ReadyAt, zone))
	}
	k.From = max(k.From, p.Waits(n))
	return k, true
}

// Waits is the day until which the queen of a nuc may not leave it after a treatment; 0: she may.
func (p *Planner) Waits(n *book.Nuc) calendar.Day {
	if zone := p.course.Zone(n.Yard); n.Treated.Waits(p.view.Today(), zone) {
		return n.Treated.Until(zone)
	}
	return 0
}

// Ever is the chance that she is ever ready and good enough, of whatever line.
func (k Prospect) Ever() float64 {
	if k.Proven {
		return 1
	}
	return min(1, k.eggs.Ever()) * k.good
}

// By is the chance that she is ready by a day and good enough, or laying by then, and of her
// line, where that matters.
func (k Prospect) By(d calendar.Day, laying, named bool) float64 {
	chance := 1.0
	switch {
	case laying:
		chance = min(1, k.eggs.By(d))
	case d < k.From:
		return 0
	case !k.Proven:
		chance = min(1, k.eggs.By(d-calendar.Day(k.after))) * k.good
	}
	if named {
		chance *= k.Sure
	}
	return chance
}
