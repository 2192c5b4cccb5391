package view_test

import (
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestFramesEndBeforeTheScrollBar: in every room with rows the frame of the one that is
// taken ends 4 dp before the bar beside it.
func TestFramesEndBeforeTheScrollBar(t *testing.T) {
	rooms := map[string]state.State{"batch": filled(t, "batch room"), "late": filled(t, "late day")}
	table := open(t)
	table.Room, table.Pane = state.Yard, state.Table
	table.Selection = state.Select(table.Shown()[0].Nuc.Nuc.Subject())
	rooms["table"] = table
	rooms["record"] = walking(t)
	rooms["review"] = pressed(reviews(t)["review"], "Down", "Down")
	for name, s := range rooms {
		found := 0
		for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {1440, 620, 1}, {1920, 1080, 1.5}} {
			s.Width, s.Height, s.Text = size[0], size[1], size[2]
			var frames, bars []scene.Area
			for _, p := range walk(t, window(s), s.Size()) {
				switch r, ok := p.mark.(scene.Rect); {
				case ok && r.Fill == scene.Off && r.W == 4 && r.Radius == 2:
					bars = append(bars, r.Area)
				case ok && r.Stroke.Width == 1.5 && r.Radius == 5 && (r.Fill == scene.PenTint || r.Fill == scene.ActTint) && r.W > 300:
					frames = append(frames, r.Area)
				}
			}
			for _, bar := range bars {
				for _, frame := range frames {
					if frame.X > bar.X || bar.X > frame.Right()+20 || frame.Bottom() < bar.Y || bar.Bottom() < frame.Y {
						continue
					}
					found++
					if end := frame.Right() + 0.75; end > bar.X-4 || end < bar.X-5 {
						t.Errorf("%s, %v: the frame ends at %v, the bar begins at %v", name, size, end, bar.X)
					}
				}
			}
		}
		if found == 0 {
			t.Errorf("%s: no frame stands beside a bar", name)
		}
	}
}
