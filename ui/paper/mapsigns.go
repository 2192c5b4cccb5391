package paper

import (
	"math"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// vehicle is where the vehicle stands.
func (m smallMap) vehicle() (scene.Point, bool) {
	for _, g := range m.yard.Features {
		if g.What == book.VehicleSpot && len(g.Points) > 0 {
			return m.at(g.Points[0]), true
		}
	}
	return scene.Point{}, false
}

// vehicleName writes what the vehicle's spot is.
func (m smallMap) vehicleName() {
	if c, ok := m.vehicle(); ok {
		l := soft(7.4)
		m.clear(c.X-m.width("vehicle", l)/2, c.Y+3.2, "vehicle", l)
	}
}

// arrow draws an arrow on the middle of a piece that has room for one.
func (m smallMap) arrow(from, to scene.Point) {
	const least, size = 6.0, 1.3
	d := to.Sub(from)
	long := math.Hypot(d.X, d.Y)
	if long < least {
		return
	}
	d = d.Mul(1 / long)
	tip := from.Add(to).Mul(0.5).Add(d.Mul(size / 2))
	side := scene.Point{X: -d.Y, Y: d.X}
	back := tip.Sub(d.Mul(size * 1.5))
	m.polygon([]scene.Point{tip, back.Add(side.Mul(size * 0.55)), back.Sub(side.Mul(size * 0.55))}, black, stroke{})
}

// emptiest is the corner of the map that is farthest from all that stands.
func (m smallMap) emptiest(a scene.Area) (corner scene.Point) {
	in := scene.Area{X: a.X + 3, Y: a.Y + 4.4, W: a.W - 9, H: a.H - 8.6}
	best := -1.0
	for _, c := range []scene.Point{{X: in.X, Y: in.Bottom()}, {X: in.Right(), Y: in.Bottom()}, {X: in.Right(), Y: in.Y}, {X: in.X, Y: in.Y}} {
		free := math.Inf(1)
		away := func(p book.Point) {
			d := m.at(p).Sub(c)
			free = min(free, math.Hypot(d.X, d.Y))
		}
		for s := range m.day.View.Stands(m.yard.Yard) {
			away(s.At)
		}
		for k := range m.day.View.Colonies() {
			if k.Yard == m.yard.Yard {
				away(k.At)
			}
		}
		if free > best {
			corner, best = c, free
		}
	}
	return corner
}

// north draws the arrow of north.
func (m smallMap) north(c scene.Point) {
	m.rect(scene.Area{X: c.X - 1.8, Y: c.Y - 3.2, W: 6.2, H: 6}, 0, white, stroke{})
	tip, notch := scene.Point{X: c.X, Y: c.Y - 2.6}, scene.Point{X: c.X, Y: c.Y + 1.2}
	m.polygon([]scene.Point{tip, {X: c.X + 1.1, Y: c.Y + 2.2}, notch}, black, stroke{})
	m.polygon([]scene.Point{tip, {X: c.X - 1.1, Y: c.Y + 2.2}, notch}, white, stroke{black, 0.2})
	m.text(c.X+1.8, c.Y+1.4, "N", bold(7.4))
}
