package view

import (
	"math"

	"lidmark/ui/scene"
)

// smooth is a line through the points without corners: a Catmull-Rom spline in
// eight steps a piece.
func smooth(points []scene.Point) []scene.Point {
	if len(points) < 3 {
		return points
	}
	const steps = 8
	get := func(i int) scene.Point { return points[min(max(i, 0), len(points)-1)] }
	out := []scene.Point{points[0]}
	for i := 0; i < len(points)-1; i++ {
		a, b, c, d := get(i-1), get(i), get(i+1), get(i+2)
		for s := 1; s <= steps; s++ {
			t := float64(s) / steps
			out = append(out, at(spline(a.X, b.X, c.X, d.X, t), spline(a.Y, b.Y, c.Y, d.Y, t)))
		}
	}
	return out
}

func spline(a, b, c, d, t float64) float64 {
	return 0.5 * (2*b + (c-a)*t + (2*a-5*b+4*c-d)*t*t + (3*b-a-3*c+d)*t*t*t)
}

// along are points on a line at even steps.
func along(points []scene.Point, step float64) []scene.Point {
	var out []scene.Point
	rest := 0.0
	for i := 1; i < len(points); i++ {
		a, d := points[i-1], points[i].Sub(points[i-1])
		long := math.Hypot(d.X, d.Y)
		for ; rest <= long && long > 0; rest += step {
			out = append(out, a.Add(d.Mul(rest/long)))
		}
		rest -= long
	}
	return out
}

// beside is a line moved aside by d, to the right of the way it runs.
func beside(points []scene.Point, d float64) []scene.Point {
	out := make([]scene.Point, len(points))
	for i, p := range points {
		a, b := points[max(i-1, 0)], points[min(i+1, len(points)-1)]
		way := b.Sub(a)
		if long := math.Hypot(way.X, way.Y); long > 0 {
			p = p.Add(at(-way.Y, way.X).Mul(d / long))
		}
		out[i] = p
	}
	return out
}
