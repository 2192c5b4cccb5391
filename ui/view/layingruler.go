package view

import (
	"fmt"
	"math"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// ruler draws what is measured: from a point to another, or to the pointer.
func (m *layoutMap) ruler() {
	from, to, ok := m.s.Measured()
	if !ok {
		return
	}
	a, b := m.camera.Screen(state.OnGround(from)), m.camera.Screen(state.OnGround(to))
	m.add(scene.Line{From: a, To: b, Stroke: stroke(scene.Pen, 2)},
		scene.Circle{At: a, Radius: 3.5, Fill: scene.Panel, Stroke: stroke(scene.Pen, 2)},
		scene.Circle{At: b, Radius: 3.5, Fill: scene.Panel, Stroke: stroke(scene.Pen, 2)})
	words, f := measuredWords(from, to), ink(13).semi().as(scene.Pen)
	box := nameBox(a.Add(b).Mul(0.5).Add(at(0, -8)), m.width(words, f)+8, f)
	in := m.frame.Inset(4)
	box.X = min(max(box.X, in.X), in.Right()-box.W)
	box.Y = min(max(box.Y, in.Y), in.Bottom()-box.H)
	m.add(scene.Rect{Area: box.Inset(-2), Radius: 3, Fill: scene.Panel, Stroke: stroke(scene.Pen, 1)})
	m.centre(box.Centre().X, box.Y+box.H*0.78, words, f)
}

// measuredWords are how far a point is from another, and its bearing from there.
func measuredWords(from, to book.Point) string {
	east, north := to.X-from.X, to.Y-from.Y
	bearing := math.Mod(math.Atan2(east, north)*180/math.Pi+360, 360)
	return fmt.Sprintf("%.1f m, bearing %.0f°", math.Hypot(east, north), bearing)
}
