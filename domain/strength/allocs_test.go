package strength_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/strength"
)

// TestReckoningCostsNoMemory: a nuc is reckoned, and found quiet, without an
// allocation.
func TestReckoningCostsNoMemory(t *testing.T) {
	v := book.NewSeason(nil, booktest.Big(40, 60)).At(booktest.BigNow)
	y := strength.NewYard(v, booktest.Yard("big"), v.Zone())
	for n := range v.Nucs() {
		s := y.Of(n)
		if a := testing.AllocsPerRun(5, func() { y.Of(n) }); a != 0 {
			t.Errorf("%s: %.0f allocations to reckon it", n.Name, a)
		}
		e := y.Exposure(n, s)
		if a := testing.AllocsPerRun(5, func() { y.Exposure(n, s) }); e.Level == strength.Quiet && a != 0 {
			t.Errorf("%s: %.0f allocations to find it quiet", n.Name, a)
		}
	}
}
