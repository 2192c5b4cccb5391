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

// TestTheWallStaysAsItIs: whatever day is looked at, its lids are as large, as far apart and
// named alike; in a window of 1280 by 800 the lids of the demo have names.
func TestTheWallStaysAsItIs(t *testing.T) {
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1920, 1080, 1}, {1920, 1080, 1.5}, {1001, 777, 1}} {
		w := &window{t: t, State: open(t)}
		w.Room, w.Pane = state.Yard, state.Wall
		w.send(state.Resized{Width: size[0], Height: size[1]})
		w.Text = size[2]
		first := w.Wall(w.Layout())
		if size == [3]float64{1280, 800, 1} && !first.Named {
			t.Errorf("at %v the lids have no names", size)
		}
		for day := range 22 {
			now := w.Wall(w.Layout())
			if now.Lid != first.Lid || now.Named != first.Named || now.Across != first.Across || now.Down != first.Down || now.PerRow != first.PerRow || now.All != first.All {
				t.Errorf("at %v on day %d: %d lids of %g in a row, named %t; on the first %d of %g, named %t", size, day, now.PerRow, now.Lid, now.Named, first.PerRow, first.Lid, first.Named)
			}
			w.send(state.Keyed{Key: "."})
		}
		if !w.Away() {
			t.Fatal("the day stays")
		}
	}
}
