package plan

import (
	"slices"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Sized is a ladder for another number of larvae: of more cells one walks sooner.
// All that stands on the weather stays as it is; that is most of the work of one.
func (p *Planner) Sized(l Ladder, larvae int, yard book.YardID) Ladder {
	z := zoned{p.course.Zone(yard)}
	l.Clock = bee.Batch{Graft: l.Graft, Cells: larvae}.Clock(p.numbers)
	l.Rungs = slices.Clone(l.Rungs)
	for i := range l.Rungs {
		l.Rungs[i].NobodyFree = false
	}
	p.untilCells(&l, z, p.reared().Ripe(larvae)*p.numbers.Get(practice.MinutesGiveCell))
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
