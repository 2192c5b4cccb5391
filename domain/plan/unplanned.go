package plan

import "lidmark/domain/book"

// Unplanned is what a grafted batch has left that nobody planned for an order or wished queens of by
// a day, so that its queens are for whoever takes their line: as [Planner.Left], with no more cells
// than nucs of its yard are free for, besides those that other batches of the book want. Ok is false of a batch that
// is for somebody.
func (p *Planner) Unplanned(b *book.Batch) (l Left, ok bool) {
	l = p.Left(b)
	if len(l.Plan.Orders) > 0 || l.Plan.Queens > 0 {
		return l, false
	}
	if in := p.Waiting(b).InNucs(Size{}); l.Nucs > 0 {
		l.Nucs = min(l.Nucs, p.Free(l.yard, in.From, in.To, b.Batch))
	}
	return l, true
}
