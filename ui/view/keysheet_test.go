package view_test

import (
	"testing"

	"lidmark/ui/state"
)

// TestNoKeyIsCut: at 1280 × 800, in text of 100 and of 150 %, every row of the
// sheet of keys is written whole.
func TestNoKeyIsCut(t *testing.T) {
	for _, size := range []float64{1, 1.5} {
		s := open(t)
		s.Width, s.Height, s.Text, s.Keys = 1280, 800, size, true
		k, said := s.KeySheet(), map[string]bool{}
		for _, offset := range []float64{0, k.All - k.H} {
			s.Scroll = map[state.Place]float64{state.KeysPlace: offset}
			for _, m := range texts(t, window(s), s.Size()) {
				said[m.Text.Text] = true
			}
		}
		for _, c := range k.Rows {
			if !said[c.Does] {
				t.Errorf("at %.0f %%, %q is cut, or not there", 100*size, c.Does)
			}
		}
		if !said["Alt+Page Down"] || !said["Alt+Shift+→"] {
			t.Errorf("at %.0f %%, a key is cut", 100*size)
		}
	}
}
