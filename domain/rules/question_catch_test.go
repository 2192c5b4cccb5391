package rules_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// TestCellBesideAQueenSeen: whoever sees the queen and gives a cell at one look is
// offered no answer in which she was gone before.
func TestCellBesideAQueenSeen(t *testing.T) {
	at := time.Date(2027, time.May, 15, 16, 0, 0, 0, time.UTC)
	cell := book.CellGiven{Nuc: a1, Batch: batch(4)}
	look := book.Looked{Nuc: a1, Queen: book.QueenSeen, Eggs: book.SingleEggs}
	const asks = "A1 was given a cell, and its laying queen was seen at the same look. Which is right?"
	for _, c := range []struct {
		key  string
		want []book.Fact
	}{
		{"1", []book.Fact{look, book.Dropped{What: book.Cells, Batch: batch(4), Count: 1}}},
		{"2", []book.Fact{look, book.QueenCaught{Nuc: a1}, cell}},
		{"3", nil},
	} {
		p := pen(t)
		p.At("2027-04-20 18:00").Write(madeUp("A1")...)
		s := p.View("2027-05-15 23:00").Season()
		all := ask(t, "answer "+c.key, s, at, []book.Fact{look, cell}, asks, c.key, c.want)
		n := s.With(all...).At(at).Nuc(a1)
		want := map[string]book.Condition{"1": book.Laying, "2": book.Cell, "3": book.NoQueen}[c.key]
		if n.Holds.Condition != want || len(n.Gaps) > 0 {
			t.Errorf("answer %s: A1 holds %s, %v; want %s", c.key, n.Holds.Condition, n.Gaps, want)
		}
		for i := 1; i < len(all); i++ {
			if all[i-1].Compare(all[i]) >= 0 {
				t.Errorf("answer %s: %v is not before %v", c.key, all[i-1], all[i])
			}
		}
	}
}

// TestCaughtTwice: the like catch of a day asks, and so does a cage with a queen
// in it; another nuc's free cage does not.
func TestCaughtTwice(t *testing.T) {
	b1 := booktest.Nuc("B1")
	book1 := func() *booktest.Pen {
		p := pen(t)
		p.At("2027-05-10 18:00").Write(madeUp("A1", "B1")...)
		p.At("2027-05-14 10:00").Write(
			book.Looked{Nuc: a1, Queen: book.QueenSeen, Eggs: book.SingleEggs},
			book.Looked{Nuc: b1, Queen: book.QueenSeen, Eggs: book.SingleEggs})
		p.At("2027-05-15 15:00").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("first"), Label: "7"})
		return p
	}
	at := time.Date(2027, time.May, 15, 16, 0, 0, 0, time.UTC)
	for _, c := range []struct {
		name  string
		catch book.QueenCaught
		asks  string
		key   string
		keep  bool
	}{
		{"the same again", book.QueenCaught{Nuc: a1, Queen: booktest.Queen("again"), Label: "7"}, "typed already at A1: leave this one out?", "1", false},
		{"a second one", book.QueenCaught{Nuc: a1, Queen: booktest.Queen("again"), Label: "7"}, "typed already at A1: leave this one out?", "2", true},
		{"the same cage", book.QueenCaught{Nuc: b1, Queen: booktest.Queen("again"), Label: "7"}, "cage 7 holds the queen of A1 since Sat 15 May already. Which is right?", "2", false},
		{"another cage", book.QueenCaught{Nuc: b1, Queen: booktest.Queen("again"), Label: "8"}, "", "", true},
	} {
		var want []book.Fact
		if c.keep {
			want = []book.Fact{c.catch}
		}
		ask(t, c.name, book1().View("2027-05-15 23:00").Season(), at, []book.Fact{c.catch}, c.asks, c.key, want)
	}
}
