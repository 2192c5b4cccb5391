package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestACatchIsOfALineThatWillDo: a queen is caught for an order of her line or of
// one in its place, and for one that takes any; where she may be of the nuc's own
// raising, for the last alone.
func TestACatchIsOfALineThatWillDo(t *testing.T) {
	for _, row := range []struct {
		line       string
		substitute []string
		open       float64 // palms of open brood that the nuc began with
		catches    int
	}{
		{"Plover", nil, 0, 1},
		{"", nil, 0, 1},
		{"Heron", nil, 0, 0},
		{"Heron", []string{"Plover"}, 0, 1},
		{"Plover", nil, 2, 0},
		{"", nil, 2, 1},
	} {
		p := pen(t)
		p.At("2027-05-05 18:00").Write(book.Grafted{Batch: batch(4), Number: 4, Larvae: 20, Line: "Plover"})
		p.At("2027-05-13 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Open: row.open})
		p.At("2027-05-15 18:00").Write(book.CellGiven{Nuc: a1, Batch: batch(4)})
		p.At("2027-06-09 18:00").Write(look("A1", book.Looked{Eggs: book.SingleEggs}))
		p.At("2027-06-20 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
		p.Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 2, By: calendar.Date(2027, 7, 5), Line: row.line, Substitute: row.substitute})
		n := 0
		for _, f := range of(p.View("2027-06-29 09:00"), rules.Ready) {
			if f.Act == rules.ActCatchQueen {
				n++
			}
		}
		if n != row.catches {
			t.Errorf("order of line %q or %q, open brood %g: %d catches, want %d", row.line, row.substitute, row.open, n, row.catches)
		}
	}
}
