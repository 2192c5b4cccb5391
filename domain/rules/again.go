package rules

import (
	"cmp"

	"lidmark/domain/book"
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
}

// carried is what may be taken from a pass of the same instant and the same
// numbers, which may be nil.
func (p *pass) carried(was *pass) carried {
	if was == nil || !was.now.Equal(p.now) || was.numbers != p.numbers || was.zone.String() != p.zone.String() || !sameStill(p.packs, was.packs) {
		return carried{}
	}
	c := carried{was, make(map[book.NucID]*nucCase, len(was.nucs)), map[*yardCase]bool{}}
	for i := range was.nucs {
		n := &was.nucs[i]
		c.nucs[n.Nuc.Nuc] = n
	}
	for id, y := range p.yards {
		c.same[y] = y.sameAs(was.yards[id])
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
	if *p.view.Box(n.Box) != *c.pass.view.Box(n.Box) {
		return nil
	}
	return was
}

// sameAs tells whether a yard is to its nucs what it was. On a standstill other
// nucs are spoken of, so then it is not.
func (y *yardCase) sameAs(was *yardCase) bool {
	return was != nil && y.zone.String() == was.zone.String() &&
		y.yard.Standstill == nil && was.yard.Standstill == nil && y.yard.Treated == was.yard.Treated &&
		y.shutUntil == was.shutUntil && y.strength.Same(was.strength)
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
// clock.
func (c carried) sameBatch(p *pass, n *nucCase) bool {
	id, was := p.batchOf(n), c.pass.batchOf(n)
	return id == was && p.view.Batch(id).Number == c.pass.view.Batch(id).Number &&
		p.course.Emerges(id).Equal(c.pass.course.Emerges(id))
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
	if was := n.was; was != nil && was.order == n.order && sameCells(was.cell, n.cell) && sameCells(was.waits, n.waits) && sameCells(was.bars, n.bars) {
		n.found = was.found
		return
	}
	for i, r := range rows {
		if r.nuc != nil {
			n.row = i
			r.nuc(p, n)
		}
	}
}
