package state_test

import (
	"testing"

	"lidmark/ui/state"
)

// TestFewLidsGrow: where there are few the lids of the wall have names, and are the larger
// the more room there is; all stay in sight.
func TestFewLidsGrow(t *testing.T) {
	w := &window{t: t, State: open(t)}
	w.Room, w.Pane = state.Yard, state.Wall
	before := 0.0
	for _, size := range [][2]float64{{1280, 800}, {1920, 1080}} {
		w.send(state.Resized{Width: size[0], Height: size[1]})
		wall := w.Wall(w.Layout())
		if !wall.Named || wall.Lid <= before || wall.All > wall.Height {
			t.Errorf("at %v lids of %g, named %t, %g high of %g", size, wall.Lid, wall.Named, wall.All, wall.Height)
		}
		before = wall.Lid
	}
}
