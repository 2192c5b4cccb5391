package paint

import (
	"math"
	"slices"

	"lidmark/ui/scene"
)

// hatch adds lines of the given width at 45 degrees to p, cut to the polygon.
// One of them goes through origin, the others pitch apart. Those that pass by
// clip are left out.
func (p *path) hatch(polygon []scene.Point, clip scene.Area, origin scene.Point, pitch, width float64, falling bool) {
	q := math.Sqrt(0.5)
	along, across := scene.Point{X: q, Y: -q}, scene.Point{X: q, Y: q}
	if falling {
		along, across = across, scene.Point{X: -q, Y: q}
	}
	lo, hi := span(polygon, origin, across)
	first, last := span(cornersOf(clip), origin, across)
	lo, hi = max(lo, first-pitch), min(hi, last+pitch)
	var cuts []float64
	for k := math.Ceil(lo/pitch) * pitch; k < hi; k += pitch {
		from := origin.Add(across.Mul(k))
		cuts = crossings(cuts[:0], polygon, from, along)
		for i := 0; i+1 < len(cuts); i += 2 {
			ends := [2]scene.Point{from.Add(along.Mul(cuts[i])), from.Add(along.Mul(cuts[i+1]))}
			p.stroke(ends[:], width, false, false)
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

// crossings appends to cuts how far along the ray from p in direction d the
// edges of the polygon are met, nearest first.
func crossings(cuts []float64, polygon []scene.Point, p, d scene.Point) []float64 {
	for i, a := range polygon {
		e := polygon[(i+1)%len(polygon)].Sub(a)
		den := outer(d, e)
		if math.Abs(den) < 1e-9 {
			continue
		}
		w := a.Sub(p)
		if u := outer(w, d) / den; u >= 0 && u < 1 {
			cuts = append(cuts, outer(w, e)/den)
		}
	}
	slices.Sort(cuts)
	return cuts
}

// inner returns the inner product of a and b.
func inner(a, b scene.Point) float64 { return a.X*b.X + a.Y*b.Y }

// outer returns the outer product of a and b.
func outer(a, b scene.Point) float64 { return a.X*b.Y - a.Y*b.X }
