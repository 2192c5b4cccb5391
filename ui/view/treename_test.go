package view_test

import (
	"math"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestATreeHasItsNameBesideIt: with large text in a small window as well.
func TestATreeHasItsNameBesideIt(t *testing.T) {
	s := open(t)
	s.Room, s.Pane, s.Width, s.Height = state.Yard, state.Map, 1280, 800
	for _, text := range []float64{1, 1.5} {
		s.Text = text
		var crowns []scene.Circle
		for _, p := range walk(t, window(s), s.Size()) {
			if c, ok := p.mark.(scene.Circle); ok && c.Fill == scene.Tree {
				crowns = append(crowns, c)
			}
		}
		seen := 0
		for _, w := range texts(t, window(s), s.Size()) {
			if w.Text.Text != "thorn" && w.Text.Text != "ash" {
				continue
			}
			seen++
			near := math.Inf(1)
			for _, c := range crowns {
				near = min(near, math.Hypot(c.At.X-w.box.Centre().X, c.At.Y-w.box.Centre().Y)-c.Radius)
			}
			if near > 30 {
				t.Errorf("at text %v %q stands %.0f dp off the nearest crown", text, w.Text.Text, near)
			}
		}
		if seen == 0 {
			t.Errorf("at text %v no tree is named", text)
		}
	}
}
