package plan

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// OrdersFor are the open orders that queens of a line wanted by a day are evidently for: wanted by
// that day, or sent and to leave then, that take the line, and for which no batch is planned or
// grafted; as many of them, who is served first before the others, as the queens are enough for.
func (p *Planner) OrdersFor(queens int, line string, by calendar.Day) (all []*book.Order) {
	for o := range p.view.Orders() {
		leaves := o.By
		if o.Sent {
			leaves -= calendar.Day(o.Journey)
		}
		if o.Open() == 0 || o.Open() > queens || by != o.By && by != leaves || !o.TakesSure(line, line != "") || p.planned(o.Order) {
			continue
		}
		queens -= o.Open()
		all = append(all, o)
	}
	return all
}

// planned tells whether a batch is meant for an order, planned or grafted.
func (p *Planner) planned(o book.OrderID) bool {
	for b := range p.view.ToGraft() {
		if slices.Contains(b.Orders, o) {
			return true
		}
	}
	for g := range p.view.Batches() {
		if was, ok := p.view.BatchPlan(g.Batch); ok && slices.Contains(was.Orders, o) {
			return true
		}
	}
	return false
}
