package plan

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Gives are the chances of how many queens a grafted batch gives in all by a day, ready by then
// or laying: those caught of it that nobody else has, those of its nucs that were looked at, as
// what they hold has it, and those of whom nothing is known, given or still to be given.
func (p *Planner) Gives(b *book.Batch, by calendar.Day, laying bool) (c Chances) {
	was, _ := p.view.BatchPlan(b.Batch)
	unseen := 0
	for n := range p.view.Nucs() {
		for _, caught := range n.Caught {
			if caught.Was.Batch == b.Batch && !caught.Culled && p.stays(caught.Queen, was.Orders) {
				c = c.With(oneWith(1))
			}
		}
		switch {
		case n.EndedBy != "" || n.Holds.Batch != b.Batch:
		case unseenIn(n):
			unseen++
		default:
			c = c.With(oneWith(p.held(n, by, laying)))
		}
	}
	return c.With(p.unlearnt(b, unseen, by, laying))
}

// unseenIn tells whether nobody has looked into a nuc since its cell or virgin was given.
func unseenIn(n *book.Nuc) bool {
	last, looked := n.LastLook()
	return n.Holds.Since == n.Holds.Given && n.Holds.FirstEggs.IsZero() && (!looked || last.At.Before(n.Holds.Given))
}

// stays tells whether a caught queen is still to go to some orders: she is in hand. Where
// there are none it is no matter who has her.
func (p *Planner) stays(q book.QueenID, orders []book.OrderID) bool {
	return len(orders) == 0 || p.view.Queen(q).InHand()
}

// held is the chance that the queen of a nuc that was looked at is ready by a day and good enough, or
// laying by then.
func (p *Planner) held(n *book.Nuc, by calendar.Day, laying bool) float64 {
	eggs := p.course.Eggs(n)
	if laying {
		return min(1, eggs.By(by))
	}
	of := p.course.Of(n)
	if n.Holds.Condition == book.GoodBrood && of.Condition == book.GoodBrood { // she is proven
		return 1
	}
	if of.Emerged.IsZero() || calendar.DayOf(of.Emerged, p.course.Zone(n.Yard))+p.days(practice.LeastAgeAtHandOver) > by {
		return 0
	}
	return min(1, eggs.By(by-p.days(practice.ReadyAfterFirstEgg))) * p.rates().Link[GoodOfLaying].Mean()
}

// oneWith are the chances of one queen who comes with a chance.
func oneWith(chance float64) Chances { return Chances{[]float64{1 - chance, chance}} }

// Begun are the grafted batches of the wish of a planned one, by the hour of their grafts.
func (p *Planner) Begun(b book.BatchPlan) (all []book.BatchPlan) {
	for g := range p.view.Batches() {
		if was, _ := p.view.BatchPlan(g.Batch); was.Queens > 0 && OneWish(was, b) {
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
