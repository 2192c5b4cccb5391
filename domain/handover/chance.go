package handover

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// Counted is what an order can count on by a day without anything more being done for it.
type Counted struct {
	Queens  int              // that must be ready for it by then: those that it misses, and those that orders before it want of the same
	Ready   []float64        // the chances that 0, 1 … and so many or more are, of nucs and of cells of its batches that are still to be given
	Planned []book.BatchPlan // the grafts planned for it

	by calendar.Day
}

// Chances are those that 0, 1 … and as many as must be ready or more are, with other grafts besides those
// that are planned.
func (c Counted) Chances(p *plan.Planner, besides ...book.BatchPlan) []float64 {
	of := slices.Clone(c.Ready)
	with(of, p.Joint(slices.Concat(c.Planned, besides), c.by))
	return of
}

// Chance is the chance that all queens that the order of a place in the sheet misses are ready by
// a day: of nucs, of cells of its batches that are still to be given, and of grafts planned
// for it, after what the orders before it want of the same. It is that of [plan.Planner.Wished]
// where nothing but the batches of the wish can serve it.
func (s *Sheet) Chance(p *plan.Planner, order int, by calendar.Day) float64 {
	c := s.Counted(p, order, by)
	return c.Chances(p)[c.Queens]
}

// Counted is what the order of a place in the sheet can count on by a day: what was grafted for nobody
// among it where it is surer so, see [Sheet.fromCells].
func (s *Sheet) Counted(p *plan.Planner, order int, by calendar.Day) Counted {
	batches := plannedBatches(p)
	all := s.countedWith(p, order, by, batches)
	if own := ownOf(batches); slices.ContainsFunc(batches, func(b plannedBatch) bool { return b.free && b.serves(&s.Orders[order]) }) {
		if alone := s.countedWith(p, order, by, own); alone.Chances(p)[alone.Queens] > all.Chances(p)[all.Queens] {
			return alone
		}
	}
	return all
}

// countedWith is [Sheet.Counted] with some batches.
func (s *Sheet) countedWith(p *plan.Planner, order int, by calendar.Day, batches []plannedBatch) Counted {
	o, planned := &s.Orders[order], plansFor(p.View(), s.Orders[order].Order.Order)
	wanted := o.Short
	for _, b := range s.Orders[:order] {
		also := slices.ContainsFunc(planned, func(w book.BatchPlan) bool { return slices.Contains(w.Orders, b.Order.Order) }) || waitsWith(batches, &b, o)
		switch shares := shares(b.Order, o.Order); {
		case also && shares:
			wanted += b.Short
		case also:
			wanted += b.Short - b.Coming
		case shares && b.Next.Day != 0 && b.Next.Day <= by: // too late for its own day, but before this one
			wanted += b.Short
		case shares:
			wanted += b.Coming
		}
	}
	return Counted{wanted, chances(wanted, s.supply(p, order, cellsFor(batches, o)), o.Order, by), planned, by}
}

// plansFor are the planned batches that an order waits for, as they are ready to hand over.
func plansFor(v *book.View, o book.OrderID) (all []book.BatchPlan) {
	for b := range v.ToGraft() {
		if b.Orders = v.Awaiting(b.BatchPlanned); slices.Contains(b.Orders, o) {
			b.Laying = false
			all = append(all, b)
		}
	}
	return all
}
