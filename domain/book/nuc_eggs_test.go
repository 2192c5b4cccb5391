package book_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
)

// Brood tells since when she lays at the latest: capped worker brood is 9 days old and
// more, larvae 3; not before she could lay, and not where the brood can be another's.
func TestBroodDatesTheFirstEggs(t *testing.T) {
	capped := book.Looked{Queen: book.QueenSeen, Eggs: book.SingleEggs, Larvae: true, Brood: book.Said(3)}
	larvae := book.Looked{Queen: book.QueenSeen, Eggs: book.SingleEggs, Larvae: true}
	eggs := book.Looked{Queen: book.QueenSeen, Eggs: book.SingleEggs}
	for _, c := range []struct {
		name  string
		given string
		left  book.NucMadeUp
		looks map[string]book.Looked
		want  string
	}{
		{"capped brood", "2027-04-15", book.NucMadeUp{}, map[string]book.Looked{"2027-05-12": capped}, "eggs since Mon 3 May at the latest, by capped brood seen Wed 12 May"},
		{"larvae", "2027-04-15", book.NucMadeUp{}, map[string]book.Looked{"2027-05-12": larvae}, "eggs since Sun 9 May at the latest, by larvae seen Wed 12 May"},
		{"eggs alone", "2027-04-15", book.NucMadeUp{}, map[string]book.Looked{"2027-05-12": eggs}, "eggs seen Wed 12 May"},
		{"eggs, later capped brood", "2027-04-15", book.NucMadeUp{}, map[string]book.Looked{"2027-05-10": eggs, "2027-05-12": capped}, "eggs since Mon 3 May at the latest, by capped brood seen Wed 12 May"},
		{"eggs seen before what brood tells", "2027-04-15", book.NucMadeUp{}, map[string]book.Looked{"2027-05-01": eggs, "2027-05-12": capped}, "eggs seen Sat 1 May"},
		{"a cell given ten days before", "2027-04-27", book.NucMadeUp{}, map[string]book.Looked{"2027-05-12": capped}, "eggs since Thu 6 May at the latest, by capped brood seen Wed 12 May"},
		{"no eggs seen on 8 May", "2027-04-15", book.NucMadeUp{}, map[string]book.Looked{"2027-05-08": {Queen: book.NoneSeen, Eggs: book.NoEggs}, "2027-05-12": capped}, "eggs since Sat 8 May at the latest, by capped brood seen Wed 12 May"},
		{"capped brood left 19 days before, its larvae capped by then", "2027-04-23", book.NucMadeUp{Open: 1, Capped: 1}, map[string]book.Looked{"2027-05-12": capped}, "eggs since Sun 9 May at the latest, by larvae seen Wed 12 May"},
		{"larvae of another queen are capped by then", "2027-04-23", book.NucMadeUp{Open: 1}, map[string]book.Looked{"2027-05-12": larvae}, "eggs since Sun 9 May at the latest, by larvae seen Wed 12 May"},
	} {
		n := booktest.Nuc("A1")
		c.left.Nuc = n
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.NucNamed{Nuc: n, Name: "A1", Sides: 6})
		p.At(c.given + " 11:00").Write(c.left)
		p.At(c.given + " 12:00").Write(book.CellGiven{Nuc: n, Batch: booktest.Batch("1")})
		for on, l := range c.looks {
			l.Nuc = n
			p.At(on + " 12:00").Write(l)
		}
		if got := p.View("2027-05-13 08:00").Nuc(n).Holds.EggsSeen(calendar.Date(2027, time.May, 13), time.UTC); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
	}
}

// TestBroodSeen: capped worker brood is told by the last look that saw it, not by the
// first; of one that has not proven herself by none.
func TestBroodSeen(t *testing.T) {
	var p booktest.Pen
	n := booktest.Nuc("A1")
	p.At("2027-05-01 18:00").Write(book.NucNamed{Nuc: n, Name: "A1"}, book.NucMadeUp{Nuc: n, Cups: 3})
	p.At("2027-06-01 18:00").Write(book.Looked{Nuc: n, Eggs: book.SingleEggs})
	for _, row := range []struct {
		at    string
		brood float64
		want  string
	}{
		{"2027-06-05 18:00", 0, "0001-01-01"},
		{"2027-06-12 18:00", 2, "2027-06-12"},
		{"2027-06-20 18:00", 3, "2027-06-20"},
		{"2027-06-27 18:00", 0, "2027-06-20"},
	} {
		l := book.Looked{Nuc: n, Eggs: book.SingleEggs}
		if row.brood > 0 {
			l.Brood = book.Said(row.brood)
		}
		p.At(row.at).Write(l)
		if got := p.View(row.at).Nuc(n).BroodSeen().Instant.Format("2006-01-02"); got != row.want {
			t.Errorf("%s: seen %s, want %s", row.at, got, row.want)
		}
	}
}
