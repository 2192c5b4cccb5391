package scene_test

import (
	"slices"
	"testing"

	"lidmark/ui/scene"
)

// TestStopsAreRead: what stands on one line from left to right, line after line as
// painted, each once, without other kinds and without what its pane cuts off.
func TestStopsAreRead(t *testing.T) {
	key := func(id string, x, y, h float64) scene.Rect {
		return scene.Rect{Area: scene.Area{X: x, Y: y, W: 20, H: h}, Tag: scene.Tag{Ref: scene.Ref{Kind: "key", ID: id}}}
	}
	other := key("other", 0, 0, 10)
	other.Ref.Kind = "ground"
	s := scene.Scene{Marks: []scene.Mark{
		other,
		key("c", 90, 10, 20), key("b", 60, 12, 14), key("a", 30, 10, 20),
		key("e", 80, 60, 40), key("d", 10, 70, 20),
		key("f", 40, 90, 10), // below the middle of the one before, and painted later
		key("a", 0, 200, 10),
		scene.Pane{Clip: scene.Area{X: 0, Y: 100, W: 50, H: 50}, Camera: scene.Camera{Shift: scene.Point{Y: 100}}, Marks: []scene.Mark{
			key("h", 20, 5, 10), key("g", 5, 5, 10), key("cut off", 5, 70, 10),
		}},
	}}
	var got []string
	for _, r := range s.Stops("key") {
		got = append(got, r.ID)
	}
	if want := []string{"a", "b", "c", "d", "e", "f", "g", "h"}; !slices.Equal(got, want) {
		t.Errorf("Tab goes through %v, want %v", got, want)
	}
}
