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
	return cagedFor(v, o, matedCaged(v))
}

// matedCaged are the mated queens in cages.
func matedCaged(v *book.View) (all []*book.Queen) {
	for q := range v.Queens() {
		if q.Caged() && !q.Virgin {
			all = append(all, q)
		}
	}
	return all
}

func cagedFor(v *book.View, o *book.Order, caged []*book.Queen) (fit, long []*book.Queen) {
	by := max(o.By, v.Today())
	for _, q := range caged {
		switch {
		case !o.Takes(q.Line):
		case by > q.Since.Day(v.Zone())+calendar.Day(v.Numbers().Days(practice.MatedBankMost)):
			long = append(long, q)
		default:
			fit = append(fit, q)
		}
	}
	return fit, long
}
