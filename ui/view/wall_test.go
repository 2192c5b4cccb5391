package view_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestTheWallSaysWhatItShows: on no day is a word of the wall cut, and its legend has the
// sign of what nobody saw as it stands on the lids: hollow where they are small, else
// hatched.
func TestTheWallSaysWhatItShows(t *testing.T) {
	looks := map[bool]int{}
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1.5}, {900, 560, 1.5}} {
		s := open(t)
		s.Room, s.Pane, s.Width, s.Height, s.Text = state.Yard, state.Wall, size[0], size[1], size[2]
		for day := range 22 {
			main := s.Layout().Main
			var words []string
			for _, w := range texts(t, window(s), s.Size()) {
				if main.Contains(w.At) && w.At.Y > main.Y+state.WallHead {
					words = append(words, w.Text.Text)
				}
			}
			if at := slices.IndexFunc(words, func(said string) bool { return strings.HasSuffix(said, "…") }); at >= 0 {
				t.Errorf("%v day %d: %q is cut", size, day, words[at])
			}
			for _, p := range walk(t, window(s), s.Size()) {
				l, ok := p.mark.(scene.Lid)
				if !ok || l.Seen || l.Blank || l.Condition == scene.Empty || !main.Contains(l.At) {
					continue
				}
				hollow := l.Size < 20
				looks[hollow]++
				if slices.Contains(words, "hollow: not seen yet") != hollow && !s.Wall(s.Layout()).Legend.Folded {
					t.Errorf("%v day %d: lids of %v, and the legend says %q", size, day, l.Size, words[len(words)-12:])
				}
				break
			}
			s = pressed(s, ".")
		}
	}
	if looks[true] == 0 || looks[false] == 0 {
		t.Errorf("lids hatched, or hollow: %v", looks)
	}
}
