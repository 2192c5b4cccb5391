package paint

import (
	"math"

	"lidmark/ui/scene"
)

// hatch adds lines of the given width at 45 degrees to p, cut to the polygon: each is the
// part of it that lies in the line. One of them goes through origin, the others pitch
// apart. Those that pass by clip are left out.
func (p *path) hatch(polygon []scene.Point, clip scene.Area, origin scene.Point, pitch, width float64, falling bool) {
	q := math.Sqrt(0.5)
	across := scene.Point{X: q, Y: q}
	if falling {
		across = scene.Point{X: -q, Y: q}
	}
	lo, hi := span(polygon, origin, across)
	first, last := span(cornersOf(clip), origin, across)
	lo, hi = max(lo, first)-width/2, min(hi, last)+width/2
	var above, within []scene.Point
	for k := math.Ceil(lo/pitch) * pitch; k < hi; k += pitch {
		above = beyond(above[:0], polygon, origin.Add(across.Mul(k-width/2)), across)
		within = beyond(within[:0], above, origin.Add(across.Mul(k+width/2)), across.Mul(-1))
		if len(within) > 2 {
			p.contour(within)
		}
	}
}

// span returns how far the points reach along the direction d from origin.
func span(points []scene.Point, origin, d scene.Point) (lo, hi float64) {
	lo, hi = math.Inf(1), math.Inf(-1)
	for _, v := range points {
		k := inner(v.Sub(origin), d)
		lo, hi = min(lo, k), max(hi, k)
	}
	return lo, hi
}

// beyond appends to part what of a polygon lies beyond the straight line through p that
// the direction d crosses upright.
func beyond(part, polygon []scene.Point, p, d scene.Point) []scene.Point {
	for i, a := range polygon {
		b := polygon[(i+1)%len(polygon)]
		ka, kb := inner(a.Sub(p), d), inner(b.Sub(p), d)
		if ka >= 0 {
			part = append(part, a)
		}
		if (ka < 0) != (kb < 0) {
			part = append(part, a.Add(b.Sub(a).Mul(ka/(ka-kb))))
		}
	}
	return part
}

// inner returns the inner product of a and b.
func inner(a, b scene.Point) float64 { return a.X*b.X + a.Y*b.Y }

// outer returns the outer product of a and b.
func outer(a, b scene.Point) float64 { return a.X*b.Y - a.Y*b.X }
