package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestOneOfAThing: one cup is no cups, and two are.
func TestOneOfAThing(t *testing.T) {
	for _, row := range []struct {
		sides float64
		cups  float64
		goods string
	}{{2, 1, "cup of bees"}, {1, 2, "cups of bees"}} {
		p := pen(t)
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.At("2027-05-02 18:00").Write(look("A1", book.Looked{Sides: book.Said(row.sides)}))
		plan := rules.Day(p.View("2027-05-02 19:00"), calendar.Date(2027, 5, 2))
		found := false
		for _, k := range plan.Kit {
			found = found || k.Amount == row.cups && k.Goods == row.goods && k.Unit == ""
		}
		if !found {
			t.Errorf("bees on %g sides: packed %+v, want %g %s", row.sides, plan.Kit, row.cups, row.goods)
		}
	}
}
