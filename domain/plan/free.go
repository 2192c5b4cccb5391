package plan

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// InNucs are the nucs that a batch of a size takes up, from the day on which they are made up until the
// one before its queens are ready: on that day the next batch has them.
func (l Ladder) InNucs(s Size) Hold {
	return Hold{float64(s.Nucs), l.Rung(MakeUpNucs).Best, l.Rung(Ready).By - 1}
}

// Free are the nucs of a yard that are free on a day, as the calendar has it: empty
// by then, or with a queen who is ready, and up to another day, it included, not taken up by
// batches of the book other than one.
func (p *Planner) Free(yard book.YardID, from, to calendar.Day, but book.BatchID) int {
	return max(0, p.freeBy(yard, from)-p.wanted(yard, from, to, func(w Wanting) bool { return but.IsZero() || w.Not != but }))
}

// freeBy is how many nucs of a yard are free by a day, as the calendar has it.
func (p *Planner) freeBy(yard book.YardID, d calendar.Day) (free int) {
	for n := range p.view.Nucs() {
		if n.Yard == yard && p.freeFrom(n) <= d {
			free++
		}
	}
	return free
}

// wanted is how many nucs of a yard some batches of the book want at once at most, from one
// day to another, both included.
func (p *Planner) wanted(yard book.YardID, from, to calendar.Day, by func(Wanting) bool) int {
	var taken []Hold
	for _, w := range p.waiting() {
		if w.Yard == yard && by(w) {
			taken = append(taken, w.InNucs(w.Size))
		}
	}
	return int(mostAtOnce(taken, from, max(from, to)))
}

// LadderOf is the ladder of a planned batch, from the day of [book.View.GraftOn] on. It is shared and must not be changed.
func (p *Planner) LadderOf(b book.BatchPlan) Ladder {
	day := p.view.GraftOn(b)
	at := p.GraftAt(day)
	if b.Minute > 0 {
		at = day.At(b.Minute/60, b.Minute%60, p.view.Zone())
	}
	larvae := max(1, b.Larvae)
	return p.ladderAt(at, larvae, p.reared().Ripe(larvae), b.Nucs, b.Yard)
}

// ladderAt is the ladder of a batch, kept.
func (p *Planner) ladderAt(at time.Time, cells int, ripe float64, nucs int, yard book.YardID) Ladder {
	key := ladderKey{at.Unix(), cells, ripe, nucs, yard}
	p.mu.Lock()
	l, known := p.ladders[key]
	p.mu.Unlock()
	if !known {
		l = p.ladder(at, cells, ripe, float64(nucs), yard)
		p.mu.Lock()
		p.ladders[key] = l
		p.mu.Unlock()
	}
	return l
}

// ladderKey is all on which the ladder of a batch of the book stands, besides the view.
type ladderKey struct {
	graft int64
	cells int
	ripe  float64 // of them
	nucs  int
	yard  book.YardID
}

// SizeOf is how big a planned batch is meant to be, and what is to be expected of
// it by the keeper's rates; what is done for it already it wants no more.
func (p *Planner) SizeOf(b book.BatchPlan) Size {
	key := sizeKey{b.Larvae, b.Nucs, b.Virgins, b.Laying}
	p.mu.Lock()
	s, known := p.sizes[key]
	p.mu.Unlock()
	if !known {
		a := Answer{Rates: p.rates()}
		a.Rates.Virgins, a.Rates.Laying = b.Virgins, b.Laying
		s = p.sizeOf(&a, Graft{Larvae: b.Larvae, Nucs: b.Nucs})
		p.mu.Lock()
		p.sizes[key] = s
		p.mu.Unlock()
	}
	s.Line, s.Yard, s.Not = b.Line, b.Yard, b.Batch
	return s.without(b)
}

// sizeKey is all on which what is to be expected of a planned batch stands, besides
// the keeper's rates.
type sizeKey struct {
	larvae, nucs    int
	virgins, laying bool
}
