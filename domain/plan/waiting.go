package plan

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// RipeOf is how many ripe cells are to be expected of those of a grafted batch that can still
// be given. Once anybody counted that is what the book says; before that it goes by the
// rates.
func (r Rates) RipeOf(b *book.Batch) int {
	left := b.Unplaced()
	if !b.Uncounted() {
		return left
	}
	return min(left, max(1, int(math.Round(r.Ripe(b.Larvae)))-(b.Cells()-left)))
}

// Waiting is a grafted batch with the nucs that wait for its cells: as many as are planned
// and not given yet, no more than ripe cells are to be expected, and none once the last day
// to give them is past. Said to be made up, and none is there, they are not.
func (p *Planner) Waiting(b *book.Batch) Wanting {
	l, ripe := p.Left(b), p.reared().RipeOf(b)
	s := Size{Line: b.Line, Yard: l.yard, Not: b.Batch}.without(l.Plan)
	s.StartersSet = true
	s.NucsMade = s.NucsMade && p.live()[s.Yard] > 0
	s.Nucs = max(0, min(ripe, l.Nucs))
	return Wanting{p.ladderAt(b.At.Instant, max(1, b.Cells()), float64(ripe), s.Nucs, s.Yard), s}
}

// liveNucs are how many nucs of each yard are alive and free for a cell, by the calendar.
func (p *Planner) liveNucs() map[book.YardID]int {
	live := map[book.YardID]int{}
	for n := range p.view.Nucs() {
		if keepsBees(n) && p.freeFrom(n) == 0 {
			live[n.Yard]++
		}
	}
	return live
}

// mostOf is the yard that has most of what is counted, the first of equals; another where
// none has any.
func (p *Planner) mostOf(count map[book.YardID]int, other book.YardID) book.YardID {
	most := other
	for y := range p.view.Yards() {
		if count[y.Yard] > count[most] {
			most = y.Yard
		}
	}
	return most
}

// allWaiting are the batches of the book for which nucs wait: those grafted, then those
// planned, in the order of the plans.
func (p *Planner) allWaiting() (all []Wanting) {
	out := p.view.From() - p.days(practice.GraftToEmergeBy)
	for b := range p.view.Batches() {
		if b.Unplaced() == 0 || b.At.Day(p.view.Zone()) < out {
			continue
		}
		if w := p.Waiting(b); w.Nucs > 0 {
			all = append(all, w)
		}
	}
	for b := range p.view.ToGraft() {
		s := Size{Larvae: b.Larvae, Nucs: b.Nucs, Yard: b.Yard, Not: b.Batch}
		all = append(all, Wanting{p.LadderOf(b), s.without(b)})
	}
	return all
}
