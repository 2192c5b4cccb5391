package rules

import (
	"lidmark/domain/book"
	"lidmark/domain/handover"
)

// CagedFor are the mated queens in cages who will do for an order, and those of its
// lines who by its day, or by now where that is later, will have been caged for more
// days than a mated queen keeps.
func CagedFor(v *book.View, o *book.Order) (fit, long []*book.Queen) {
	by, keeps := max(o.By, v.Today()), handover.Keeps(v)
	for q := range v.Queens() {
		switch {
		case !q.Caged() || q.Virgin || !o.TakesSure(q.Line, q.Descent != book.DescentDoubtful):
		case by > keeps(q):
			long = append(long, q)
		default:
			fit = append(fit, q)
		}
	}
	return fit, long
}
