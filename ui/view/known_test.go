package view_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestStandstillsStandAboveTheRoute: a yard on standstill is said above the first stop
// of the day, with why.
func TestStandstillsStandAboveTheRoute(t *testing.T) {
	s := worked(t)
	ids := s.Pen.IDs
	ids.Deed()
	of := nucNamed(t, s, "K1").Nuc.Nuc.Subject()
	s, _ = state.Update(s, state.Opened{Book: s.Book.With(ids.Entries(calendar.Instantly(s.Now), s.Now, "Ida", book.DiseaseSuspected{Of: of, What: "foul brood"})...)})
	s.Room, s.Height = state.Today, 3000
	waits := s.Reading().Plan().Waits
	if len(waits) != 1 {
		t.Fatalf("%d wait", len(waits))
	}
	at := map[string]scene.Point{}
	for _, w := range texts(t, window(s), s.Size()) {
		at[w.Text.Text] = w.At
	}
	head, ok := at["Waits, not work"]
	title, said := at[waits[0].Title]
	first := s.Page()[0]
	stop, there := at[s.Reading().View.Yard(first.Yard).Name]
	if !ok || !said || !there || head.Y >= title.Y || title.Y >= stop.Y {
		t.Errorf("head %v at %v, %q %v at %v, first stop %v at %v", ok, head, waits[0].Title, said, title, there, stop)
	}
}
