package handover

import (
	"fmt"
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Alone tells whether a caged mated queen hangs in no bank, and the last day on which a cage by itself
// keeps her.
func Alone(v *book.View, q *book.Queen) (until calendar.Day, alone bool) {
	if _, hangs := q.Where.Colony(); hangs {
		return 0, false
	}
	return q.Since.Day(v.Zone()) + calendar.Day(v.Numbers().Days(practice.CagedMost)), true
}

// sayAlone says with the first order that misses queens how many would do for it, but for that they are
// caged in no bank for longer than a cage keeps them.
func (s *Sheet) sayAlone(kinds []kind, v *book.View) {
	var long []kind
	for _, k := range kinds {
		if len(k.queens) > 0 && !k.like.bank && k.queens[0].keeps < v.Today() {
			long = append(long, k)
		}
	}
	for i := range s.Orders {
		o := &s.Orders[i]
		if o.Short == 0 {
			continue
		}
		n, since := 0, v.Today()
		long = slices.DeleteFunc(long, func(k kind) bool {
			q := k.queens[0]
			q.keeps = forever
			if math.IsInf(costOf(q, *o, v.Today(), v.Numbers()), 1) {
				return false
			}
			n, since = n+len(k.queens), min(since, q.Caged)
			return true
		})
		switch since := since.ShortFrom(v.Today()); {
		case n == 1:
			o.warn("1 who would do is in a cage since " + since + ", in no bank: look how she is before she goes")
		case n > 1:
			o.warn(fmt.Sprintf("%d who would do are in cages since %s, in no bank: look how they are before they go", n, since))
		}
	}
}
