package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
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

// SizeOf is how big a planned batch is meant to be, and what is to be expected of
// it by the keeper's rates.
func (p *Planner) SizeOf(b book.BatchPlan) Size {
	s := Size{Larvae: b.Larvae, Nucs: b.Nucs, Line: b.Line, Yard: b.Yard}
	left := float64(b.Larvae)
	rate := func(k practice.Key) float64 { left *= p.numbers.Get(k); return left }
	s.Takes, s.Cells = rate(practice.Take), rate(practice.RipeOfTakes)
	left = min(left, float64(b.Nucs))
	rate(practice.AcceptCell)
	s.Queens = rate(practice.LayingOfAccepted)
	return s
}
