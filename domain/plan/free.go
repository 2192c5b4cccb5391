package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Free are the nucs of a yard that are free on a day, as the calendar has it: empty
// by then, or with a queen who is ready, and not wanted by a planned batch other
// than one.
func (p *Planner) Free(yard book.YardID, on calendar.Day, but book.BatchID) int {
	free := 0
	for n := range p.view.Nucs() {
		if n.Yard == yard && p.freeFrom(n) <= on {
			free++
		}
	}
	for b := range p.view.Plans() {
		if b.Batch == but || b.Yard != yard {
			continue
		}
		l := p.LadderOf(b)
		if l.Rung(MakeUpNucs).Best <= on && on < l.Rung(Ready).By {
			free -= b.Nucs
		}
	}
	return max(0, free)
}

// LadderOf is the ladder of a planned batch.
func (p *Planner) LadderOf(b book.BatchPlan) Ladder {
	at := p.GraftAt(b.Day)
	if b.Minute > 0 {
		at = b.Day.At(b.Minute/60, b.Minute%60, p.view.Zone())
	}
	return p.Ladder(at, max(1, b.Larvae), b.Yard)
}
