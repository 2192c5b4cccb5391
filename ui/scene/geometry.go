package scene

import "math"

// Point is a place: x to the right, y downwards, in dp or in a pane's world.
type Point struct{ X, Y float64 }

// Add returns p moved by q.
func (p Point) Add(q Point) Point { return Point{p.X + q.X, p.Y + q.Y} }

// Sub returns the way from q to p.
func (p Point) Sub(q Point) Point { return Point{p.X - q.X, p.Y - q.Y} }

// Mul returns p with both coordinates times k.
func (p Point) Mul(k float64) Point { return Point{p.X * k, p.Y * k} }

// distanceTo returns the distance from p to the segment from a to b.
func (p Point) distanceTo(a, b Point) float64 {
	d, w := b.Sub(a), p.Sub(a)
	t := 0.0
	if n := d.X*d.X + d.Y*d.Y; n > 0 {
		t = max(0, min(1, (w.X*d.X+w.Y*d.Y)/n))
	}
	return math.Hypot(w.X-t*d.X, w.Y-t*d.Y)
}

// Area is an upright rectangle by its upper left corner, width and height. The
// zero Area is empty; so is one whose width or height is not above zero.
type Area struct{ X, Y, W, H float64 }

// Between returns the area with the two opposite corners a and b, in any order.
func Between(a, b Point) Area {
	return Area{min(a.X, b.X), min(a.Y, b.Y), math.Abs(a.X - b.X), math.Abs(a.Y - b.Y)}
}

// Around returns the square of the given side with its centre at c.
func Around(c Point, side float64) Area {
	return Area{c.X - side/2, c.Y - side/2, side, side}
}

// Right returns the x of the right edge.
func (a Area) Right() float64 { return a.X + a.W }

// Bottom returns the y of the lower edge.
func (a Area) Bottom() float64 { return a.Y + a.H }

// Centre returns the point in the middle.
func (a Area) Centre() Point { return Point{a.X + a.W/2, a.Y + a.H/2} }

// Empty reports whether nothing lies in a.
func (a Area) Empty() bool { return !(a.W > 0 && a.H > 0) }

// Inset returns a with every edge moved inwards by d, outwards if d is negative.
func (a Area) Inset(d float64) Area { return Area{a.X + d, a.Y + d, a.W - 2*d, a.H - 2*d} }

// Contains reports whether p lies in a: left and upper edge included, right and
// lower edge not, so that areas side by side share no point.
func (a Area) Contains(p Point) bool {
	return p.X >= a.X && p.Y >= a.Y && p.X < a.X+a.W && p.Y < a.Y+a.H
}

// Overlaps reports whether a and b share a point. A line without thickness, an
// area of no width or no height, overlaps what it crosses.
func (a Area) Overlaps(b Area) bool {
	return a.X <= b.Right() && b.X <= a.Right() && a.Y <= b.Bottom() && b.Y <= a.Bottom()
}

// Intersect returns the part that a and b share, empty if there is none.
func (a Area) Intersect(b Area) Area {
	x, y := max(a.X, b.X), max(a.Y, b.Y)
	return Area{x, y, min(a.Right(), b.Right()) - x, min(a.Bottom(), b.Bottom()) - y}
}

// hull returns the smallest area around the points.
func hull(ps []Point) Area {
	if len(ps) == 0 {
		return Area{}
	}
	lo, hi := ps[0], ps[0]
	for _, p := range ps[1:] {
		lo = Point{min(lo.X, p.X), min(lo.Y, p.Y)}
		hi = Point{max(hi.X, p.X), max(hi.Y, p.Y)}
	}
	return Between(lo, hi)
}

// within reports whether p lies inside the polygon, by the even-odd rule.
func within(p Point, poly []Point) bool {
	in := false
	for i, a := range poly {
		b := poly[(i+1)%len(poly)]
		if (a.Y > p.Y) != (b.Y > p.Y) && p.X < a.X+(p.Y-a.Y)*(b.X-a.X)/(b.Y-a.Y) {
			in = !in
		}
	}
	return in
}
