package review_test

import (
	"math"
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
	"lidmark/domain/review"
)

// TestBeesAreThosePlansReckonWith: by hand 1.1 kg a week are 13 cups of 700 bees at
// 8300 a kilogram, and 10 after three were given; a week later 13 again. A colony of
// 24,000 of which 20,000 stay gives 5, one of 20,000 none, nor does a breeder.
func TestBeesAreThosePlansReckonWith(t *testing.T) {
	p := pen(t, signs("+", 60))
	p.At("2027-04-01 09:00").Write(
		book.ColonyDescribed{Colony: booktest.Colony("S1"), Name: "S1", Roles: []book.Role{book.BroodSource}},
		book.ColonyDescribed{Colony: booktest.Colony("S2"), Name: "S2", Thousands: 24},
		book.ColonyDescribed{Colony: booktest.Colony("S3"), Name: "S3", Roles: []book.Role{book.Breeder}},
		book.ColonyDescribed{Colony: booktest.Colony("S4"), Name: "S4", Thousands: 20},
	)
	p.At("2027-05-20 18:00").Write(book.BeesAdded{Nuc: a1, Cups: 3, From: booktest.Colony("S1").Subject()})
	for at, want := range map[string]int{"2027-05-19 10:00": 13 + 5, "2027-05-26 10:00": 10 + 5, "2027-05-27 10:00": 13 + 5} {
		j := judged(p, at)
		r := review.Of(j, handOf(1), review.Usual(j.Course().View()))
		cups, from := r.Bees()
		if cups != want || !slices.Equal(from, []string{"S1", "S2"}) {
			t.Errorf("%s: %d cups from %v, want %d from S1 and S2", at, cups, from, want)
		}
		kg := 0.0
		for _, g := range plan.Givers(j.Course().View(), r.Day) {
			kg += g.Kilograms
		}
		if most := kg * 8300 / 700; float64(cups) > most || math.Ceil(most) > float64(cups)+2 {
			t.Errorf("%s: %d cups, plans reckon with %.1f", at, cups, most)
		}
	}
}
