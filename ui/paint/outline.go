package paint

import (
	"math"

	"lidmark/ui/scene"
)

// body is the outline of a lid with the notch of its entrance cut out, about the
// lid's centre, in dp.
type body struct {
	half     float64       // half the side of the square
	square   []scene.Point // the square with its corners, without the notch
	notched  []scene.Point // the same with the notch
	inward   scene.Point   // the way from the entrance to the centre, of length 1
	diagonal bool          // the entrance sits on a corner of an unturned lid
	notch    float64       // width of the notch
	away     scene.Point   // how far the letter gives way to the notch of a small lid
}

// newBody returns the outline of l. What depends on size has a border at 20 dp,
// below which everything is plainer, and at 15 and 24 dp.
func newBody(l *scene.Lid) body {
	s := l.Size
	b := body{half: s/2 - inset(l)*s}
	corner := 0.26
	if l.Condition.Trouble() {
		corner = 0.36
	}
	b.square = square(b.half, b.half*corner, l.Turn, l.Condition.Trouble())
	width, depth, away := 0.30, 0.26, 0.0
	switch { // of a small lid the notch is shallow: it would run into the letter
	case s < 15:
		width, depth, away = 0.38, 0.30, 0.065
	case small(l):
		width, depth, away = 0.36, 0.24, 0.04
	case s < roomy:
		depth, away = 0.22, 0.04
	}
	b.notch = b.half * 2 * width
	sin, cos := math.Sincos(l.Entrance * math.Pi / 180)
	b.inward = scene.Point{X: -sin, Y: cos}
	b.away = b.inward.Mul(away * s)
	b.diagonal = l.Turn == 0 && math.Abs(sin) > 0.38 && math.Abs(cos) > 0.38
	b.notched = b.cut(l.Entrance, depth*b.half)
	return b
}

// roomy is the size in dp below which letter and strokes keep off notch and body.
const roomy = 24.0

// small reports whether the lid is so small that it has neither rim nor hatch.
func small(l *scene.Lid) bool { return l.Size < 20 }

// inset returns the room around the body as a share of the lid's size.
func inset(l *scene.Lid) float64 {
	switch {
	case small(l):
		return 0.07
	case l.NoRim:
		return 0.10
	}
	return 0.13
}

// edgeAt returns how far from the centre the square's edge is at a bearing, in degrees.
func (b *body) edgeAt(bearing float64) float64 {
	p := walk(b.square, bearing)[0]
	return math.Hypot(p.X, p.Y)
}

// cut returns the square without the notch: the line from one side of the
// entrance round to the other, then the notch's foot. On the corner of an
// unturned lid the notch is a square bite.
func (b *body) cut(entrance, depth float64) []scene.Point {
	width := b.notch
	if b.diagonal {
		width *= 1.25
	}
	round := walk(b.square, entrance)
	core := between(round, width/2, length(round)-width/2)
	first, last := core[0], core[len(core)-1]
	if b.diagonal {
		foot, other := scene.Point{X: last.X, Y: first.Y}, scene.Point{X: first.X, Y: last.Y}
		if math.Hypot(other.X, other.Y) <= math.Hypot(foot.X, foot.Y) {
			foot = other
		}
		return append(core, foot)
	}
	in, narrow := b.inward.Mul(depth), last.Sub(first).Mul(0.12)
	return append(core, last.Add(in).Sub(narrow), first.Add(in).Add(narrow))
}

// square returns the outline of a square about the origin, turned by degrees
// clockwise, its corners round or cut.
func square(half, radius, turn float64, cut bool) []scene.Point {
	const steps = 5
	sin, cos := math.Sincos(turn * math.Pi / 180)
	var out []scene.Point
	for i, c := range [4][2]float64{{1, -1}, {1, 1}, {-1, 1}, {-1, -1}} {
		for j := range steps + 1 {
			if cut && j != 0 && j != steps {
				continue
			}
			s, k := math.Sincos((float64(i-1) + float64(j)/steps) * math.Pi / 2)
			x, y := c[0]*(half-radius)+radius*k, c[1]*(half-radius)+radius*s
			out = append(out, scene.Point{X: x*cos - y*sin, Y: x*sin + y*cos})
		}
	}
	return out
}

// walk returns the closed outline as a line that starts and ends where the ray
// from the origin at the bearing, in degrees clockwise from the top, leaves it.
func walk(outline []scene.Point, bearing float64) []scene.Point {
	sin, cos := math.Sincos(bearing * math.Pi / 180)
	ray := scene.Point{X: sin, Y: -cos}
	n := len(outline)
	for i, a := range outline {
		e := outline[(i+1)%n].Sub(a)
		den := outer(ray, e)
		if math.Abs(den) < 1e-9 {
			continue
		}
		t, u := outer(a, e)/den, outer(a, ray)/den
		if t > 0 && u >= -1e-6 && u <= 1+1e-6 {
			start := ray.Mul(t)
			line := append(make([]scene.Point, 0, n+4), start)
			line = append(append(line, outline[i+1:]...), outline[:i+1]...)
			return append(line, start)
		}
	}
	return outline
}
