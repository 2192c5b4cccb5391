package view_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestWhatNobodyCountedIsHatched: ten days after a graft the cells are capped, but
// only what somebody counted is drawn solid.
func TestWhatNobodyCountedIsHatched(t *testing.T) {
	for counted, solid := range map[bool]int{false: 0, true: 1} {
		pen := &booktest.Pen{Zone: zone, Writer: "graft"}
		pen.At("2027-05-01 10:00")
		batch := booktest.Batch("one")
		pen.Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Zone: "Europe/Berlin"}, book.Grafted{Batch: batch, Number: 1, Larvae: 40})
		if counted {
			pen.At("2027-05-06 10:00")
			pen.Write(book.CappedCounted{Batch: batch, Capped: 30})
		}
		b := &state.Book{Season: book.NewSeason(time.LoadLocation, pen.Entries)}
		s := state.State{Book: b, Now: today.At(7, 10, zone), Width: 1440, Height: 900, Room: state.Yard}
		found := map[bool]int{} // by whether it is solid
		for _, p := range walk(t, window(s), s.Size()) {
			if m, ok := p.mark.(scene.Poly); ok && m.Ref.Part == "stage capped cells" && m.Points[0].X < s.Layout().Ribbon.Left(today) {
				found[m.Hatch == scene.Hatch{}]++
			}
		}
		if found[true] != solid || found[false] != 1-solid {
			t.Errorf("counted %v: %d pieces of the capped cells are solid, %d hatched", counted, found[true], found[false])
		}
	}
}
