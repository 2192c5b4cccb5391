package paper

import (
	"math"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// paints are the colours of front marks by their names in a book, easily told
// apart by every eye (Okabe and Ito).
var paints = map[string]colour{
	"white": 0xFFFFFF, "black": 0x000000, "yellow": 0xF0E442, "red": 0xD55E00,
	"green": 0x009E73, "blue": 0x0072B2, "sky": 0x56B4E9, "orange": 0xE69F00,
}

// front draws a nuc's front mark about a point and tells whether it knows the
// shape. In black and white it is an outline.
func (s *sheet) front(m book.FrontMarked, c scene.Point, r float64) bool {
	var shape []scene.Point
	box := func(w, h float64) {
		shape = []scene.Point{{X: -w, Y: -h}, {X: w, Y: -h}, {X: w, Y: h}, {X: -w, Y: h}}
	}
	switch m.Shape {
	case "disc", "ring":
		shape = round(1)
	case "square":
		box(0.88, 0.88)
	case "triangle":
		shape = []scene.Point{{Y: -1.05}, {X: 1.05, Y: 0.8}, {X: -1.05, Y: 0.8}}
	case "bar":
		box(1.1, 0.5)
	case "post":
		box(0.5, 1.1)
	case "cross":
		shape = crossed()
	default:
		return false
	}
	s.painted(shape, c, r, m.Colour)
	if m.Shape == "ring" {
		s.painted(round(0.55), c, r, "white")
	}
	return true
}

// painted draws a shape in a colour of front marks.
func (s *sheet) painted(shape []scene.Point, c scene.Point, r float64, name string) {
	paint, known := paints[name]
	if s.Pure || !known {
		paint = paints["white"]
	}
	for i := range shape {
		shape[i] = c.Add(shape[i].Mul(r))
	}
	s.filling(paint)
	s.drawing(stroke{black, 0.35})
	s.pdf.Polygon(s.points(shape), "FD")
}

// crossed is the outline of an upright cross.
func crossed() []scene.Point {
	const in, out = 0.35, 1.05
	return []scene.Point{
		{X: -in, Y: -out},
		{X: in, Y: -out},
		{X: in, Y: -in},
		{X: out, Y: -in},
		{X: out, Y: in},
		{X: in, Y: in},
		{X: in, Y: out},
		{X: -in, Y: out},
		{X: -in, Y: in},
		{X: -out, Y: in},
		{X: -out, Y: -in},
		{X: -in, Y: -in},
	}
}

func round(r float64) []scene.Point {
	const n = 36
	out := make([]scene.Point, n)
	for i := range out {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / n)
		out[i] = scene.Point{X: r * cos, Y: r * sin}
	}
	return out
}
