package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// TestNobodyLooksAtCellsLongOut: once all virgins of a batch must have walked and its nucs
// were looked into, cells that nobody counted are asked for no more; where a nuc was not
// looked into they are.
func TestNobodyLooksAtCellsLongOut(t *testing.T) {
	for name, row := range map[string]struct {
		looked []string
		asked  int
	}{"no nuc": {nil, 1}, "one of two": {[]string{"A1"}, 1}, "both": {[]string{"A1", "B1"}, 0}} {
		p := pen(t)
		p.At("2027-05-05 18:00").Write(graft(4, 12))
		p.At("2027-05-13 18:00").Write(madeUp("A1", "B1")...)
		p.At("2027-05-15 10:00").Write(cells(4, "A1", "B1")...)
		p.At("2027-05-25 10:00")
		for _, nuc := range row.looked {
			p.Write(look(nuc, book.Looked{Eggs: book.SingleEggs}))
		}
		if found := of(p.View("2027-06-09 08:00"), rules.Counts); len(found) != row.asked {
			t.Errorf("%s looked into: %+v, want %d asked", name, found, row.asked)
		}
	}
}

// TestAnEmergedOneWalks: a virgin counted out among cells that are still together is one
// who walks, as one seen is; none out, and only dead ones, are not.
func TestAnEmergedOneWalks(t *testing.T) {
	for _, row := range []struct {
		fact  book.Fact
		walks bool
	}{
		{book.EmergedCounted{Batch: batch(4), Out: 1}, true},
		{book.ClockSeen{Batch: batch(4), Sign: book.SeenWalking}, true},
		{book.EmergedCounted{Batch: batch(4), Dead: 1}, false},
	} {
		p := pen(t)
		p.At("2027-05-05 18:00").Write(graft(4, 12))
		v := p.At("2027-05-15 20:00").Write(row.fact).View("2027-05-15 21:00")
		found := of(v, rules.VirginWalks)
		if seen := len(found) == 1 && found[0].Sure == "seen"; seen != row.walks {
			t.Errorf("%+v: %+v, want a virgin seen: %v", row.fact, found, row.walks)
		}
	}
}
