package state_test

import (
	"testing"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

func TestTheRibbonShowsTheDayBegunWith(t *testing.T) {
	book := open(t).Book
	for _, away := range []calendar.Day{-90, 38, 200} {
		s, _ := state.Update(state.State{Now: now, Width: 1440, Height: 900, Day: today + away}, state.Opened{Book: book})
		if r := s.Layout().Ribbon; s.Looked() < r.First || s.Looked() > r.Last() {
			t.Errorf("%v lies outside the ribbon %v to %v", s.Looked(), r.First, r.Last())
		}
	}
}

func TestNothingJumpsWhileTheDayIsDragged(t *testing.T) {
	w := start(t).run("yard")
	before := w.Layout()
	r := before.Ribbon
	w.send(state.Pressed{At: scene.Point{X: r.At(today), Y: r.Y + 50}})
	for d := today - 5; d <= today+5; d++ {
		w.send(state.Moved{At: scene.Point{X: r.At(d), Y: r.Y + 50}})
		if l := w.Layout(); l.Main != before.Main || !l.Band.Empty() { // it would cover the room's head
			t.Fatalf("at %v the lids lie in %v, the band in %v; before %v", d, l.Main, l.Band, before.Main)
		}
	}
	w.send(state.Released{At: scene.Point{X: r.At(today + 5), Y: r.Y + 50}})
	if l := w.Layout(); l.Band.Empty() || l.Main.Y != before.Main.Y+state.BandHeight {
		t.Errorf("let go, the band lies in %v and the lids in %v", l.Band, l.Main)
	}
}

// TestDaysPastDueAreOneCount: what a nuc is past due in the table is what it is
// past due on the card, and nothing else is below zero; such a nuc needs the keeper,
// and its rim is closed.
func TestDaysPastDueAreOneCount(t *testing.T) {
	s, late, early := open(t), 0, 0
	for d := today - 20; d <= today+30; d += 5 {
		s.Day = d
		r := s.Reading()
		before := -1 << 30
		for _, n := range (state.Sort{By: state.ByDueDay}).Sorted(r, r.Nucs) {
			if n.Due == nil {
				continue
			}
			past := r.PastDue(*n.Due)
			if n.PastDue() != past || n.Days() < 0 != (past > 0) || past > 0 && n.Days() != -past {
				t.Errorf("%v, %s: %d days left, %d past due, by its work %d", d, n.Name, n.Days(), n.PastDue(), past)
			}
			if past > 0 && (!n.NeedsYou || !n.Timed || n.Used <= 1) {
				t.Errorf("%v, %s: %d days past due, without the corner %v or the closed rim %v", d, n.Name, past, n.NeedsYou, n.Used)
			}
			if n.Days() < before {
				t.Errorf("%v: %s with %d days follows on one with %d", d, n.Name, n.Days(), before)
			}
			before = n.Days()
			if past > 0 {
				late++
			} else {
				early++
			}
		}
	}
	if late == 0 || early == 0 {
		t.Fatalf("%d nucs past due and %d not: nothing was tried", late, early)
	}
}

func TestTheBatchWithAHardDeadlineHasALane(t *testing.T) {
	w := start(t).run("yard")
	hard := w.Present().Plan().Hard
	if len(hard) == 0 {
		t.Fatal("the demo season has no hard deadline today")
	}
	for _, height := range []float64{760, 900, 1080, 1400} {
		w.Height = height
		found := false
		for _, b := range w.Lanes(w.Layout()) {
			found = found || b.Batch.Subject() == hard[0].Of
		}
		if !found {
			t.Errorf("at %.0f dp there is no lane for the batch with the next hard deadline", height)
		}
	}
}

func TestTheFilterBeginsAnew(t *testing.T) {
	w := start(t).run("yard").run("needs you").press("F", state.Ctrl).write("virgin")
	if w.Filter != "virgin" {
		t.Errorf("the filter is %q, want what was typed last", w.Filter)
	}
	w.run("filter")
	if w.Filter != "virgin" {
		t.Error("the field clicked while typing loses its words")
	}
}

func TestKeysClearTheHover(t *testing.T) {
	w := start(t).run("yard")
	w.send(state.Moved{Tag: scene.Tag{Ref: w.ref("A1"), Reason: "A1"}}).press(".")
	if w.Hover != (scene.Tag{}) {
		t.Errorf("after a key the pointer is still over %v", w.Hover)
	}
}

func TestTheSheetOfKeysKeepsInTheWindow(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		s := state.State{
			Width:  rapid.Float64Range(state.LeastWidth, 2600).Draw(t, "width"),
			Height: rapid.Float64Range(state.LeastHeight, 1600).Draw(t, "height"),
			Prefs:  state.Prefs{Text: rapid.SampledFrom([]float64{1, 1.5, 2}).Draw(t, "text")},
		}
		s, _ = state.Update(s, state.Ran{Command: "keys"})
		for range rapid.IntRange(0, 40).Draw(t, "turns") {
			s, _ = state.Update(s, state.Wheeled{DY: rapid.SampledFrom([]float64{-40, 60}).Draw(t, "turn")})
		}
		k := s.KeySheet()
		if w := s.Size(); k.X < 0 || k.Y < 0 || k.Right() > w.W+1e-6 || k.Bottom() > w.H+1e-6 {
			t.Fatalf("the sheet %v reaches beyond the window %v", k.Area, s.Size())
		}
		if k.Offset < 0 || k.Offset > k.All-k.H || k.Columns*k.PerColumn() < len(k.Rows) {
			t.Fatalf("scrolled by %v of %v in %v, %d columns of %d for %d rows", k.Offset, k.All, k.H, k.Columns, k.PerColumn(), len(k.Rows))
		}
	})
}
