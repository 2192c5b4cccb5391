package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// TestCagedTooLong: a queen does for an order until the last day a mated queen keeps
// in a cage, and not for one a day later.
func TestCagedTooLong(t *testing.T) {
	p := pen(t)
	layingOn1June(p)
	p.At("2027-06-20 18:00").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("a"), Label: "7"})
	v := p.View("2027-06-21 08:00")
	last := calendar.Date(2027, 6, 20) + calendar.Day(v.Numbers().Days(practice.MatedBankMost))
	for by, want := range map[calendar.Day][2]int{last: {1, 0}, last + 1: {0, 1}, 0: {1, 0}} {
		o := &book.Order{}
		o.By = by
		if fit, long := rules.CagedFor(v, o); len(fit) != want[0] || len(long) != want[1] {
			t.Errorf("by %v: %d will do, %d caged too long; want %v", by, len(fit), len(long), want)
		}
	}
}
