package paper

import (
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
	"lidmark/ui/scene"
)

// plot is a plan being drawn on an area of the page, north up.
type plot struct {
	*layoutSheet
	area  scene.Area
	low   book.Point // of the ground, at the lower left corner of the area
	k     float64    // mm in a metre
	side  float64    // of a box, mm; that of its sign where it would be too small
	apart yard.Spacing
	taken *[]scene.Area // where something is written or stands already
}

// leastSign is how small the sign of a box may be, mm; the middle of a stand is where
// the scale has it however large its signs are.
const leastSign = 2.0

// leastMarked is how large the sign of a box must be for bar, disc and cross in it to be
// told apart, mm.
const leastMarked = 2.8

func (d *layoutSheet) plot(a scene.Area, low book.Point, scale float64) plot {
	k := d.perMetre(scale)
	wide, apart := d.numbers.Get(practice.BoxWide)*k, yard.SpacingOf(d.numbers)
	const air = 0.42 // of the way to the next stand
	if least := min(leastSign, air*d.tightest()*k); wide < least {
		wide = least
		apart.Block = max(apart.Block, 1.1*least/k)
	}
	d.marked = wide >= leastMarked
	return plot{d, a, low, k, wide, apart, &[]scene.Area{}}
}

// tightest is how near the two stands nearest to each other are, m.
func (d *layoutSheet) tightest() float64 {
	near := math.Inf(1)
	for i := range d.laid.Try.Stands {
		for k := range i {
			a, b := d.laid.Try.Stands[i].At, d.laid.Try.Stands[k].At
			near = min(near, math.Hypot(a.X-b.X, a.Y-b.Y))
		}
	}
	return near
}

// at is where a point of the ground lies on the page.
func (p plot) at(o book.Point) scene.Point {
	return scene.Point{X: p.area.X + (o.X-p.low.X)*p.k, Y: p.area.Bottom() - (o.Y-p.low.Y)*p.k}
}

// draw draws the ground, the stands as they stand today where that is elsewhere, and
// the layout.
func (p plot) draw() {
	a := p.area
	p.clipped([]scene.Point{{X: a.X, Y: a.Y}, {X: a.Right(), Y: a.Y}, {X: a.Right(), Y: a.Bottom()}, {X: a.X, Y: a.Bottom()}}, func() {
		for _, f := range p.in.Features {
			p.feature(f)
		}
		for _, c := range p.changes {
			p.moved(c)
		}
		for i := range p.laid.Try.Stands {
			p.stand(&p.laid.Try.Stands[i])
		}
		for _, c := range p.laid.Try.Colonies {
			p.hive(c)
		}
		p.tapesFrom()
		p.linesTaken()
		p.letters()
		for _, c := range p.laid.Try.Colonies {
			p.name(p.at(c.At), p.hiveSide()/2, c.Name, soft(7.4))
		}
		for _, f := range p.in.Features {
			p.featureName(f)
		}
		p.northArrow()
	})
	p.rect(a, 0, none, stroke{black, 0.3})
}

// stand draws a stand and its boxes.
func (p plot) stand(s *yard.Stand) {
	if s.Places > 1 {
		p.outline(s, stroke{grey, 0.2})
	}
	on := map[int]bool{}
	for i := range s.Nucs {
		on[s.Nucs[i].Place] = true
		p.nuc(s, &s.Nucs[i])
	}
	for place := 1; place <= max(1, s.Places); place++ {
		if !on[place] {
			c := p.at(s.On(place, p.apart))
			p.path(closed(turned(squared(p.side/2), s.Turn, c)), stroke{pale, 0.2}, 0.6, 0.5)
			p.take(scene.Around(c, p.side))
		}
	}
}

// nuc draws a box: its notch the entrance, its mark behind that.
func (p plot) nuc(s *yard.Stand, n *yard.Nuc) {
	const leastNotch = 0.75 // mm
	c, b := p.at(s.On(n.Place, p.apart)), n.Bearing+s.Turn
	p.polygon(turned(squared(p.side/2), b, c), white, stroke{black, 0.3})
	in := max(p.side*0.42, leastNotch)
	p.polygon(turned([]scene.Point{{X: -in * 0.62, Y: -p.side / 2}, {X: in * 0.62, Y: -p.side / 2}, {Y: -p.side/2 + in}}, b, c), black, stroke{})
	p.take(scene.Around(c, p.side*1.1))
	if p.side < leastMarked {
		return
	}
	r := p.side * 0.25
	at := turned([]scene.Point{{Y: p.side * 0.2}}, b, c)[0]
	p.front(book.FrontMarked{Shape: n.Mark.Shape, Colour: n.Mark.Colour}, at, r)
}

// outline draws the frame of a stand of several places.
func (p plot) outline(s *yard.Stand, l stroke, dash ...float64) {
	flat := *s
	flat.Turn, flat.At = 0, book.Point{}
	var b box
	for place := 1; place <= s.Places; place++ {
		b.around(flat.On(place, p.apart), p.side/p.k*0.64)
	}
	w, h := b.w()*p.k/2, b.h()*p.k/2
	p.path(closed(turned([]scene.Point{{X: -w, Y: -h}, {X: w, Y: -h}, {X: w, Y: h}, {X: -w, Y: h}}, s.Turn, p.at(s.At))), l, dash...)
}

// moved draws where a stand stands today, and the way to its place in the layout.
func (p plot) moved(c yard.Change) {
	if c.Was == nil || c.Was.At == c.Is.At {
		return
	}
	from, to := p.at(c.Was.At), p.at(c.Is.At)
	if c.Was.Places > 1 {
		p.outline(c.Was, stroke{pale, 0.25}, 0.9, 0.7)
	} else {
		p.path(closed(turned(squared(p.side/2), c.Was.Turn, from)), stroke{pale, 0.25}, 0.9, 0.7)
	}
	d := to.Sub(from)
	if long := math.Hypot(d.X, d.Y); long > p.side*2 {
		d = d.Mul(1 / long)
		tip := to.Sub(d.Mul(p.side * 0.9))
		p.path([]scene.Point{from, tip}, stroke{pale, 0.25}, 1.6, 0.8)
		side := scene.Point{X: -d.Y, Y: d.X}
		back := tip.Sub(d.Mul(2))
		p.polygon([]scene.Point{tip, back.Add(side.Mul(0.7)), back.Sub(side.Mul(0.7))}, pale, stroke{})
	}
}

// hive draws a full-size colony.
func (p plot) hive(c yard.Colony) {
	at := p.at(c.At)
	p.colony(at, p.hiveSide())
	p.take(scene.Around(at, p.hiveSide()))
}

func (p plot) hiveSide() float64 { return max(p.side*1.5, leastSign) }

// letters writes the letter of each stand beside it, that of a row's single box in
// small.
func (p plot) letters() {
	for _, s := range p.laid.Try.Stands {
		if !p.area.Contains(p.at(s.At)) {
			continue
		}
		l, half := bold(9), p.side*0.6
		if s.Places > 1 {
			half = p.side + p.apart.Block*p.k/2
		}
		if stem := strings.TrimRight(s.Letter, "0123456789"); stem != s.Letter {
			l = bold(7)
		}
		p.name(p.at(s.At), half, s.Letter, l)
	}
}

// name writes a name about a point where nothing else is; where there is no room, it
// stands to the right.
func (p plot) name(c scene.Point, half float64, text string, l look) {
	const near = 2.6 // mm: what stands further off might be another's
	p.nameWithin(near, c, half, text, l)
}

// nameWithin is the same for a name that may stand so far off, mm.
func (p plot) nameWithin(reach float64, c scene.Point, half float64, text string, l look) {
	w, h := p.width(text, l), l.size*point*0.8
	gap := half + 0.8
	var places []scene.Area
	for far := gap; far < gap+reach; far++ {
		for _, to := range []scene.Point{{X: far}, {X: -w / 2, Y: -far - h}, {X: -far - w}, {X: -w / 2, Y: far}, {X: far * 0.8, Y: -far*0.8 - h}, {X: far * 0.8, Y: far * 0.8}, {X: half - w, Y: -far - h}, {X: half - w, Y: far}, {X: -half, Y: -far - h}, {X: -half, Y: far}} {
			if to.Y == 0 {
				to.Y = -h / 2
			}
			places = append(places, scene.Area{X: c.X + to.X, Y: c.Y + to.Y, W: w, H: h})
		}
	}
	at := places[0]
	if i := slices.IndexFunc(places, p.free); i >= 0 {
		at = places[i]
	}
	p.take(at)
	p.rect(at.Inset(-0.25), 0, white, stroke{})
	p.text(at.X, at.Bottom()-h*0.06, text, l)
}

// free tells whether nothing is in an area, and all of it on the plan.
func (p plot) free(a scene.Area) bool {
	if a.X < p.area.X+0.5 || a.Y < p.area.Y+0.5 || a.Right() > p.area.Right()-0.5 || a.Bottom() > p.area.Bottom()-0.5 {
		return false
	}
	return !slices.ContainsFunc(*p.taken, a.Overlaps)
}

func (p plot) take(a scene.Area) { *p.taken = append(*p.taken, a) }

// squared is a square about the origin, by half its side.
func squared(half float64) []scene.Point {
	return []scene.Point{{X: -half, Y: -half}, {X: half, Y: -half}, {X: half, Y: half}, {X: -half, Y: half}}
}

// turned are points about the origin, turned clockwise by degrees and set at a point.
func turned(points []scene.Point, degrees float64, at scene.Point) []scene.Point {
	sin, cos := math.Sincos(degrees * math.Pi / 180)
	out := make([]scene.Point, len(points))
	for i, q := range points {
		out[i] = scene.Point{X: at.X + q.X*cos - q.Y*sin, Y: at.Y + q.X*sin + q.Y*cos}
	}
	return out
}

// closed is the way round points back to the first.
func closed(points []scene.Point) []scene.Point { return append(points, points[0]) }
