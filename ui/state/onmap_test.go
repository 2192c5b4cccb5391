package state_test

import (
	"testing"

	"lidmark/ui/scene"
)

// The nuc that the arrows lead to is in sight, however the map was zoomed.
func TestTheMapFollowsTheArrows(t *testing.T) {
	w := start(t).run("yard")
	w.tap(w.ref("A1"), 0)
	w.run("map").run("zoom in").run("zoom in").run("zoom in").run("zoom in")
	for range 40 {
		w.press("Right")
		w.press("Down")
		n := w.nuc(w.chosen())
		at := w.MapCamera().Screen(w.Reading().Spot(n))
		if n.Yard == w.MapYard() && !w.Layout().MapFrame().Contains(scene.Point{X: at.X, Y: at.Y}) {
			t.Fatalf("%s is chosen at %v, outside the map %v", n.Name, at, w.Layout().MapFrame())
		}
	}
}
