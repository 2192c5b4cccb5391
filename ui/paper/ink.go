package paper

import (
	"codeberg.org/go-pdf/fpdf"

	"lidmark/ui/scene"
)

// tone is a strength of ink. The zero tone is black.
type tone uint8

const (
	black tone = iota
	grey       // text that explains
	pale       // what is not certain, frames to write into
	hair       // rules between rows
	band       // the ground of a heading
	white
	none
)

// greys are the tones as shares of white, of 255.
var greys = [...]colour{black: 0x000000, grey: 0x444444, pale: 0x777777, hair: 0xBBBBBB, band: 0xEDEDED, white: 0xFFFFFF}

// colour is red, green and blue, a byte each.
type colour int32

func (c colour) rgb() (r, g, b int) { return int(c >> 16 & 0xFF), int(c >> 8 & 0xFF), int(c & 0xFF) }

// colour is a tone as it is printed: in pure black and white a tint is white
// and every other grey black.
func (s *sheet) colour(t tone) colour {
	switch {
	case !s.Pure:
		return greys[t]
	case t == band || t == white:
		return greys[white]
	default:
		return greys[black]
	}
}

// stroke is a line to draw: its tone and its width, mm. The zero stroke draws
// none.
type stroke struct {
	tone  tone
	width float64
}

func (s *sheet) drawing(l stroke) {
	if c := s.colour(l.tone); c != s.now.draw {
		s.pdf.SetDrawColor(c.rgb())
		s.now.draw = c
	}
	if l.width != s.now.width {
		s.pdf.SetLineWidth(l.width * s.zoom)
		s.now.width = l.width
	}
}

func (s *sheet) filling(c colour) {
	if c != s.now.fill {
		s.pdf.SetFillColor(c.rgb())
		s.now.fill = c
	}
}

// style makes ready to fill and to draw, and says it as the library wants it;
// "" is neither.
func (s *sheet) style(fill tone, l stroke) string {
	how := ""
	if fill != none {
		s.filling(s.colour(fill))
		how = "F"
	}
	if l.width > 0 {
		s.drawing(l)
		how += "D"
	}
	return how
}

// line draws a line.
func (s *sheet) line(x1, y1, x2, y2 float64, l stroke) {
	s.drawing(l)
	s.pdf.Line(x1*s.zoom, y1*s.zoom, x2*s.zoom, y2*s.zoom)
}

// rect draws a rectangle with corners of a radius.
func (s *sheet) rect(a scene.Area, radius float64, fill tone, l stroke) {
	how, k := s.style(fill, l), s.zoom
	switch {
	case how == "":
	case radius > 0:
		s.pdf.RoundedRect(a.X*k, a.Y*k, a.W*k, a.H*k, radius*k, "1234", how)
	default:
		s.pdf.Rect(a.X*k, a.Y*k, a.W*k, a.H*k, how)
	}
}

// circle draws a circle.
func (s *sheet) circle(c scene.Point, radius float64, fill tone, l stroke) {
	if how := s.style(fill, l); how != "" {
		s.pdf.Circle(c.X*s.zoom, c.Y*s.zoom, radius*s.zoom, how)
	}
}

// polygon draws a closed shape.
func (s *sheet) polygon(points []scene.Point, fill tone, l stroke) {
	if how := s.style(fill, l); how != "" {
		s.pdf.Polygon(s.points(points), how)
	}
}

// path draws an open line through points.
func (s *sheet) path(points []scene.Point, l stroke, dash ...float64) {
	if len(points) < 2 {
		return
	}
	s.drawing(l)
	if len(dash) > 0 {
		for i := range dash {
			dash[i] *= s.zoom
		}
		s.pdf.SetDashPattern(dash, 0)
		defer s.pdf.SetDashPattern(nil, 0)
	}
	s.pdf.MoveTo(points[0].X*s.zoom, points[0].Y*s.zoom)
	for _, p := range points[1:] {
		s.pdf.LineTo(p.X*s.zoom, p.Y*s.zoom)
	}
	s.pdf.DrawPath("D")
}

func (s *sheet) points(points []scene.Point) []fpdf.PointType {
	out := make([]fpdf.PointType, len(points))
	for i, p := range points {
		out[i] = fpdf.PointType{X: p.X * s.zoom, Y: p.Y * s.zoom}
	}
	return out
}

// clipped draws within a shape.
func (s *sheet) clipped(points []scene.Point, draw func()) {
	s.pdf.ClipPolygon(s.points(points), false)
	draw()
	s.pdf.ClipEnd()
	s.forget() // what was told within holds no longer
}
