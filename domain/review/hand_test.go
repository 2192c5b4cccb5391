package review_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/review"
)

// TestNothingIsOutBeforeItEmerges: one who was caged as a cell is told to be in it
// until her batch is out, and one who was caged as a virgin is none of those.
func TestNothingIsOutBeforeItEmerges(t *testing.T) {
	p := pen(t, signs("+", 90))
	p.At("2027-05-16 10:00").Write(book.Grafted{Batch: young, Number: 12, Larvae: 20, LarvaAge: 18}, book.CappedCounted{Batch: young, Capped: 3})
	p.At("2027-05-26 18:00").Write(
		book.VirginCaged{Queen: booktest.Queen("21"), Batch: young, Label: "1", Cell: true},
		book.VirginCaged{Queen: booktest.Queen("22"), Batch: young, Label: "2", Cell: true},
		book.VirginCaged{Queen: booktest.Queen("23"), Batch: young, Label: "3"},
	)
	for at, want := range map[string]map[string]int{
		"2027-05-26 20:00": {"virgin of batch 12, still in her cell": 2, "virgin of batch 12, under a day old": 1},
		"2027-05-31 20:00": {"virgin of batch 12, 3 days old": 3},
	} {
		hand, said := review.InHand(judged(p, at).Course()), 0
		for _, w := range hand.Wares {
			if w.Virgin {
				said++
				if w.Many != want[w.Name] || w.InCell != (w.Name == "virgin of batch 12, still in her cell") {
					t.Errorf("%s: %d × %s", at, w.Many, w.Name)
				}
			}
		}
		if said != len(want) || hand.Virgins() != 3 {
			t.Errorf("%s: %+v", at, hand.Wares)
		}
	}
}
