package view

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// cutName parts a reason into the name it begins with and the rest.
func cutName(reason string) (name, rest string) {
	name, rest, found := strings.Cut(reason, "  ")
	if !found {
		return "", reason
	}
	return name, rest
}

// points are a feature's points on the screen.
func (g *ground) points(f book.FeatureDrawn) []scene.Point {
	out := make([]scene.Point, len(f.Points))
	for i, p := range f.Points {
		out[i] = g.camera.Screen(state.OnGround(p))
	}
	return out
}

// shadow draws a tree's shadow, to the north-west as in the morning.
func (g *ground) shadow(f book.FeatureDrawn) {
	if f.What != book.Tree || len(f.Points) == 0 {
		return
	}
	r := g.camera.Length(max(f.Width, 1) / 2)
	c := g.points(f)[0].Add(at(-r*1.15, -r*0.55))
	const n = 20
	shape := make([]scene.Point, n)
	for i := range shape {
		sin, cos := math.Sincos(2 * math.Pi * float64(i) / n)
		shape[i] = c.Add(at(r*1.3*cos, r*0.85*sin))
	}
	g.add(scene.Poly{Points: shape, Fill: scene.Shadow})
}

// feature draws one feature of the ground.
func (g *ground) feature(f book.FeatureDrawn) {
	points := g.points(f)
	if len(points) == 0 {
		return
	}
	switch f.What {
	case book.Tree:
		g.tree(points[0], g.camera.Length(max(f.Width, 1)/2))
	case book.Hedge:
		g.hedge(points, g.camera.Length(max(f.Width, 1)))
	case book.Water:
		g.water(f, points, g.camera.Length(max(f.Width, 1)))
	case book.Track:
		g.track(f, points, g.camera.Length(max(f.Width, 2)))
	case book.Wall:
		g.keep(smooth(points), 6)
		g.add(scene.Poly{Points: points, Open: true, Stroke: stroke(scene.Ink3, max(2, g.camera.Length(f.Width)*0.5))})
	case book.VehicleSpot:
		spot := g.vehicle(points[0])
		g.drawn.take(spot.Inset(-2))
		g.add(scene.Rect{Area: spot, Radius: 2, Stroke: scene.Stroke{Role: scene.Ink2, Width: 1.2, Dash: [2]float64{4, 3}}})
	case book.Dwelling:
		g.add(scene.Poly{Points: points, Fill: scene.Sunk, Stroke: stroke(scene.Ink2, 1.2)})
	case book.ColdHollow:
		g.add(scene.Poly{Points: points, Hatch: scene.Hatch{Role: scene.WaterLine, Pitch: 8, Weight: 0.8}, Stroke: scene.Stroke{Role: scene.WaterLine, Width: 1, Dash: [2]float64{2, 3}}})
	default:
		for _, c := range along(points, nameAir) {
			g.drawn.take(scene.Around(c, nameAir))
		}
		g.add(scene.Poly{Points: points, Open: true, Stroke: scene.Stroke{Role: scene.Contour, Width: 1.2, Dash: [2]float64{8, 4}}})
	}
}

// vehicle is where a vehicle stands whose spot has its middle at c: 4.4 m by
// 2.1 m.
func (g *ground) vehicle(c scene.Point) scene.Area {
	k := g.camera.Length(1)
	return scene.Area{X: c.X - 2.2*k, Y: c.Y - 1.05*k, W: 4.4 * k, H: 2.1 * k}
}

func (g *ground) tree(c scene.Point, r float64) {
	g.add(scene.Circle{At: c, Radius: r * 0.85, Fill: scene.Tree, Stroke: stroke(scene.TreeLine, 1.2)},
		scene.Circle{At: c, Radius: 1.6, Fill: scene.TreeLine})
	g.drawn.take(scene.Around(c, r*1.7))
}

// hedge draws a row of bushes along the points.
func (g *ground) hedge(points []scene.Point, width float64) {
	step := max(4, width*0.85)
	g.keep(smooth(points), step+4)
	for _, c := range along(smooth(points), step) {
		g.add(scene.Circle{At: c, Radius: step * 0.62, Fill: scene.Tree, Stroke: stroke(scene.Hedge, 1.1)})
	}
}

func (g *ground) water(f book.FeatureDrawn, points []scene.Point, width float64) {
	if len(points) == 1 {
		g.add(scene.Circle{At: points[0], Radius: width / 2, Fill: scene.Water, Stroke: stroke(scene.WaterLine, 1.4)})
		return
	}
	bank := g.runningOn(f, smooth(points))
	g.keep(bank, width+2*nameAir)
	g.add(scene.Poly{Points: bank, Open: true, Stroke: scene.Stroke{Role: scene.WaterLine, Width: width + 3}},
		scene.Poly{Points: bank, Open: true, Stroke: scene.Stroke{Role: scene.Water, Width: width}})
}

// track draws the two wheel lines of a track.
func (g *ground) track(f book.FeatureDrawn, points []scene.Point, width float64) {
	way := g.runningOn(f, smooth(points))
	g.keep(way, width+3*nameAir)
	for _, side := range []float64{-0.5, 0.5} {
		g.add(scene.Poly{Points: beside(way, side*width), Open: true, Stroke: scene.Stroke{Role: scene.Track, Width: 1.6, Dash: [2]float64{7, 4}}})
	}
}

// nameAir is how wide a thin line is to names, dp.
const nameAir = 4.0

// keep keeps names off a line of the given width.
func (g *ground) keep(points []scene.Point, width float64) {
	for _, c := range append(along(points, max(width, 6)), points[len(points)-1]) {
		g.drawn.take(scene.Around(c, width))
	}
}

// edgeNear is how near to the edge of all that is drawn a brook or a track ends that goes
// on beyond it, m.
const edgeNear = 1.5

// runningOn is the line of a brook or a track on the screen, led on out of the frame from
// an end that lies at the edge of what is drawn of the yard: it is not the brook that ends
// there.
func (g *ground) runningOn(f book.FeatureDrawn, line []scene.Point) []scene.Point {
	last := len(line) - 1
	if last < 1 || line[0] == line[last] {
		return line
	}
	inside := g.r.Drawn(g.yard.Yard).Inset(edgeNear)
	on := func(drawn book.Point, end, before scene.Point) []scene.Point {
		way := end.Sub(before)
		long := math.Hypot(way.X, way.Y)
		if long == 0 || inside.Contains(state.OnGround(drawn)) {
			return nil
		}
		return []scene.Point{end.Add(way.Mul((g.frame.W + g.s.NoBand(g.frame).H) / long))} // as far on every day
	}
	return slices.Concat(on(f.Points[0], line[0], line[1]), line, on(f.Points[len(f.Points)-1], line[last], line[last-1]))
}

// featureNames writes the names of what is drawn, where they hide nothing.
func (g *ground) featureNames() {
	for _, f := range g.yard.Features {
		if f.Label == "" {
			continue
		}
		label := f.Label
		if f.What == book.Hedge && f.Height > 0 {
			label = fmt.Sprintf("%s %s m", label, figure(f.Height))
		}
		font := ink2(12).italic()
		if f.What == book.Water {
			font = font.as(scene.WaterLine)
		}
		const air = 3.0 // plates are turned, and what touches is read together
		g.name(label, font, slices.DeleteFunc(g.besides(f), func(c scene.Point) bool {
			box := nameBox(c, g.width(label, font), font)
			return !g.taken.free(box.Inset(-air)) || !g.near(f, box)
		}))
	}
}

// near tells whether a name there is read as that of a feature: close to what is drawn of
// it, and no stand or other feature lies nearer.
func (g *ground) near(f book.FeatureDrawn, box scene.Area) bool {
	const close = 12.0
	own := g.off(f, box)
	if own > close || !g.taken.free(box.Inset(-own)) {
		return false
	}
	return !slices.ContainsFunc(g.yard.Features, func(other book.FeatureDrawn) bool {
		return other.Feature != f.Feature && other.What != book.Boundary && g.off(other, box) < own
	})
}

// off is how far an area lies from what is drawn of a feature, dp.
func (g *ground) off(f book.FeatureDrawn, box scene.Area) float64 {
	points := g.points(f)
	if len(points) == 0 {
		return math.Inf(1)
	}
	wide := g.camera.Length(max(f.Width, 1))
	switch f.What {
	case book.VehicleSpot:
		return apart(box, g.vehicle(points[0]))
	case book.Dwelling, book.ColdHollow:
		if box.Overlaps(boundsOf(points)) {
			return 0
		}
	case book.Tree:
		wide *= 0.85
	}
	if len(points) > 1 {
		points = along(smooth(points), leastTarget/4)
	}
	off := math.Inf(1)
	for _, p := range points {
		off = min(off, apart(box, scene.Area{X: p.X, Y: p.Y})-wide/2)
	}
	return max(0, off)
}

// besides are the places where the name of a feature may stand: inside what
// has an inside, else about its middle and its ends.
func (g *ground) besides(f book.FeatureDrawn) []scene.Point {
	points := g.points(f)
	middle := points[len(points)/2]
	if len(points) == 2 {
		middle = points[0].Add(points[1]).Mul(0.5)
	}
	var places []scene.Point
	switch f.What {
	case book.Tree: // beside its crown, before anywhere further off
		const air = 4.0
		places = around(middle, g.camera.Length(max(f.Width, 1)/2)*0.85+air, g.width(f.Label, ink2(12).italic()))
	case book.VehicleSpot:
		spot := g.vehicle(points[0])
		for _, y := range []float64{spot.Bottom() + 14, spot.Y - 6} {
			for _, aside := range []float64{0, 24, -24, 48, -48} {
				places = append(places, at(points[0].X+aside, y))
			}
		}
	case book.Dwelling, book.ColdHollow:
		middle = boundsOf(points).Centre()
		places = append(places, middle.Add(at(0, 4)))
	}
	for _, c := range []scene.Point{middle, points[0], points[len(points)-1]} {
		for _, d := range []float64{18, -12, 26, -20, 34, -28} {
			for _, aside := range []float64{0, 40, -40, 80, -80} {
				places = append(places, c.Add(at(aside, d)))
			}
		}
	}
	return places
}

// boundsOf is the smallest area around the points.
func boundsOf(points []scene.Point) scene.Area {
	lo, hi := points[0], points[0]
	for _, p := range points {
		lo, hi = at(min(lo.X, p.X), min(lo.Y, p.Y)), at(max(hi.X, p.X), max(hi.Y, p.Y))
	}
	return scene.Between(lo, hi)
}
