package view_test

import (
	"testing"

	"lidmark/ui/state"
)

// TestNoKeyIsCut: at 1280 × 800 every row of the sheet of keys is read whole.
func TestNoKeyIsCut(t *testing.T) {
	s := open(t)
	s.Width, s.Height, s.Keys = 1280, 800, true
	said := map[string]bool{}
	for _, m := range texts(t, window(s), s.Size()) {
		said[m.Text.Text] = true
	}
	for _, c := range state.Commands() {
		if c.Keys != "" && c.Does != "" && !said[c.Does] {
			t.Errorf("%q is cut, or not there", c.Does)
		}
	}
}
