package rules

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// CagedFor are the mated queens in cages who will do for an order, and those of its
// lines who by its day, or by now where that is later, will have been caged for more
// days than a mated queen keeps.
func CagedFor(v *book.View, o *book.Order) (fit, long []*book.Queen) {
	by := max(o.By, v.Today())
	for q := range v.Queens() {
		switch {
		case !q.Caged() || q.Virgin || !o.Takes(q.Line):
		case by > q.Since.Day(v.Zone())+calendar.Day(v.Numbers().Days(practice.MatedBankMost)):
			long = append(long, q)
		default:
			fit = append(fit, q)
		}
	}
	return fit, long
}
