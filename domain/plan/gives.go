package plan

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Gives are the chances of how many queens a grafted batch gives in all by a day, ready by then
// or laying: those caught of it that nobody else has, those of its nucs that were looked at, as
// what they hold has it, and those of whom nothing is known, given or still to be given.
func (p *Planner) Gives(b *book.Batch, by calendar.Day, laying bool) (c Chances) {
	l, unseen := p.Left(b), 0
	for _, q := range l.Caught {
		if p.stays(q, l.Plan.Orders) {
			c = c.With(One(1))
		}
	}
	for _, n := range l.Seen {
		if k, ok := p.Prospect(n); ok {
			c = c.With(One(k.By(by, laying, p.named(l))))
		}
	}
	for _, n := range l.Unseen {
		if laying || p.Waits(n) <= by {
			unseen++
		}
	}
	return c.With(p.Unlearnt(l, unseen, true, by, laying))
}

// named tells whether it matters for a batch of which line its queens are.
func (p *Planner) named(l Left) bool {
	if len(l.Plan.Orders) == 0 {
		return l.Batch.Line != ""
	}
	return slices.ContainsFunc(l.Plan.Orders, func(o book.OrderID) bool { return p.view.Order(o).Line != "" })
}

// stays tells whether a caught queen is still to go to some orders: she is in hand. Where
// there are none it is no matter who has her.
func (p *Planner) stays(q book.QueenID, orders []book.OrderID) bool {
	return len(orders) == 0 || p.view.Queen(q).InHand()
}

// One are the chances of one queen who comes with a chance.
func One(chance float64) Chances { return Chances{[]float64{1 - chance, chance}} }

// Begun are the other grafted batches of the wish of a planned one, by the hour of their grafts.
func (p *Planner) Begun(b book.BatchPlan) (all []book.BatchPlan) {
	for g := range p.view.Batches() {
		if was, _ := p.view.BatchPlan(g.Batch); g.Batch != b.Batch && was.Queens > 0 && p.oneWish(was, b) {
			all = append(all, was)
		}
	}
	return all
}

// queensOf are the queens that are wished of the grafts of one wish: their shares together,
// for orders no more than these still wait for, since each may be planned for all of them and
// some may have gone by now.
func (p *Planner) queensOf(of []book.BatchPlan) (queens int) {
	var orders []book.OrderID
	for _, b := range of {
		queens += b.Queens
		orders = append(orders, b.Orders...)
	}
	open := 0
	for i, o := range orders {
		if !slices.Contains(orders[:i], o) {
			open += p.view.Order(o).Open()
		}
	}
	if open > 0 {
		queens = min(queens, open)
	}
	return queens
}
