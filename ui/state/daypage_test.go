package state_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// bigDay is a window on the day's route of 10,000 nucs.
func bigDay(b *testing.B) state.State {
	b.Helper()
	season := book.NewSeason(time.LoadLocation, booktest.Big(10_000, 60))
	s := state.State{Now: booktest.BigNow, Width: 1440, Height: 900}
	s, _ = state.Update(s, state.Opened{Book: &state.Book{Season: season, Name: "big"}})
	if len(s.Lines()) == 0 {
		b.Fatal("there is nothing to do")
	}
	return s
}

// BenchmarkTurnPage sets the page of a day of 10,000 nucs anew, as after a line is
// ticked. Its floor is BenchmarkBareLines.
func BenchmarkTurnPage(b *testing.B) {
	s := bigDay(b)
	for b.Loop() {
		s, _ = state.Update(s, state.Ran{Command: "nobody comes"})
	}
}

// BenchmarkBareLines walks over what the lines of that page are about.
func BenchmarkBareLines(b *testing.B) {
	s := bigDay(b)
	n := 0
	for b.Loop() {
		for _, l := range s.Lines() {
			n += len(l.Of)
		}
	}
	if n == 0 {
		b.Fatal("the lines are about nothing")
	}
}
