package view_test

import (
	"strings"
	"testing"

	"lidmark/ui/state"
)

// TestTheChangeButtonIsWhole: of everything that is drawn on the ground the button that
// changes it says its word whole at every size.
func TestTheChangeButtonIsWhole(t *testing.T) {
	base, seen := filled(t, "layout"), 0
	base, _ = state.Update(base, state.Ran{Command: "ground tools"})
	for _, size := range layoutSizes {
		s := base
		s.Width, s.Height, s.Text = size[0], size[1], size[2]
		for _, f := range s.Present().View.Yard(s.Laying.Yard).Features {
			s.Selection = state.Select(f.Feature.Subject())
			for _, w := range texts(t, window(s), s.Size()) {
				if !s.LayingAreas().Panel.Contains(w.At) || !strings.HasPrefix(w.Text.Text, "Ch") || strings.HasPrefix(w.Text.Text, "Chosen") {
					continue
				}
				if seen++; w.Text.Text != "Change" {
					t.Errorf("%v, %s: the button says %q", size, f.What, w.Text.Text)
				}
			}
		}
	}
	if seen < 5 {
		t.Errorf("the button was seen %d times", seen)
	}
}
