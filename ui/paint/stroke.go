package paint

import (
	"math"

	"lidmark/ui/scene"
)

// stroke adds the area that a line of the given width covers along points, in
// device pixels. Joins are round; the ends of an open line are cut, or round.
func (p *path) stroke(points []scene.Point, width float64, closed, round bool) {
	points = distinct(points, closed)
	h := width / 2
	if len(points) < 2 {
		if len(points) == 1 && round {
			p.circle(points[0], h, false)
		}
		return
	}
	if closed && len(points) > 2 {
		p.side(points, h, true, false)
		p.close()
		p.side(points, h, true, true)
		p.close()
		return
	}
	n := len(points) - 1
	p.side(points, h, false, false)
	p.end(points[n], points[n].Sub(points[n-1]), h, round)
	p.side(points, h, false, true)
	p.end(points[0], points[0].Sub(points[1]), h, round)
	p.close()
}

// distinct returns points without those that repeat the one before. It shares
// the slice where there are none.
func distinct(points []scene.Point, closed bool) []scene.Point {
	const tiny = 1e-6
	same := func(a, b scene.Point) bool { return math.Abs(a.X-b.X) < tiny && math.Abs(a.Y-b.Y) < tiny }
	if closed && len(points) > 1 && same(points[0], points[len(points)-1]) {
		points = points[:len(points)-1]
	}
	for i := 1; i < len(points); i++ {
		if same(points[i], points[i-1]) {
			kept := append([]scene.Point(nil), points[:i]...)
			for _, q := range points[i+1:] {
				if !same(q, kept[len(kept)-1]) {
					kept = append(kept, q)
				}
			}
			return kept
		}
	}
	return points
}

// end adds the round end of a line that arrives at c in direction d; a cut end
// needs nothing, as the two sides meet.
func (p *path) end(c, d scene.Point, h float64, round bool) {
	if round {
		p.arc(c, h, math.Atan2(d.Y, d.X)-math.Pi/2, math.Pi)
	}
}

// side adds the line that runs beside points at distance h on their left as seen
// on the screen, walked backwards if back, so that left is then the other side.
func (p *path) side(points []scene.Point, h float64, closed, back bool) {
	n := len(points)
	at := func(i int) scene.Point {
		if i = (i + n) % n; back {
			return points[n-1-i]
		}
		return points[i]
	}
	for i := range n {
		q := at(i)
		switch {
		case !closed && i == 0:
			p.add(q.Add(left(at(1).Sub(q), h)))
		case !closed && i == n-1:
			p.add(q.Add(left(q.Sub(at(i-1)), h)))
		default:
			p.join(q, q.Sub(at(i-1)), at(i+1).Sub(q), h)
		}
	}
}

// left returns the way of length h to the left of direction d.
func left(d scene.Point, h float64) scene.Point {
	l := math.Hypot(d.X, d.Y)
	return scene.Point{X: d.Y / l * h, Y: -d.X / l * h}
}

// join adds the corner at q, where the line comes in direction u and goes on in
// direction v, on the left at distance h. Slight bends get a point; on the
// outside of others an arc; on the inside the crossing of the two sides, or
// where the pieces are too short for one a detour by q, which keeps the winding.
func (p *path) join(q, u, v scene.Point, h float64) {
	lu, lv := math.Hypot(u.X, u.Y), math.Hypot(v.X, v.Y)
	cos := (u.X*v.X + u.Y*v.Y) / (lu * lv)
	a, b := left(u, h), left(v, h)
	turn := u.X*v.Y - u.Y*v.X
	outer := turn > 0 || turn == 0 && cos < 0 // a line that turns right back is round on both its sides
	reach := h * math.Sqrt(max(0, (1-cos)/(1+cos)))
	switch {
	case outer && cos < 0.9:
		from := math.Atan2(a.Y, a.X)
		sweep := math.Acos(max(-1, min(1, cos)))
		p.arc(q, h, from, sweep)
	case outer || reach <= min(lu, lv):
		p.add(q.Add(a.Add(b).Mul(1 / (1 + cos))))
	default:
		p.add(q.Add(a))
		p.add(q)
		p.add(q.Add(b))
	}
}

// dash cuts the line through points into dashes and calls add for each.
func dash(points []scene.Point, closed bool, on, off float64, add func([]scene.Point)) {
	if closed {
		points = append(append([]scene.Point(nil), points...), points[0])
	}
	total := length(points)
	for at := 0.0; at < total; at += on + off {
		add(between(points, at, min(at+on, total)))
	}
}

// length returns how long the line through points is.
func length(points []scene.Point) float64 {
	l := 0.0
	for i := 1; i < len(points); i++ {
		d := points[i].Sub(points[i-1])
		l += math.Hypot(d.X, d.Y)
	}
	return l
}

// between returns the part of the line through points from length a to length b.
func between(points []scene.Point, a, b float64) []scene.Point {
	var out []scene.Point
	l := 0.0
	for i := 1; i < len(points); i++ {
		p, d := points[i-1], points[i].Sub(points[i-1])
		n := math.Hypot(d.X, d.Y)
		if n == 0 {
			continue
		}
		if l+n >= a && l <= b {
			if out == nil {
				out = append(out, p.Add(d.Mul(max(0, (a-l)/n))))
			}
			out = append(out, p.Add(d.Mul(min(1, (b-l)/n))))
		}
		l += n
	}
	return out
}
