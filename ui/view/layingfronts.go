package view

import "lidmark/ui/scene"

// wornMark is a mark on the front of a box, and the lid on which it is drawn.
type wornMark struct {
	at   scene.Point
	lid  float64
	mark scene.Front
}

// frontMarks draws the marks of the fronts over lids and arrows, at the upper right of
// each lid; on a small one they stand out over its corner.
func (m *layoutMap) frontMarks() {
	for _, f := range m.marked {
		if f.lid < mapLidLeast {
			continue
		}
		out, r := 0.37, max(3.2, f.lid*0.10)
		if f.lid < mapLidFull {
			out, r = 0.44, max(2.6, f.lid*0.17)
		}
		m.frontMark(f.at.Add(at(out*f.lid, -out*f.lid)), r, f.mark)
	}
}

// frontMark draws a mark so far about a point.
func (m *layoutMap) frontMark(c scene.Point, r float64, f scene.Front) {
	edge := stroke(scene.Ink, max(1, r*0.22))
	outline := func(corners ...float64) {
		points := make([]scene.Point, len(corners)/2)
		for i := range points {
			points[i] = c.Add(at(corners[2*i], corners[2*i+1]).Mul(r))
		}
		m.add(scene.Poly{Points: points, Fill: f.Role, Stroke: edge})
	}
	box := func(w, h float64) { outline(-w, -h, w, -h, w, h, -w, h) }
	switch f.Shape {
	case scene.Disc:
		m.add(scene.Circle{At: c, Radius: r, Fill: f.Role, Stroke: edge})
	case scene.Ring:
		m.add(scene.Circle{At: c, Radius: r * 0.75, Fill: scene.Panel, Stroke: stroke(scene.Ink, edge.Width*0.8+r*0.5)},
			scene.Circle{At: c, Radius: r * 0.75, Stroke: stroke(f.Role, r*0.42)})
	case scene.Square:
		box(0.88, 0.88)
	case scene.LevelBar:
		box(1.1, 0.5)
	case scene.Post:
		box(0.5, 1.1)
	case scene.Triangle:
		outline(0, -1.05, 1.05, 0.8, -1.05, 0.8)
	case scene.Cross:
		const a, l = 0.38, 1.05
		outline(-a, -l, a, -l, a, -a, l, -a, l, a, a, a, a, l, -a, l, -a, a, -l, a, -l, -a, -a, -a)
	}
}
