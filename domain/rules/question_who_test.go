package rules_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/rules"
)

// whoPen has A1 with a cell of batch 4 given on Sat 15 May, of which a virgin walks on
// Sun 16 May at the earliest, and B1 with eggs seen on Mon 10 May.
func whoPen(t *testing.T) *booktest.Pen {
	p := pen(t)
	p.At("2027-05-01 18:00").Write(madeUp("A1", "B1")...)
	p.At("2027-05-05 18:00").Write(graft(4, 24))
	p.At("2027-05-10 10:00").Write(look("B1", book.Looked{Eggs: book.SingleEggs}))
	return p.At("2027-05-15 10:00").Write(cells(4, "A1")...)
}

// TestAnotherQueenIsAskedFor: who lays or walks before the cell given could is
// another queen, and her eggs are never told of its batch; a virgin where a queen
// was laying, and a second cell, are asked for too.
func TestAnotherQueenIsAskedFor(t *testing.T) {
	gone := book.QueenGone{Nuc: a1}
	lays, walks := look("A1", book.Looked{Queen: book.QueenSeen, Eggs: book.SingleEggs}), look("A1", book.Looked{Queen: book.VirginSeen})
	again := book.CellGiven{Nuc: a1, Batch: batch(4)}
	virgin := look("B1", book.Looked{Queen: book.VirginSeen})
	hers := look("B1", book.Looked{Queen: book.QueenSeen})
	const whoLays = "A1: a queen lays; by the book the cell of batch 4 given Sat 15 May can lay from Thu 20 May 00:16. Whose is she?"
	const whoWalks = "A1: a queen was seen out of her cell; by the book the cell of batch 4 given Sat 15 May walks from Sun 16 May 00:16. Whose is she?"
	const which = "B1: a virgin was seen; the book has a laying queen there, eggs seen Mon 10 May. Which is right?"
	const first = "A1 was given a cell; the book has a cell there, given Sat 15 May. The first one?"
	for _, c := range []struct {
		name  string
		at    time.Time
		write book.Fact
		asks  string
		key   string
		want  []book.Fact
		holds book.Condition
		batch book.BatchID
	}{
		{"lays at once", inMay(15), lays, whoLays, "1", []book.Fact{gone, lays}, book.Laying, book.BatchID{}},
		{"the dates are wrong", inMay(15), lays, whoLays, "2", []book.Fact{lays}, book.Laying, batch(4)},
		{"typed wrong", inMay(15), lays, whoLays, "3", nil, book.Cell, batch(4)},
		{"lays in time", inMay(27), lays, "", "", []book.Fact{lays}, book.Laying, batch(4)},
		{"walks at once", inMay(15), walks, whoWalks, "1", []book.Fact{gone, walks}, book.Virgin, book.BatchID{}},
		{"walks in time", inMay(19), walks, "", "", []book.Fact{walks}, book.Virgin, batch(4)},
		{"a virgin instead", inMay(15), virgin, which, "1", []book.Fact{book.QueenGone{Nuc: booktest.Nuc("B1")}, virgin}, book.Cell, batch(4)},
		{"no virgin", inMay(15), virgin, which, "2", []book.Fact{hers}, book.Cell, batch(4)},
		{"a second cell", inMay(16), again, first, "1", []book.Fact{gone, again}, book.Cell, batch(4)},
		{"a second cell, the first unknown", inMay(16), again, first, "2", []book.Fact{again}, book.Cell, batch(4)},
		{"written twice", inMay(15), again, "", "", []book.Fact{again}, book.Cell, batch(4)},
	} {
		s := whoPen(t).View("2027-05-15 11:00").Season()
		all := ask(t, c.name, s, c.at, []book.Fact{c.write}, c.asks, c.key, c.want)
		n := s.With(all...).At(c.at).Nuc(a1)
		if n.Holds.Condition != c.holds || n.Holds.Batch != c.batch {
			t.Errorf("%s: A1 holds %s of %s", c.name, n.Holds.Condition, n.Holds.Batch)
		}
		if asked := s.With(all...).At(c.at).Nuc(booktest.Nuc("B1")).Gaps; len(asked) > 0 {
			t.Errorf("%s: answered, and still asked for: %v", c.name, asked)
		}
		if h := n.Holds; h.Condition == book.Laying && c.at.Before(inMay(20)) && h.Descent != book.DescentDoubtful {
			t.Errorf("%s: her descent is %s", c.name, h.Descent)
		}
	}
}

// TestAVirginInsteadStaysAsked: nobody answered, so the question is a finding until
// somebody says that the old queen is gone, which leaves the virgin where she is.
func TestAVirginInsteadStaysAsked(t *testing.T) {
	p := whoPen(t)
	p.At("2027-05-15 10:30").Write(look("B1", book.Looked{Queen: book.VirginSeen}))
	if f := of(p.View("2027-05-15 11:00"), rules.GapAsks); len(f) != 1 {
		t.Errorf("%+v, want the virgin asked for", f)
	}
	p.At("2027-05-15 12:00").Write(book.QueenGone{Nuc: booktest.Nuc("B1")})
	v := p.View("2027-05-15 13:00")
	if f := of(v, rules.GapAsks); len(f) != 0 || v.Nuc(booktest.Nuc("B1")).Holds.Condition != book.Virgin {
		t.Errorf("%+v, B1 holds %s", f, v.Nuc(booktest.Nuc("B1")).Holds.Condition)
	}
}

// TestTheOneBeforeIsGoneNotTheCell: the old queen gone, said as a cell is given, takes
// no cell away, be she layer or drone layer.
func TestTheOneBeforeIsGoneNotTheCell(t *testing.T) {
	for _, seen := range []book.Looked{{Eggs: book.SingleEggs}, {DroneBrood: true}} {
		p := pen(t)
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.At("2027-05-10 18:00").Write(look("A1", seen))
		p.At("2027-05-15 10:00").Write(book.CellGiven{Nuc: a1}, book.QueenGone{Nuc: a1})
		if got := p.View("2027-05-15 11:00").Nuc(a1).Holds.Condition; got != book.Cell {
			t.Errorf("after %+v A1 holds %s, want the cell", seen, got)
		}
		p.At("2027-05-16 10:00").Write(book.QueenGone{Nuc: a1})
		if got := p.View("2027-05-16 11:00").Nuc(a1); got.Holds.Condition != book.NoQueen || got.Queenless.IsZero() {
			t.Errorf("said a day later A1 holds %s", got.Holds.Condition)
		}
	}
}

func inMay(d int) time.Time { return time.Date(2027, time.May, d, 16, 0, 0, 0, time.UTC) }

// TestNobodyToLayIsAskedFor: eggs six days after the only queen was caught are somebody
// else's, or another nuc's; three weeks after they may be of one it raised itself.
func TestNobodyToLayIsAskedFor(t *testing.T) {
	p := pen(t)
	p.At("2027-05-01 18:00").Write(madeUp("B1")...)
	p.At("2027-05-10 10:00").Write(look("B1", book.Looked{Eggs: book.SingleEggs}))
	p.At("2027-05-12 10:00").Write(book.QueenCaught{Nuc: booktest.Nuc("B1"), Queen: booktest.Queen("caught")})
	s := p.View("2027-05-13 11:00").Season()
	lays := look("B1", book.Looked{Queen: book.QueenSeen, Eggs: book.SingleEggs})
	const asks = "B1: a queen lays; the book has none there since Wed 12 May, and one of its own lays from Fri 28 May at the earliest. Which is right?"
	ask(t, "she is there", s, inMay(18), []book.Fact{lays}, asks, "1", []book.Fact{lays})
	ask(t, "typed wrong", s, inMay(18), []book.Fact{lays}, asks, "2", nil)
	ask(t, "one of its own", s, inMay(31), []book.Fact{lays}, "", "", []book.Fact{lays})
}
