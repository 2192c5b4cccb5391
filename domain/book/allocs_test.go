package book_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
)

// TestRememberedFoldsAreNotMadeAgain: a thousand nucs that have no new line cost
// the lists they are put in, and nothing each: on another day and after a line.
func TestRememberedFoldsAreNotMadeAgain(t *testing.T) {
	const nucs, lists = 1000, 200
	season, on := book.NewSeason(nil, booktest.Big(nucs, 60)), booktest.BigNow
	fold := func() {
		n := 0
		for range season.At(on).Nucs() {
			n++
		}
		if n != nucs {
			t.Fatalf("%d nucs, want %d", n, nucs)
		}
	}
	fold()
	on = on.AddDate(0, 0, 30) // all that was written has happened
	fold()
	allocs := testing.AllocsPerRun(5, func() {
		on = on.AddDate(0, 0, 1)
		fold()
	})
	if allocs > lists {
		t.Errorf("%.0f allocations for another day, want at most %d", allocs, lists)
	}
	pen := &booktest.Pen{Writer: "Ida M."}
	allocs = testing.AllocsPerRun(5, func() {
		pen.At("2027-07-12 06:30").Write(book.Fed{To: booktest.Colony("S1").Subject()})
		season = season.With(pen.Entries[len(pen.Entries)-1])
		fold()
	})
	if allocs > lists {
		t.Errorf("%.0f allocations after a line, want at most %d", allocs, lists)
	}
}
