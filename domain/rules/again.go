package rules

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/weather"
)

// What the rules say of a nuc at an instant follows from its case: its own
// record, its yard and box, the nucs that gave it bees, the batch its queen is
// of, the batches that keep a cell for it, and the orders. Where all of that is
// as it was in an earlier pass, what was said is said again. So a line that is
// written costs the nucs it reaches, not all.

// carried is an earlier pass to go on from. The zero carried has nothing to say.
type carried struct {
	pass *pass
	nucs map[book.NucID]*nucCase
	same map[*yardCase]bool // yards that are as they were

	otherClock map[book.BatchID]bool // batches that are not
}

// carried is what may be taken from a pass of the same instant and the same
// numbers, which may be nil.
func (p *pass) carried(was *pass) carried {
	if was == nil || !was.now.Equal(p.now) || was.numbers != p.numbers || was.zone.String() != p.zone.String() || !sameStill(p.packs, was.packs) {
		return carried{}
	}
	c := carried{was, make(map[book.NucID]*nucCase, len(was.nucs)), map[*yardCase]bool{}, otherClocks(p, was)}
	for i := range was.nucs {
		n := &was.nucs[i]
		c.nucs[n.Nuc.Nuc] = n
	}
	for id, y := range p.yards {
		if c.same[y] = y.sameAs(was.yards[id]); c.same[y] {
			y.strength.GoOn(was.yards[id].strength)
		}
	}
	return c
}

// sameStill tells whether a standstill keeps the same in two readings of a yard.
func sameStill(a, b *book.Yard) bool {
	return a == b || a.Standstill == nil && b.Standstill == nil || a.Standstill != nil && b.Standstill != nil && a.Name == b.Name
}

// of is the earlier case of a nuc if its bees, food and queen are reckoned from
// it as they are now; else nil.
func (c carried) of(p *pass, n *nucCase) *nucCase {
	was := c.nucs[n.Nuc.Nuc]
	if was == nil || was.Nuc != n.Nuc || !c.same[n.yard] || !c.sameGivers(p, n) || !c.sameBatch(p, n) {
		return nil
	}
	if *p.view.Box(n.Box) != *c.pass.view.Box(n.Box) || p.course.SpotOf(n.Nuc) != c.pass.course.SpotOf(n.Nuc) || p.view.DescentIn(n.Nuc) != c.pass.view.DescentIn(n.Nuc) {
		return nil
	}
	return was
}

// sameAs tells whether a yard is to its nucs what it was. On a standstill other
// nucs are spoken of, so then it is not.
func (y *yardCase) sameAs(was *yardCase) bool {
	return was != nil && y.zone.String() == was.zone.String() &&
		y.yard.Standstill == nil && was.yard.Standstill == nil && y.yard.Treated == was.yard.Treated &&
		y.shutUntil == was.shutUntil && weather.Same(y.yard, was.yard) && y.strength.Same(was.strength)
}

// sameGivers tells whether the nucs that gave bees stand where they stood.
func (c carried) sameGivers(p *pass, n *nucCase) bool {
	for _, t := range n.Got {
		if id, ok := t.From.Nuc(); ok && p.view.Nuc(id).Yard != c.pass.view.Nuc(id).Yard {
			return false
		}
	}
	return true
}

// sameBatch tells whether the batch of a nuc's queen is the same by number and
// clock, and all that was given to the nuc in its present life of the same clocks.
func (c carried) sameBatch(p *pass, n *nucCase) bool {
	id, was := p.batchOf(n), c.pass.batchOf(n)
	if id != was || p.view.Batch(id).Number != c.pass.view.Batch(id).Number || c.otherClock[id] {
		return false
	}
	for _, e := range p.view.LinesSince(n.subject(), n.MadeUp.Instant) {
		switch f := e.Fact.(type) {
		case book.CellGiven:
			if c.otherClock[f.Batch] {
				return false
			}
		case book.VirginPutIn:
			if c.otherClock[f.Batch] || !c.sameQueen(p, f.Queen) {
				return false
			}
		}
	}
	return true
}

// sameQueen tells whether a queen put in is of the same age and batch.
func (c carried) sameQueen(p *pass, id book.QueenID) bool {
	if id.IsZero() {
		return true
	}
	q, was := p.view.Queen(id), c.pass.view.Queen(id)
	return q.Emerged.Equal(was.Emerged) && q.Batch == was.Batch && !c.otherClock[q.Batch]
}

// otherClocks are the batches whose clock is another than it was.
func otherClocks(p, was *pass) map[book.BatchID]bool {
	other := map[book.BatchID]bool{}
	for _, v := range []*book.View{p.view, was.view} { // a batch may be new, or struck since
		for b := range v.Batches() {
			other[b.Batch] = !p.sameClock(was, b.Batch)
		}
	}
	return other
}

func (p *pass) sameClock(was *pass, id book.BatchID) bool {
	a, b := p.view.Batch(id), was.view.Batch(id)
	return a == b || sameSigns(a, b) && p.course.Emerges(id).Equal(was.course.Emerges(id))
}

// sameSigns tells whether the same was seen of two batches, and the same warmth read.
func sameSigns(a, b *book.Batch) bool {
	return slices.Equal(a.Signs, b.Signs) && slices.Equal(a.Log, b.Log)
}

func (p *pass) batchOf(n *nucCase) book.BatchID {
	return cmp.Or(n.Holds.Batch, p.view.Queen(n.Holds.Queen).Batch)
}

// sameCells tells whether two batches are to a nuc they keep a cell for the
// same; nil is none.
func sameCells(a, b *batchCase) bool {
	if a == nil || b == nil {
		return a == b
	}
	return a.Batch.Batch == b.Batch.Batch && a.Number == b.Number && a.graft == b.graft &&
		a.off == b.off && a.best.Equal(b.best) && a.hard.Equal(b.hard) && a.yard.zone.String() == b.yard.zone.String() && sameStill(a.yard.yard, b.yard.yard)
}

// judge lets the rules look at a nuc, or takes over what they found.
func (p *pass) judge(n *nucCase, rows []row) {
	if was := n.was; was != nil && was.order == n.order && sameCells(was.cell, n.cell) && sameCells(was.waits, n.waits) && sameCells(was.spare, n.spare) && sameCells(was.bars, n.bars) && sameCells(was.given, n.given) {
		n.found = was.found
		return
	}
	for i, r := range rows {
		if r.nuc != nil {
			n.row = i
			r.nuc(p, n)
		}
	}
	p.atOdds(n)
}
