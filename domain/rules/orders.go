package rules

import "lidmark/domain/book"

// shareQueens marks, in walking order, ready queens for the open orders that want
// them: the first order by priority and day first, each beyond the caged queens that
// will do for it. A caged queen goes for one order only.
func (p *pass) shareQueens() {
	caged, taken := matedCaged(p.view), map[book.QueenID]bool{}
	for o := range p.view.Orders() {
		wanted := o.Open()
		if wanted == 0 {
			continue
		}
		fit, _ := cagedFor(p.view, o, caged)
		for _, q := range fit {
			if wanted > 0 && !taken[q.Queen] {
				taken[q.Queen] = true
				wanted--
			}
		}
		for i := range p.nucs {
			n := &p.nucs[i]
			if wanted > 0 && !n.order && p.canBeCaught(n) && o.TakesNuc(n.Nuc, p.view.LineIn(n.Nuc)) {
				n.order = true
				wanted--
			}
		}
	}
}
