package paint

import (
	"math"

	"lidmark/ui/scene"
)

// path is an area in device pixels: closed contours, filled where their windings
// do not cancel. It is reused, so that painting allocates nothing once warm.
type path struct {
	points []scene.Point
	ends   []int // where each contour ends in points
}

// reset empties the path.
func (p *path) reset() { p.points, p.ends = p.points[:0], p.ends[:0] }

// add puts a point to the contour being drawn.
func (p *path) add(q scene.Point) { p.points = append(p.points, q) }

// close ends the contour being drawn.
func (p *path) close() { p.ends = append(p.ends, len(p.points)) }

// contour adds a whole contour.
func (p *path) contour(points []scene.Point) {
	p.points = append(p.points, points...)
	p.close()
}

// bounds returns the smallest area around the path.
func (p *path) bounds() (lo, hi scene.Point) {
	lo = scene.Point{X: math.Inf(1), Y: math.Inf(1)}
	hi = scene.Point{X: math.Inf(-1), Y: math.Inf(-1)}
	for _, q := range p.points {
		lo.X, lo.Y = min(lo.X, q.X), min(lo.Y, q.Y)
		hi.X, hi.Y = max(hi.X, q.X), max(hi.Y, q.Y)
	}
	return lo, hi
}

// arc adds points on the circle about c from angle from through sweep, in
// radians clockwise from the right, ends included, close enough together that
// nobody sees the corners.
func (p *path) arc(c scene.Point, r, from, sweep float64) {
	n := arcSteps(r, sweep)
	for i := range n + 1 {
		sin, cos := math.Sincos(from + sweep*float64(i)/float64(n))
		p.add(scene.Point{X: c.X + r*cos, Y: c.Y + r*sin})
	}
}

// arcSteps returns in how many chords an arc is drawn so that none strays more
// than a twentieth of a pixel from it.
func arcSteps(r, sweep float64) int {
	if r < 0.05 {
		return 1
	}
	step := 2 * math.Acos(max(0.5, 1-0.05/r))
	return max(1, int(math.Ceil(math.Abs(sweep)/step)))
}

// circle adds a circle, its winding turned if reverse.
func (p *path) circle(c scene.Point, r float64, reverse bool) {
	sweep := 2 * math.Pi
	if reverse {
		sweep = -sweep
	}
	p.arc(c, r, 0, sweep)
	p.close()
}

// round adds a rectangle with rounded corners.
func (p *path) round(a scene.Area, r float64, reverse bool) {
	r = max(0, min(r, a.W/2, a.H/2))
	start := len(p.points)
	for i, c := range [4]scene.Point{
		{X: a.Right() - r, Y: a.Bottom() - r},
		{X: a.X + r, Y: a.Bottom() - r},
		{X: a.X + r, Y: a.Y + r},
		{X: a.Right() - r, Y: a.Y + r},
	} {
		p.arc(c, r, float64(i)*math.Pi/2, math.Pi/2)
	}
	if reverse {
		for i, j := start, len(p.points)-1; i < j; i, j = i+1, j-1 {
			p.points[i], p.points[j] = p.points[j], p.points[i]
		}
	}
	p.close()
}
