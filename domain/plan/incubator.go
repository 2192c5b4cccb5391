package plan

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// incubated are the places in the incubator that so many ripe cells want; none where the
// keeper has no incubator.
func (p *Planner) incubated(cells float64) int {
	if p.numbers.Get(practice.IncubatorPlaces) == 0 {
		return 0
	}
	return int(math.Ceil(cells - hardlyAny))
}

// Incubates are the days on which the cells of a batch lie in the incubator, both included:
// from the day they are capped until they are given; virgins emerge in it, and stay until
// all are out.
func (l Ladder) Incubates(s Size) (from, to calendar.Day) {
	if s.Virgins {
		return l.Rung(CountCapped).Best, l.Rung(Emerge).By
	}
	return l.Rung(CountCapped).Best, l.Rung(GiveCells).Best - 1
}

// IncubatedOf are the cells of a grafted batch that are in the incubator or can still be
// moved there, of so many to be expected: those counted, once they were. Of cells that
// were left in a finisher until nobody may touch them it is none.
func (p *Planner) IncubatedOf(b *book.Batch, l Ladder, expected float64) int {
	if !b.Incubate && l.Rung(CountCapped).By < p.view.Today() {
		return 0
	}
	if b.Capped.Counted() || b.Ripe.Counted() {
		return p.incubated(float64(b.Left()))
	}
	return p.incubated(min(expected, float64(b.Left())))
}

// stay is how many cells lie in the incubator from one day to another.
type stay struct {
	cells    int
	from, to calendar.Day
}

// incubator is what the batch wants of the incubator, and what the others of the book, grafted
// and planned, leave of it on the day on which they want most.
func (w *want) incubator() {
	if w.s.Incubated == 0 {
		return
	}
	from, to := w.l.Incubates(w.s)
	n := w.add(InIncubator, float64(w.s.Incubated), CountCapped, GiveCells)
	n.To = to + 1
	n.have(max(0, w.numbers.Get(practice.IncubatorPlaces)-float64(most(w.stays(), from, to))))
}

// stays are those of all batches of the book but the one it is.
func (w *want) stays() (all []stay) {
	add := func(l Ladder, s Size) {
		from, to := l.Incubates(s)
		all = append(all, stay{s.Incubated, from, to})
	}
	for b := range w.view.Batches() {
		was, _ := w.view.BatchPlan(b.Batch)
		if b.Left() > 0 && b.Batch != w.s.Not {
			l := w.Waiting(b).Ladder
			s := w.SizeOf(book.BatchPlan{BatchPlanned: book.BatchPlanned{Larvae: b.Larvae}})
			add(l, Size{Incubated: w.IncubatedOf(b, l, s.Cells), Virgins: was.Virgins})
		}
	}
	for b := range w.view.Plans() {
		if b.Batch != w.s.Not {
			add(w.LadderOf(b), w.SizeOf(b))
		}
	}
	return all
}

// most is how many cells of some stays lie there on one day at most, of those from one to
// another.
func most(all []stay, from, to calendar.Day) (cells int) {
	for d := from; d <= to; d++ {
		sum := 0
		for _, s := range all {
			if s.from <= d && d <= s.to {
				sum += s.cells
			}
		}
		cells = max(cells, sum)
	}
	return cells
}
