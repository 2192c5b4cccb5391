package view_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// cutTexts are the texts in an area that were shortened to fit.
func cutTexts(t testing.TB, s state.State, a scene.Area) (cut []string) {
	for _, w := range texts(t, window(s), s.Size()) {
		if a.Contains(w.At) && strings.HasSuffix(w.Text.Text, "…") && w.Text.Text != "More …" {
			cut = append(cut, w.Text.Text)
		}
	}
	return cut
}

// larger is a window with larger text, as high as all of its card needs.
func larger(s state.State) state.State {
	s.Text = 1.5
	s.Width, s.Height = 1280, 6000
	return s
}

// TestACardCutsNothing: with large text names, ways out and the numbers that
// something stands on take more lines.
func TestACardCutsNothing(t *testing.T) {
	s := larger(open(t))
	s.Room = state.Yard
	r := s.Reading()
	var all []book.Subject
	for _, n := range r.Nucs {
		all = append(all, n.Nuc.Nuc.Subject())
	}
	for _, b := range r.Batches() {
		all = append(all, b.Batch.Subject())
	}
	for y := range r.View.Yards() {
		all = append(all, y.Yard.Subject())
		for _, k := range r.Colonies(y.Yard) {
			all = append(all, k.Colony.Subject())
		}
	}
	for o := range r.View.Orders() {
		all = append(all, o.Order.Subject())
	}
	for p := range r.View.People() {
		all = append(all, p.Person.Subject())
	}
	for _, of := range all {
		s.Selection = state.Select(of)
		if cut := cutTexts(t, s, s.Layout().Card); len(cut) > 0 {
			t.Errorf("the card of %v cuts %q", of, cut)
		}
	}
}

// TestACardShowsWholeButtons: one that the edge of what scrolls would cut waits
// below it.
func TestACardShowsWholeButtons(t *testing.T) {
	s := open(t)
	s.Room, s.Text, s.Width, s.Height = state.Yard, 1.5, 1280, 800
	s.Selection = state.Select(nucNamed(t, s, "A1").Nuc.Nuc.Subject())
	s, _ = state.Update(s, state.Ran{Command: "more"})
	seen := 0
	for _, p := range walk(t, window(s), s.Size()) {
		r, ok := p.mark.(scene.Rect)
		if !ok || r.Radius != 5 || r.Ref.Kind != state.CommandRef || !s.Layout().Card.Contains(r.Centre()) {
			continue
		}
		switch in := r.Area.Intersect(p.clip); {
		case in.H == r.H:
			seen++
		case !in.Empty():
			t.Errorf("of the button %s at %v only %v shows", r.Ref.ID, r.Area, in)
		}
	}
	if seen < 4 {
		t.Errorf("%d buttons show", seen)
	}
}

// TestTheStartCutsNothing: with large text how to read a lid stays beside the
// offers, and no word is lost.
func TestTheStartCutsNothing(t *testing.T) {
	s := state.State{Now: today.At(9, 0, zone), Width: 1280, Height: 800}
	for _, text := range []float64{1, 1.3, 1.5, 1.75, 2} {
		s.Text = text
		below := s.Size()
		below.Y = max(0, s.Layout().Ribbon.Bottom()) // what the days say gives way
		if cut := cutTexts(t, s, below); len(cut) > 0 {
			t.Errorf("at text %v it cuts %q", text, cut)
		}
		explained := false
		for _, w := range texts(t, window(s), s.Size()) {
			explained = explained || w.Text.Text == "How to read a lid"
		}
		if text <= 1.5 && !explained {
			t.Errorf("at text %v nothing says how to read a lid", text)
		}
	}
}

// TestEveryNumberSaysWhatDependsOnIt: where there is a column for it, no cell of it
// is empty; and the 25 that matter are all in sight in a usual window, no row cut.
func TestEveryNumberSaysWhatDependsOnIt(t *testing.T) {
	s := open(t)
	s, _ = state.Update(s, state.Ran{Command: "numbers"})
	rows := s.NumberRows(s.Layout())
	said := map[string]int{}
	for _, w := range texts(t, window(s), s.Size()) {
		if rows.Contains(w.At) {
			said[w.Text.Text]++
		}
	}
	for _, n := range s.NumberLines() {
		if n.Head == "" && (said[n.Title] == 0 || said[n.Used] == 0) {
			t.Errorf("%s: %d times in sight, and %d times what depends on it (%s)", n.Title, said[n.Title], said[n.Used], n.Used)
		}
	}
	for i := range sizes {
		s := sized(s, i)
		rows, offset := s.NumberRows(s.Layout()), s.NumberOffset(s.Layout())
		if s.Layout().NumbersLow() {
			continue
		}
		if whole := int((rows.H + offset) / state.NumberRow); float64(whole)*state.NumberRow != rows.H+offset {
			t.Errorf("at %v the rows end at %v, a row is cut", sizes[i], rows.H+offset)
		}
	}
}
