package view_test

import (
	"strings"
	"testing"

	"lidmark/ui/state"
	"lidmark/ui/view"
)

// TestHowToReadALidIsReadWhole: in every window all of it is in sight, or comes into
// sight by scrolling, and no word of it is cut.
func TestHowToReadALidIsReadWhole(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1000, 800, 1.5}, {800, 560, 1.5}, {1920, 1080, 2}} {
		s := open(t)
		s, _ = state.Update(s, state.Ran{Command: "lid page"})
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		seen := map[string]bool{}
		for at := 0.0; at <= view.CardMost(s, typewriter{}); at += 40 {
			s.Scroll = map[state.Place]float64{state.BookPlace: at}
			for _, w := range texts(t, window(s), s.Size()) {
				if w.clip.Y <= w.box.Y && w.box.Bottom() <= w.clip.Bottom() {
					seen[w.Text.Text] = true
				}
				if w.box.X > s.Layout().Main.X+state.Edge && strings.HasSuffix(w.Text.Text, "…") && w.box.Bottom() < s.Layout().Foot.Y {
					t.Errorf("%v: %q is cut", size, w.Text.Text)
				}
			}
		}
		var all strings.Builder
		for text := range seen {
			all.WriteString(text + "\n")
		}
		for _, said := range []string{"the clock", "needs you", "strokes", "entrance", "robbed", "own."} {
			if !strings.Contains(all.String(), said) {
				t.Errorf("%v: %q is never in sight: %q", size, said, all.String())
			}
		}
	}
}
