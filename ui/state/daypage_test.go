package state_test

import (
	"math"
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
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

// TestMinutesOfALineAreShared: of a line of several nucs of which one is left out,
// what is done and what is left each have the minutes of their nucs.
func TestMinutesOfALineAreShared(t *testing.T) {
	w := keeper(t)
	var whole state.PageLine
	for _, l := range w.Lines() {
		if l.Act == rules.ActGiveCell && len(l.Of) > 2 {
			whole = l
		}
	}
	if len(whole.Of) < 3 || whole.Minutes == 0 {
		t.Fatal("no line gives cells to three nucs")
	}
	w.Selection = state.Select(whole.Of...)
	w.run("done except")
	w.write(rules.Name(w.Reading().View, whole.Of[1])).press("Enter").settle()
	each := whole.Minutes / float64(len(whole.Of))
	done := w.done()
	if len(done) != 1 || len(done[0].Of) != len(whole.Of)-1 || math.Abs(done[0].Minutes-each*float64(len(done[0].Of))) > 1e-9 {
		t.Fatalf("done are %+v, want %g min for each of %d nucs", done, each, len(whole.Of)-1)
	}
	for _, l := range w.Lines() {
		if !l.Done && slices.Contains(l.Of, whole.Of[1]) && l.Act == whole.Act {
			if math.Abs(l.Minutes-each*float64(len(l.Of))) > 1e-9 {
				t.Errorf("%d nucs are left with %g min, want %g each", len(l.Of), l.Minutes, each)
			}
			return
		}
	}
	t.Error("the nuc left out is on no line")
}

// TestTheClockRunsOn: the steps of a batch stand in the order of time, whatever the
// keeper's numbers are.
func TestTheClockRunsOn(t *testing.T) {
	w := keeper(t)
	ids := w.Pen.IDs
	ids.Deed()
	numbers := ids.Entries(calendar.Instantly(now), now, "Ida", book.NumberChanged{Number: "virgin_too_late", Value: 24}, book.NumberChanged{Number: "ready_after_first_egg", Value: 20})
	w.send(state.Opened{Book: w.Book.With(numbers...)})
	r := w.Reading()
	steps := 0
	for _, b := range r.Batches() {
		last := time.Time{}
		for _, s := range r.ClockOf(b) {
			if s.At.Before(last) {
				t.Errorf("batch %d: %q stands after a later step", b.Number, s.Word)
			}
			last = s.At
			steps++
		}
	}
	if steps == 0 {
		t.Fatal("no batch has a clock")
	}
}
