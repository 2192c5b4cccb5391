package handover

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// OrdersFor are the open orders that queens of a line wanted by a day are evidently for: wanted by
// that day, or to leave then, that take the line, and for which no batch is planned, or grafted and
// still to give queens; as many of them, who is served first before the others, as the queens are
// enough for.
func OrdersFor(p *plan.Planner, queens int, line string, by calendar.Day) (all []*book.Order) {
	v, batches := p.View(), plannedBatches(p)
	for o := range v.Orders() {
		has := slices.ContainsFunc(batches, func(b plannedBatch) bool { return !b.free && slices.Contains(b.orders, o.Order) })
		if has || o.Open() == 0 || o.Open() > queens || by != o.By && by != o.LeavesBy(v.Numbers()) || !o.TakesSure(line, line != "") {
			continue
		}
		queens -= o.Open()
		all = append(all, o)
	}
	return all
}
