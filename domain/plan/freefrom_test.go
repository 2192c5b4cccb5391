package plan_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
)

// A nuc is free for the next cell on the day on which its queen is ready by her card: old enough
// and so long after her first eggs, whichever is later, and when no treatment keeps her.
func TestANucIsFreeWhenItsQueenIsReady(t *testing.T) {
	for _, c := range []struct{ name, looked, free string }{
		{"eggs when eight days old: her age counts", "2027-05-21 18:00", "2027-06-11"},
		{"eggs when twenty days old: her brood counts", "2027-06-02 18:00", "2027-06-14"},
	} {
		pen := yardOf(1)
		b := graft(pen, "2027-05-01", 20, 18, 16)
		pen.At("2027-05-11 18:00").Write(book.NucMadeUp{Nuc: booktest.Nuc("0")}, book.CellGiven{Nuc: booktest.Nuc("0"), Batch: b})
		pen.At(c.looked).Write(book.Looked{Nuc: booktest.Nuc("0"), Eggs: book.SingleEggs})
		p := plannerOf(pen, "2027-06-03 08:00")
		free, n := p.FreeFrom(booktest.Yard("home"))[0], p.View().Nuc(booktest.Nuc("0"))
		if ready := calendar.DayOf(p.Course().Of(n).ReadyAt, nil); free != ready || free != day(t, c.free) {
			t.Errorf("%s: free from %s, ready from %s, want %s", c.name, free, ready, c.free)
		}
		if got := p.Free(booktest.Yard("home"), free-1, free+30, book.BatchID{}); got != 0 {
			t.Errorf("%s: free a day before", c.name)
		}
	}
}
