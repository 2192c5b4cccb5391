package plan

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// fate is what became of what a nuc was given of a batch. What holds of the nuc now,
// or held when its queen was caught, is asked of the book; for what was lost or
// replaced the looks are.
func (c *counting) fate(b *book.Batch, g book.Gift) fate {
	n := c.view.Nuc(g.Nuc)
	f, s := fate{virgin: g.Virgin}, c.span(g)
	f.torn, f.emerged, f.reigned = s.torn, s.open, s.queen
	if gapWithin(n, g.At, s.until) {
		f.gap = true
		return f
	}
	for _, caught := range n.Caught {
		if caught.Was.Batch == b.Batch && c.same(caught.Was.Given, g.At) {
			f.caught, f.culled = true, caught.Culled
			f.laidOr(caught.Was, true)
			return f
		}
	}
	switch {
	case n.Holds.Batch == b.Batch && c.same(n.Holds.Given, g.At):
		c.holds(&f, n.Holds, g, s)
	case s.laid, s.looks == 0:
		f.gap = true
	}
	return f
}

// laidOr is the fate by a holding: she laid, it is in doubt whether it was she, or
// else the book does not tell, or she did not.
func (f *fate) laidOr(h book.Holding, gap bool) {
	f.laid = !h.FirstEggs.IsZero() && h.Descent != book.DescentDoubtful
	f.gap = !f.laid && (gap || !h.FirstEggs.IsZero())
}

// holds is the fate of one who is still in the nuc, as far as the book is certain.
func (c *counting) holds(f *fate, h book.Holding, g book.Gift, s span) {
	f.laidOr(h, false)
	switch {
	case f.laid, f.gap:
	case h.Condition == book.DroneLayer:
		f.reigned = true
	case !c.over(g):
		f.open = true
	default:
		f.gap = !s.late // nobody looked when there had to be eggs
	}
}

// span is what was seen in a nuc from a gift on until it was given the next, or
// made up anew.
type span struct {
	until             calendar.Moment // zero: up to now
	looks             int
	laid              bool // eggs, larvae or worker brood
	late              bool // a look at an age at which nine in ten lay
	torn, open, queen bool
}

func (c *counting) span(g book.Gift) (s span) {
	eggs := g.At.Instant.Add(c.untilEggs(g))
	for _, e := range c.view.LinesSince(g.Nuc.Subject(), g.At.Instant) {
		switch f := e.Fact.(type) {
		case book.CellGiven, book.VirginPutIn, book.NucMadeUp, book.QueenPutIn:
			if e.At != g.At && !c.same(e.At, g.At) {
				s.until = e.At
				return s
			}
		case book.Looked:
			s.looks++
			s.laid = s.laid || f.Eggs == book.SingleEggs || f.Larvae || f.Brood.Some()
			s.late = s.late || e.At.Instant.After(eggs)
			s.torn = s.torn || f.Cell == book.CellTornAtSide
			s.open = s.open || f.Cell == book.CellOpenAtTip
			s.queen = s.queen || f.Queen == book.VirginSeen || f.Queen == book.QueenSeen
		}
	}
	return s
}

// untilEggs is how long after a gift nine in ten lay: of a cell from when it is out.
func (c *counting) untilEggs(g book.Gift) time.Duration {
	n := c.view.Numbers()
	until := n.Duration(practice.FirstEggsNineInTenBy)
	if !g.Virgin {
		until += n.Duration(practice.GraftToEmerge) - n.Duration(practice.CellsIn)
	}
	return until
}

// same tells whether two moments are of one day: what is written twice is one.
func (c *counting) same(a, b calendar.Moment) bool {
	return !a.IsZero() && a.Day(c.view.Zone()) == b.Day(c.view.Zone())
}

func gapWithin(n *book.Nuc, from, until calendar.Moment) bool {
	for _, g := range n.Gaps {
		if !g.At.Instant.Before(from.Instant) && (until.IsZero() || g.At.Instant.Before(until.Instant)) {
			return true
		}
	}
	return false
}
