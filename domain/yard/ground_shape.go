package yard

import (
	"math"
	"slices"

	"github.com/paulmach/orb"
	"github.com/paulmach/orb/planar"

	"lidmark/domain/book"
)

// shape is a feature as geometry: a line as wide as twice half, a point with the
// radius half, or an outline with what lies in it.
type shape struct {
	*book.FeatureDrawn
	line orb.LineString // of an outline it is closed
	area bool
	half float64
}

// outlined are the features that are outlines however they are drawn.
var outlined = []book.FeatureKind{book.Boundary, book.Dwelling, book.ColdHollow}

// rows are the features that are lines with a width: one that comes back to where it
// began goes round a place, and is an outline only where it has no width.
var rows = []book.FeatureKind{book.Hedge, book.Wall, book.Track}

func shapeOf(f *book.FeatureDrawn) shape {
	s := shape{FeatureDrawn: f, line: make(orb.LineString, len(f.Points)), half: max(f.Width, 0) / 2}
	for i, p := range f.Points {
		s.line[i] = of(p)
	}
	n := len(s.line)
	ring := f.Width > 0 && slices.Contains(rows, f.What) // it goes round what lies in it
	closed := n > 3 && s.line[0] == s.line[n-1] && !ring
	if s.area = closed || n > 2 && slices.Contains(outlined, f.What); s.area && !closed {
		s.line = append(s.line, s.line[0])
	}
	if s.area {
		s.half = 0
	}
	if n == 1 {
		s.line = append(s.line, s.line[0])
	}
	return s
}

func of(p book.Point) orb.Point { return orb.Point{p.X, p.Y} }

// holds tells whether a point lies in an outline.
func (s *shape) holds(p orb.Point) bool { return s.area && planar.RingContains(orb.Ring(s.line), p) }

// edge is how far a point is from the line of a shape, in metres, without its width.
func (s *shape) edge(p orb.Point) float64 { return planar.DistanceFrom(s.line, p) }

// away is how far a point is from a shape in metres; 0 in it.
func (s *shape) away(p orb.Point) float64 {
	if s.holds(p) {
		return 0
	}
	return max(s.edge(p)-s.half, 0)
}

// meets tells whether the way from one point to another touches a shape.
func (s *shape) meets(a, b orb.Point) bool {
	if s.holds(a) {
		return true
	}
	for i := 1; i < len(s.line); i++ {
		if apart(a, b, s.line[i-1], s.line[i]) <= s.half*s.half {
			return true
		}
	}
	return false
}

// apart is the square of the distance of two stretches.
func apart(a, b, c, d orb.Point) float64 {
	if side(a, b, c)*side(a, b, d) < 0 && side(c, d, a)*side(c, d, b) < 0 {
		return 0
	}
	return min(
		planar.DistanceFromSegmentSquared(a, b, c), planar.DistanceFromSegmentSquared(a, b, d),
		planar.DistanceFromSegmentSquared(c, d, a), planar.DistanceFromSegmentSquared(c, d, b))
}

// side is above 0 where c lies to the left of the way from a to b.
func side(a, b, c orb.Point) float64 {
	return (b[0]-a[0])*(c[1]-a[1]) - (b[1]-a[1])*(c[0]-a[0])
}

// towards is a point so many metres away in a direction, degrees clockwise from north.
func towards(p orb.Point, bearing, metres float64) orb.Point {
	sin, cos := math.Sincos(bearing * math.Pi / 180)
	return orb.Point{p[0] + sin*metres, p[1] + cos*metres}
}
