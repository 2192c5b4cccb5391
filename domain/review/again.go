package review

import (
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// lookKey is a look on the second day, seen from the start of the first.
type lookKey struct{ row, look calendar.Day }

// foundOn is the chance by state at the start of a row that a look on a later day
// finds no queen.
func (h *horizon) foundOn(none *course.Figure, row, look calendar.Day) *course.Figure {
	h.mu.Lock()
	defer h.mu.Unlock()
	key := lookKey{row, look}
	f := h.again[key]
	if f == nil {
		f = none
		for d := look; d > row; d-- {
			f = h.course.Step(h.at, d-1).Before(f)
		}
		h.again[key] = f
	}
	return f
}

// anew is what a ripe cell brings a nuc without a queen at the start of a day: in queens,
// costs and the days until then taken off, and the share of its bees kept by it.
type anew struct{ queens, kept float64 }

func (r *reckoner) anew(h *horizon, look calendar.Day) anew {
	h.mu.Lock()
	a, ok := h.anew[look]
	h.mu.Unlock()
	if ok {
		return a
	}
	n, at := r.numbers, h.on(look)
	left := r.model.Queenless(false)
	b := left
	r.model.GiveCell(&b, course.EmergingIn(n.Days(practice.GraftToEmerge)-n.Days(practice.CellsIn)))
	costs := n.Get(practice.PriceCell) + n.Get(practice.MinutesGiveCell)*n.Get(practice.WorthMinute)
	a = anew{b.Expect(at.queens) - costs - float64(look.Sub(r.today))*n.Get(practice.WorthNucDay), b.Expect(at.kept) - left.Expect(at.kept)}
	h.mu.Lock()
	h.anew[look] = a
	h.mu.Unlock()
	return a
}

// after is the day of the look after a gift.
func (h *held) after() calendar.Day {
	return h.row() + calendar.Day(h.of.numbers.Days(practice.LookAgainBy))
}

// later is the chance that the look after a gift finds no queen, of a belief that holds since.
func (h *held) later(b *course.Belief) float64 {
	return b.Expect(h.horizon.foundOn(h.of.isNone, h.row(), h.after()))
}

// again is what the next look is worth: those found without a queen get a cell.
func (k *nucCase) again(w Way, f figure) float64 {
	share, look := f.again, k.held.after()
	if w.Kind == Leave || w.Kind == AddBees || w.Kind == Feed || w.Kind == Narrow {
		if look = k.nextLook(); k.held.From == 0 || look <= k.held.Row {
			return 0
		}
		share = k.held.Expect(k.held.horizon.foundOn(k.isNone, k.held.Row, look))
	}
	if share == 0 {
		return 0
	}
	a := k.anew(k.held.horizon, look)
	return share * max(0, a.queens+k.cups*a.kept*k.numbers.Get(practice.PriceCup))
}
