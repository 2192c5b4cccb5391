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

// steady is the camera that shows all of a ground in a frame, the same on every day: with
// the band over the room what is in it, without the margin around that, lies whole below
// the band, and without the band it lies there too.
func (s State) steady(all, whole, frame scene.Area) scene.Camera {
	open, low := s.NoBand(frame), s.underBand(frame)
	c := scene.Camera{Scale: min(scene.Fit(all, open).Scale, scene.Fit(whole, low).Scale)}
	c.Shift = open.Centre().Sub(all.Centre().Mul(c.Scale))
	return c.Pan(scene.Point{Y: max(0, low.Y-c.ScreenArea(whole).Y)})
}
