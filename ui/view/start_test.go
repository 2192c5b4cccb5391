package view_test

import (
	"strings"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
	"lidmark/ui/view"
)

// buttons are the areas of a scene that look like buttons.
func buttons(t testing.TB, s state.State) (all []scene.Area) {
	for _, p := range walk(t, window(s), s.Size()) {
		if r, ok := p.mark.(scene.Rect); ok && r.Radius == 5 && r.Ref.Kind == state.CommandRef {
			all = append(all, r.Area)
		}
	}
	return all
}

func TestTheStartIsReadInEverySize(t *testing.T) {
	for i := range sizes {
		s := sized(state.State{Now: today.At(9, 0, zone)}, i)
		all := buttons(t, s)
		if len(all) != 3 {
			t.Fatalf("at %v there are %d buttons, want three", sizes[i], len(all))
		}
		for _, b := range all {
			if b.Bottom() > s.Layout().Foot.Y {
				t.Errorf("at %v a button lies at %v, below the window", sizes[i], b)
			}
			for _, w := range texts(t, window(s), s.Size()) {
				if w.box.Overlaps(b) && !b.Contains(w.box.Centre()) {
					t.Errorf("at %v %q lies under a button", sizes[i], w.Text.Text)
				}
			}
		}
	}
}

func TestThePageOfLettersShowsThemAll(t *testing.T) {
	s := open(t)
	s.Room, s.BookPage = state.About, state.LidPage
	for i := range sizes {
		s := sized(s, i)
		body := scene.Area{W: s.Size().W, Y: state.RoomsHeight, H: s.Layout().Foot.Y - state.RoomsHeight}
		body.H += view.CardMost(s, typewriter{}) // the rest is reached by scrolling
		seen := map[scene.Condition]bool{}
		for _, p := range walk(t, window(s), s.Size()) {
			if l, ok := p.mark.(scene.Lid); ok && l.Seen && l.Size < 60 {
				seen[l.Condition] = true
				if a := scene.Around(l.At, l.Size); a.Intersect(body) != a {
					t.Errorf("at %v the lid %v lies at %v, outside %v", sizes[i], l.Condition, a, body)
				}
			}
		}
		if len(seen) != len(scene.Conditions()) {
			t.Errorf("at %v %d letters are explained, want %d", sizes[i], len(seen), len(scene.Conditions()))
		}
		for _, w := range texts(t, window(s), s.Size()) {
			if body.Contains(w.At) && w.At.Y < s.Layout().Foot.Y && strings.HasSuffix(w.Text.Text, "…") && len(w.Text.Text) < 12 {
				t.Errorf("at %v only %q is left of a word", sizes[i], w.Text.Text)
			}
		}
	}
}

// TestTheYardIsSeenBeforeItIsBegun: beside the names of the boxes every nuc has its lid.
func TestTheYardIsSeenBeforeItIsBegun(t *testing.T) {
	for names, nucs := range map[string]int{"A1-A12, B1-B8": 20, "A1-K1": 10, "A1-R4": 64} {
		h := nothingOpen(t).write("2").write("Meadow").press("Enter").write(names)
		frame := scene.Area{X: h.StepFields(), W: h.Size().W - h.StepFields(), H: h.Size().H}
		lids := 0
		for _, p := range walk(t, window(h.State), h.Size()) {
			if l, ok := p.mark.(scene.Lid); ok && frame.Contains(l.At) && p.clip.Contains(l.At) {
				lids++
			}
		}
		if lids < nucs || lids > nucs+1 { // and that of the legend
			t.Errorf("%s: %d lids are drawn for %d nucs", names, lids, nucs)
		}
	}
}
