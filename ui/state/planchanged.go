package state

import (
	"reflect"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/plan"
)

// toPlanned are the grafts of an answer as they would be written: the first in place of the planned
// batch that is changed, of which that stays which nothing in the wish says otherwise.
func (s State) toPlanned(sheet *PlanSheet) []book.BatchPlanned {
	all := s.Present().planner().ToBook(sheet.Answer)
	is, changes := s.Present().View.BatchPlan(s.Planning.Batch)
	breeder, orders := s.breederOf(sheet.Line), s.ordersFor(sheet)
	if kept := s.ordersKept(is.BatchPlanned, sheet.key.wish); changes && !(s.wishesAnew(is.BatchPlanned, sheet.key.wish) && len(kept) == 0) {
		orders = kept
	}
	for i := range all {
		all[i].Breeder, all[i].Orders = breeder, orders
	}
	if changes {
		all[0] = unchanged(all[0], is.BatchPlanned, sheet.key.wish)
	}
	return all
}

// wishesAnew tells whether other queens are wished for than a planned batch is for: so many, by
// another day, or of another line.
func (s State) wishesAnew(is book.BatchPlanned, w plan.Wish) bool {
	return w.Queens != max(1, is.Queens) || w.By != is.By || w.Line != is.Line
}

// ordersKept are the orders of a planned batch that take the line that is wished.
func (s State) ordersKept(is book.BatchPlanned, w plan.Wish) []book.OrderID {
	if w.Line == is.Line || w.Line == "" {
		return is.Orders
	}
	return slices.DeleteFunc(slices.Clone(is.Orders), func(id book.OrderID) bool { return !s.Present().View.Order(id).Takes(w.Line) })
}

// unchanged is a graft that is to be written in place of a planned one, with what the wish leaves
// as it is planned, blank fields among it.
func unchanged(f, is book.BatchPlanned, w plan.Wish) book.BatchPlanned {
	f.Batch, f.Virgins, f.Why = is.Batch, is.Virgins, is.Why
	if w.Minute == is.Minute {
		f.Minute = is.Minute
	}
	if w.Line == is.Line {
		f.Breeder, f.Mother = is.Breeder, is.Mother
	}
	if w.Nucs == is.Nucs {
		f.Nucs = is.Nucs
	}
	if w.By == is.By {
		f.By = is.By
	}
	if w.Grafts < 2 && w.Queens == max(1, is.Queens) {
		f.Queens = is.Queens
	}
	if hundredths(w.Sure) == hundredths(is.Sure) {
		f.Sure = is.Sure
	}
	return f
}

// hundredths is a share as it stands in a field.
func hundredths(share float64) int { return int(share*100 + 0.5) }

// PlanStands tells whether the answer to what stands in the fields is on the plan as it is.
func (s State) PlanStands() bool {
	sheet, now := s.PlanSheet()
	if !now || len(sheet.Batches) != 1 {
		return false
	}
	is, planned := s.Present().View.BatchPlan(s.Planning.Batch)
	return planned && reflect.DeepEqual(s.toPlanned(sheet)[0], is.BatchPlanned)
}
