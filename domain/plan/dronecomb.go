package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// CombIn is the day within the last year on which the drone comb of a batch went in; 0:
// it did not yet.
func CombIn(v *book.View, id book.BatchID) (in calendar.Day) {
	for _, e := range v.LinesSince(id.Subject(), v.On().AddDate(-1, 0, 0)) {
		if f, ok := e.Fact.(book.BatchReadied); ok && f.Step == book.DroneCombIn {
			in = e.At.Day(v.Zone())
		}
	}
	return in
}

// CombServes tells whether drones of a comb that goes in on a day are ripe when the virgins of a
// batch begin to fly, and at their best until the last of them have.
func (p *Planner) CombServes(in calendar.Day, l Ladder) bool {
	fly, at := l.Rung(Fly), p.DronesOf(in)
	return at.From <= fly.From && fly.By <= at.By
}

// CombTooLate tells whether a comb that goes in on a day gives no ripe drones before the
// virgins of a batch have flown.
func (p *Planner) CombTooLate(in calendar.Day, l Ladder) bool {
	return in+p.days(practice.DroneRipe) > l.Rung(Fly).By
}

// DroneCombs are how many drone combs are hung in for the virgins of a batch of a size: one for each
// drone colony near their yard, as far as so many virgins want them, see [DroneColoniesFor]; as many as
// they want where the book knows none.
func (p *Planner) DroneCombs(s Size) float64 {
	wanted := DroneColoniesFor(s.Nucs, p.numbers)
	if have := float64(len(p.DroneColoniesNear(s.Yard))); have > 0 {
		return min(have, wanted)
	}
	return wanted
}
