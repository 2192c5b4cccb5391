package plan

import "lidmark/domain/book"

// Unplanned is what a grafted batch has left that nobody planned for an order or wished queens of by
// a day, so that its queens are for whoever takes their line: as [Planner.Left], with no more cells
// than it is dealt nucs, see [Planner.Dealt]. Ok is false of a batch that
// is for somebody.
func (p *Planner) Unplanned(b *book.Batch) (l Left, ok bool) {
	l = p.Left(b)
	if len(l.Plan.Orders) > 0 || l.Plan.Queens > 0 {
		return l, false
	}
	if l.Nucs > 0 {
		l.Nucs = min(l.Nucs, p.room(p.Waiting(b)))
	}
	return l, true
}
