package paper

import (
	"cmp"
	"fmt"
	"math"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// feature draws something on the ground, as wide as it is.
func (p plot) feature(f book.FeatureDrawn) {
	var at []scene.Point
	for _, q := range f.Points {
		at = append(at, p.at(q))
	}
	if len(at) == 0 {
		return
	}
	wide := f.Width * p.k
	switch f.What {
	case book.Boundary:
		p.path(closed(at), stroke{grey, 0.3}, 3, 0.8, 0.6, 0.8)
	case book.Tree:
		p.circle(at[0], max(wide/2, 1), none, stroke{pale, 0.2})
		p.circle(at[0], 0.5, grey, stroke{})
	case book.Hedge:
		p.path(at, stroke{hair, max(wide, 1.2)})
		p.path(at, stroke{black, 0.3}, 0.4, 0.9)
	case book.Wall:
		p.path(at, stroke{grey, max(wide, 0.7)})
	case book.Track:
		p.path(at, stroke{band, max(wide, 1.6)})
		p.path(at, stroke{pale, 0.25}, 2.2, 1.2)
	case book.VehicleSpot:
		p.circle(at[0], 1, black, stroke{})
	default:
		p.spread(f, at)
	}
}

// spread draws what is an outline, or a spot where it has one point only.
func (p plot) spread(f book.FeatureDrawn, at []scene.Point) {
	fill, l := band, stroke{grey, 0.25}
	if f.What == book.ColdHollow {
		fill, l = none, stroke{pale, 0.2}
	}
	switch {
	case len(at) == 1:
		p.circle(at[0], max(f.Width*p.k/2, 1.1), fill, l)
	case len(at) == 2, f.What == book.Water && f.Points[0] != f.Points[len(f.Points)-1]:
		p.path(at, stroke{pale, max(f.Width*p.k, 0.7)})
	default:
		p.polygon(at, fill, l)
	}
}

// linesTaken keeps names off the lines of what is drawn on the ground.
func (p plot) linesTaken() {
	for _, f := range p.in.Features {
		var at []scene.Point
		for _, q := range f.Points {
			at = append(at, p.at(q))
		}
		wide := 0.6
		switch f.What {
		case book.Tree:
			at = round(1)
			for i := range at {
				at[i] = p.at(f.Points[0]).Add(at[i].Mul(max(f.Width*p.k/2, 1)))
			}
			at = closed(at)
		case book.Hedge, book.Wall, book.Track, book.Water:
			wide = max(f.Width*p.k, 1.2)
		default:
			at = closed(at)
		}
		p.takeAlong(at, wide)
	}
}

// takeAlong takes squares of a side along a line.
func (p plot) takeAlong(at []scene.Point, side float64) {
	for i := 1; i < len(at); i++ {
		d := at[i].Sub(at[i-1])
		n := math.Ceil(math.Hypot(d.X, d.Y) / side)
		for k := 0.0; k <= n && n > 0; k++ {
			if c := at[i-1].Add(d.Mul(k / n)); p.area.Contains(c) {
				p.take(scene.Around(c, side))
			}
		}
	}
}

// featureName writes what something on the ground is where there is room beside its
// middle.
func (p plot) featureName(f book.FeatureDrawn) {
	if len(f.Points) == 0 || f.What == book.Boundary {
		return
	}
	said := cmp.Or(f.Label, f.What.String())
	if f.Height > 0 {
		said += fmt.Sprintf(", %g m high", f.Height)
	}
	b := box{f.Points[0], f.Points[0]}
	for _, q := range f.Points {
		b.around(q, 0)
	}
	shown := scene.Between(p.at(b.low), p.at(b.high)).Inset(-0.1).Intersect(p.area)
	if shown.Empty() {
		return
	}
	half := 0.6
	switch f.What {
	case book.Tree:
		half = max(f.Width*p.k/2, 1)
	case book.VehicleSpot:
		half = 1
	}
	p.nameWithin(9, shown.Centre(), half, said, soft(7.4))
}

// tapesFrom draws the points at which the tapes begin, with their letters.
func (p plot) tapesFrom() {
	const r = 1.5
	for _, t := range p.pegs {
		for i, peg := range [2]book.Point{t.a.At, t.b.At} {
			c := p.at(peg)
			p.circle(c, r, white, stroke{black, 0.4})
			p.line(c.X-r, c.Y, c.X+r, c.Y, stroke{black, 0.25})
			p.line(c.X, c.Y-r, c.X, c.Y+r, stroke{black, 0.25})
			p.take(scene.Around(c, 2*r))
			p.name(c, r, t.letters[i], bold(9))
		}
	}
}

// northArrow draws the arrow of north in the emptiest corner of the plan.
func (p plot) northArrow() {
	const w, h = 7.0, 13.0
	in := p.area.Inset(2)
	best, most := scene.Area{}, -1.0
	for _, a := range []scene.Area{{X: in.Right() - w, Y: in.Y, W: w, H: h}, {X: in.X, Y: in.Y, W: w, H: h}, {X: in.Right() - w, Y: in.Bottom() - h, W: w, H: h}, {X: in.X, Y: in.Bottom() - h, W: w, H: h}} {
		free := math.Inf(1)
		for _, t := range *p.taken {
			d := t.Centre().Sub(a.Centre())
			free = min(free, math.Hypot(d.X, d.Y))
		}
		if free > most {
			best, most = a, free
		}
	}
	c := scene.Point{X: best.Centre().X, Y: best.Y + 7.6}
	p.rect(best, 0, white, stroke{})
	tip, notch := scene.Point{X: c.X, Y: c.Y - 4.4}, scene.Point{X: c.X, Y: c.Y + 2}
	p.polygon([]scene.Point{tip, {X: c.X + 2, Y: c.Y + 4}, notch}, black, stroke{})
	p.polygon([]scene.Point{tip, {X: c.X - 2, Y: c.Y + 4}, notch}, white, stroke{black, 0.25})
	p.centre(c.X, best.Y+2.6, "N", bold(9))
	p.take(best)
}

// laps draws the marks by which a sheet is laid onto its neighbours: crosses in the
// middle of what they have in common, and the number of the neighbour.
func (p plot) laps(t tiling, i int) {
	a, half := p.area, overlap/2
	column, row := i%t.across, i/t.across
	cross := func(x, y float64) {
		p.line(x-2.5, y, x+2.5, y, stroke{black, 0.2})
		p.line(x, y-2.5, x, y+2.5, stroke{black, 0.2})
	}
	for _, n := range []struct {
		there  bool
		sheet  int
		x1, x2 float64
		y1, y2 float64
	}{
		{column > 0, i, a.X + half, a.X + half, a.Y + a.H/4, a.Y + a.H*3/4},
		{column < t.across-1, i + 2, a.Right() - half, a.Right() - half, a.Y + a.H/4, a.Y + a.H*3/4},
		{row > 0, i + 1 - t.across, a.X + a.W/4, a.X + a.W*3/4, a.Y + half, a.Y + half},
		{row < t.up-1, i + 1 + t.across, a.X + a.W/4, a.X + a.W*3/4, a.Bottom() - half, a.Bottom() - half},
	} {
		if !n.there {
			continue
		}
		cross(n.x1, n.y1)
		cross(n.x2, n.y2)
		c := scene.Point{X: (n.x1 + n.x2) / 2, Y: (n.y1 + n.y2) / 2}
		p.rect(scene.Area{X: c.X - 5, Y: c.Y - 2, W: 10, H: 4}, 0.5, white, stroke{pale, 0.2})
		p.centre(c.X, c.Y+1.1, fmt.Sprintf("sheet %d", n.sheet), soft(7))
	}
}

// signs says what the signs of a plan mean.
func (d *layoutSheet) signs(y float64) {
	x, side := d.left(), 3.4
	c := scene.Point{X: x + side/2, Y: y - 1.1}
	d.polygon(turned(squared(side/2), 0, c), white, stroke{black, 0.3})
	d.polygon([]scene.Point{{X: c.X - 0.9, Y: c.Y - side/2}, {X: c.X + 0.9, Y: c.Y - side/2}, {X: c.X, Y: c.Y - side/2 + 1.4}}, black, stroke{})
	x = d.text(x+side+1.4, y, d.boxSign(), soft(8)) + 5
	c.X = x + side/2
	d.path(closed(squaredAt(c, side/2)), stroke{pale, 0.25}, 0.9, 0.7)
	x = d.text(x+side+1.4, y, "stands there today, or no box", soft(8)) + 5
	if len(d.pegs) == 0 {
		return
	}
	c.X = x + 1.5
	d.circle(c, 1.5, white, stroke{black, 0.4})
	d.line(c.X-1.5, c.Y, c.X+1.5, c.Y, stroke{black, 0.25})
	d.line(c.X, c.Y-1.5, c.X, c.Y+1.5, stroke{black, 0.25})
	d.fit(x+4.4, y, "tapes begin here", soft(8), d.right())
}

// boxSign says what is drawn of a box: its mark only where it can be told.
func (d *layoutSheet) boxSign() string {
	if d.marked {
		return "box with entrance and mark"
	}
	return "box with entrance; its mark is in the list"
}

func squaredAt(c scene.Point, half float64) []scene.Point { return turned(squared(half), 0, c) }
