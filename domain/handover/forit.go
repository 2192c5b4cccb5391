package handover

import "lidmark/domain/book"

// Unordered is the first graft planned for no order that may be meant for one whose missing queens neither
// stand in nucs nor are planned: it is of a line that the order takes, and in time for it by the calendar.
// Ok is false where there is none.
func (s Served) Unordered(v *book.View) (graft book.BatchPlan, ok bool) {
	if stand := s.Stand(); stand != GraftFor && !stand.Rings() {
		return graft, false
	}
	last := s.lastGraft(v.Numbers())
	for b := range v.ToGraft() {
		if len(b.Orders) == 0 && v.GraftOn(b) <= last && s.Order.TakesSure(b.Line, b.Line != "") {
			return b, true
		}
	}
	return graft, false
}
