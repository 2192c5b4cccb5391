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

// incubator is what the batch wants of the incubator, and what the others of the book, grafted
// and planned, leave of it on the day on which they want most.
func (w *want) incubator() {
	if w.s.Incubated == 0 {
		return
	}
	var taken []Hold
	for _, o := range w.inHand() {
		if w.s.Not.IsZero() || o.Not != w.s.Not {
			from, to := o.Incubates(o.Size)
			taken = append(taken, Hold{float64(o.Incubated), from, to})
		}
	}
	from, to := w.l.Incubates(w.s)
	n := w.add(InIncubator, float64(w.s.Incubated), CountCapped, GiveCells)
	n.To = to + 1
	n.have(max(0, w.numbers.Get(practice.IncubatorPlaces)-mostAtOnce(taken, from, to)))
}
