package review_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// TestReviewSaysWhatASpotCosts: of two look-alikes half a metre apart, and of one that
// stands alone; it says nothing where a queen lays, and nothing where nobody drew the
// ground.
func TestReviewSaysWhatASpotCosts(t *testing.T) {
	for _, drawn := range []bool{true, false} {
		p := pen(t, signs("+", 60))
		if drawn {
			p.At("2027-05-01 08:00").Write(book.FeatureDrawn{Feature: booktest.Feature("thorn"), Yard: yard, What: book.Tree, Points: []book.Point{{X: 30}}, Height: 5})
		}
		p.At("2027-05-01 09:00").Write(book.Grafted{Batch: young, Number: 12, Larvae: 20, LarvaAge: 18})
		for name, x := range map[string]float64{"C1": 0, "C2": 0.5, "C3": 20} {
			s, n := booktest.Stand(name), booktest.Nuc(name)
			p.At("2027-05-09 08:00").Write(book.StandSet{Stand: s, Yard: yard, Letter: name, At: book.Point{X: x}, Places: 1},
				book.NucNamed{Nuc: n, Name: name, Sides: 6, Side: 2}, book.NucPlaced{Nuc: n, Yard: yard, Stand: s, Place: 1},
				book.NucMadeUp{Nuc: n, Cups: 3, Food: 900}, book.CellGiven{Nuc: n, Batch: young})
		}
		p.At("2027-05-20 09:00").Write(book.Looked{Nuc: booktest.Nuc("C2"), Eggs: book.SingleEggs, Queen: book.QueenSeen})
		r := reviewed(p, "2027-05-20 10:00", 0)
		said := map[string]string{}
		for _, name := range []string{"C1", "C2", "C3"} {
			n := r.Nucs[place(t, r, name)]
			said[name] = r.Spot(n, n.Ways[0])
		}
		if !drawn {
			if said["C1"]+said["C2"]+said["C3"] != "" {
				t.Errorf("nobody drew the ground, and it says %q", said)
			}
			continue
		}
		if !strings.Contains(said["C1"], "fewer of 100 lay by") || !strings.Contains(said["C3"], "more of 100 lay by") || said["C2"] != "" {
			t.Errorf("it says %q", said)
		}
	}
}
