package plan

import (
	"slices"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Sized is a ladder for another number of larvae, and nucs: of more cells one walks sooner, and more
// nucs want a day with more time.
// All that stands on the weather stays as it is; that is most of the work of one.
func (p *Planner) Sized(l Ladder, larvae, nucs int, yard book.YardID) Ladder {
	z := zoned{p.course.Zone(yard)}
	l.Clock = bee.Batch{Graft: l.Graft, Cells: larvae}.Clock(p.numbers)
	l.Rungs = slices.Clone(l.Rungs)
	for i := range l.Rungs {
		l.Rungs[i].NobodyFree = false
	}
	p.untilCells(&l, z, p.reared().Ripe(larvae), float64(nucs))
	p.free(&l, z)
	return l
}

// FreeFrom are the days from which each nuc of a yard can take the next cell, as
// the calendar has it, the first of them first; 0 of those that are free.
func (p *Planner) FreeFrom(yard book.YardID) (all []calendar.Day) {
	for n := range p.view.Nucs() {
		if n.Yard == yard {
			all = append(all, p.freeFrom(n))
		}
	}
	slices.Sort(all)
	return all
}
