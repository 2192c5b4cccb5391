package handover

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// Chance is the chance that all queens that the order of a place in the sheet misses are ready by
// a day: of nucs, of cells of its batches that are still to be given, and of grafts planned
// for it, after what the orders before it want of the same. It is that of [plan.Planner.Wished]
// where nothing but the batches of the wish can serve it.
func (s *Sheet) Chance(p *plan.Planner, order int, by calendar.Day) float64 {
	o, v := &s.Orders[order], p.View()
	planned := plansFor(v, o.Order.Order)
	batches := plannedBatches(p)
	wanted := o.Short
	for _, b := range s.Orders[:order] {
		also := slices.ContainsFunc(planned, func(w book.BatchPlan) bool { return slices.Contains(w.Orders, b.Order.Order) }) || waitsWith(batches, &b, o)
		switch shares := shares(b.Order, o.Order); {
		case also && shares:
			wanted += b.Short
		case also:
			wanted += b.Short - b.Coming
		case shares:
			wanted += b.Coming
		}
	}
	of := chances(wanted, s.supply(p, order, cellsFor(batches, o)), o.Order, by)
	with(of, p.Joint(planned, by))
	return of[wanted]
}

// plansFor are the planned batches that an order waits for, as they are ready to hand over.
func plansFor(v *book.View, o book.OrderID) (all []book.BatchPlan) {
	for b := range v.Plans() {
		if b.Orders = v.Awaiting(b.BatchPlanned); slices.Contains(b.Orders, o) {
			b.Laying = false
			all = append(all, b)
		}
	}
	return all
}
