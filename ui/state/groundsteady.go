package state

import "lidmark/ui/scene"

// NoBand is an area of the room as it is on a day without the band over the room.
func (s State) NoBand(a scene.Area) scene.Area {
	if s.bandKept() {
		a.Y, a.H = a.Y-BandHeight, a.H+BandHeight
	}
	return a
}

// underBand is an area of the room as it is on a day with the band over the room.
func (s State) underBand(a scene.Area) scene.Area {
	if s.ribboned() && !s.bandKept() {
		_, a = cutTop(a, BandHeight)
	}
	return a
}

// steady is the camera that shows all of a ground in a frame, the same on every day: the
// band over the room may cut what lies above what stands, and moves nothing.
func (s State) steady(all, stood, frame scene.Area) scene.Camera {
	open, low := s.NoBand(frame), s.underBand(frame)
	kept := all
	if !stood.Empty() {
		kept.Y, kept.H = stood.Y, all.Bottom()-stood.Y
	}
	c := scene.Fit(all, open)
	if k := scene.Fit(kept, low).Scale; k < c.Scale {
		c = scene.Camera{Scale: k, Shift: open.Centre().Sub(all.Centre().Mul(k))}
	}
	covered := low.Y - c.ScreenArea(kept).Y
	return c.Pan(scene.Point{Y: max(0, covered)})
}
