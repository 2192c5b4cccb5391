package handover

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// plan says of every order that misses queens what is planned for it. A batch that serves
// several orders gives them its queens in their order.
func (s *Sheet) plan(c *course.Course) {
	v, batches := c.View(), plannedBatches(c)
	for i := range s.Orders {
		o := &s.Orders[i]
		if o.Short == 0 {
			continue
		}
		last := o.lastGraft(v.Numbers())
		for b := range batches {
			if batches[b].grafted <= last && slices.Contains(batches[b].orders, o.Order.Order) {
				n := min(o.Missing(), batches[b].queens)
				o.Planned, batches[b].queens = o.Planned+n, batches[b].queens-n
			}
		}
		if o.Missing() > 0 {
			o.Fell = fellFor(c, o.Order.Order)
		}
	}
}

// graft says until when to graft what an order misses and is not planned, and whether it
// cannot be kept any more.
func (s *Served) graft(p *plan.Planner) {
	missing := s.Missing()
	if missing > 0 && s.lastGraft(p.View().Numbers()) > p.View().Today() {
		s.GraftBy = p.GraftBy(plan.Wish{Queens: missing, By: s.On})
	}
	s.Lost = missing > 0 && s.GraftBy == 0
}

// lastGraft is the last day of a graft that can be in time for an order, by the calendar alone.
func (s Served) lastGraft(n practice.Numbers) calendar.Day { return s.On - FromGraft(n) }

// FromGraft is how many days after its graft a queen can be handed over at the soonest, by
// the calendar.
func FromGraft(n practice.Numbers) calendar.Day {
	return calendar.Day(n.Days(practice.GraftToEmerge) + n.Days(practice.LeastAgeAtHandOver))
}

// plannedBatch is a batch with the queens that it is meant to give to orders.
type plannedBatch struct {
	grafted calendar.Day
	queens  int
	orders  []book.OrderID
}

// plannedBatches are those planned and not overdue on the day that is looked ahead from, and those grafted whose cells are
// still to be given: once they are, their nucs tell what is to be expected.
func plannedBatches(c *course.Course) (all []plannedBatch) {
	v := c.View()
	for b := range v.Plans() {
		if b.Day >= v.From() {
			all = append(all, plannedBatch{b.Day, meant(b.BatchPlanned), b.Orders})
		}
	}
	for b := range v.Batches() {
		was, _ := v.BatchPlan(b.Batch)
		if cells := toGive(c, b, was); len(was.Orders) > 0 && cells > 0 {
			all = append(all, plannedBatch{b.At.Day(v.Zone()), min(meant(was.BatchPlanned), cells), was.Orders})
		}
	}
	return all
}

// toGive are the cells of a grafted batch that can still be given: none once the last day for
// it is past.
func toGive(c *course.Course, b *book.Batch, was book.BatchPlan) int {
	if cells := b.Unplaced(); cells > 0 && plan.CanBeGiven(c, b, was.Yard) {
		return cells
	}
	return 0
}

// meant are the queens that a batch was planned for, or as many as it has nucs.
func meant(b book.BatchPlanned) int {
	if b.Queens > 0 {
		return b.Queens
	}
	return b.Nucs
}
