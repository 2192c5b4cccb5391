package view

import (
	"fmt"
	"math"
	"slices"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// hourPlot places hours from now and cells in a plot.
type hourPlot struct {
	scene.Area
	cells float64
	hours float64
}

func (g hourPlot) x(hour float64) float64 { return g.X + g.W*hour/g.hours }
func (g hourPlot) y(n float64) float64    { return g.Bottom() - g.H*n/g.cells }

// ticks are the numbers of cells that have lines, all of them and from none on.
func (g hourPlot) ticks() []float64 {
	step, all := max(1, int(g.cells/4)), []float64{g.cells}
	for n := 0.0; g.y(n)-g.y(g.cells) > 16; n += float64(step) {
		all = append(all, n)
	}
	return all
}

// curves draws what is left of the cells by the hour, a curve a way, with the
// words why it comes so soon beside them.
func (d lateDraw) curves(a scene.Area) {
	x := a.X + state.Edge
	end := d.text(x, a.Y+28, "What is lost by the hour", ink(14).semi())
	wide := a.W
	if a.W > 860 {
		wide = a.W - lateWhy
	}
	till := "if nothing more is done until " + weekdayHour(d.Ends(), d.zone)
	d.widest(end+10, a.Y+28, a.X+wide-state.Edge, ink2(13), fmt.Sprintf("what is left of %d, cells and virgins, if none is out yet and nothing more is done until %s", d.Cells, weekdayHour(d.Ends(), d.zone)),
		fmt.Sprintf("what is left of %d %s", d.Cells, till), till, "until "+weekdayHour(d.Ends(), d.zone))
	if wide < a.W {
		d.whySoon(scene.Area{X: a.X + wide, Y: a.Y + 18, W: lateWhy, H: a.H - 30})
	}
	g := hourPlot{scene.Area{X: a.X + 56, Y: a.Y + 74, W: wide - 56 - lateNames, H: a.H - 128}, float64(max(d.Cells, 1)), float64(d.Hours)}
	d.night(g)
	d.band(g)
	d.grid(g)
	d.marks(g)
	for i, c := range d.Curves {
		d.curve(g, i, c)
	}
	d.curveNames(g, a.X+wide)
}

// night shades the hours of the dark, and thickens the axis there: the shade is pale.
// When the sun sets in a yard is not known; 21 to 5 is common practice, no source.
func (d lateDraw) night(g hourPlot) {
	const dusk, dark, thick = 21, 8, 4
	day := d.r().DayOf(d.Now) - 1
	for ; ; day++ {
		from := day.At(dusk, 0, d.zone)
		a, b := max(0, from.Sub(d.Now).Hours()), min(g.hours, from.Sub(d.Now).Hours()+dark)
		if a >= g.hours {
			return
		}
		if b <= a {
			continue
		}
		box := scene.Area{X: g.x(a), Y: g.Y, W: g.x(b) - g.x(a), H: g.H}
		d.add(scene.Rect{Area: box, Fill: scene.Sunk, Clear: 0.45})
		d.rect(scene.Area{X: box.X, Y: box.Bottom() - thick, W: box.W, H: thick}, scene.Bar)
		d.nightWord(g, box)
	}
}

// nightWord names the night at its foot, beside the lines of the hours.
func (d lateDraw) nightWord(g hourPlot, box scene.Area) {
	const word, near = "night", 3.0
	w := d.width(word, ink2(12))
	lines := []time.Time{d.First, d.Next}
	for i := range calendar.Day(3) {
		lines = append(lines, (d.r().DayOf(d.Now) + i).Start(d.zone))
	}
	from := []float64{box.X + 8, box.X + near, box.Right() - w - 8}
	for _, t := range lines {
		from = append(from, g.x(t.Sub(d.Now).Hours())+near+1)
	}
	for _, x := range from {
		clear := x >= box.X+near && x+w <= box.Right()-near
		for _, t := range lines {
			at := g.x(t.Sub(d.Now).Hours())
			clear = clear && (at < x-near || at > x+w+near)
		}
		if clear {
			d.text(x, d.nightLine(g), word, ink2(12))
			return
		}
	}
}

// nightLine is the lowest baseline on which a word stands between two lines of the cells.
func (d lateDraw) nightLine(g hourPlot) float64 {
	const foot, over, below, step = 10.0, 11.0, 4.0, 1.0
	ticks := g.ticks()
	for y := g.Bottom() - foot; y-over > g.Y; y -= step {
		if !slices.ContainsFunc(ticks, func(n float64) bool { return g.y(n) > y-over && g.y(n) < y+below }) {
			return y
		}
	}
	return g.Bottom() - foot
}

// r is the reading of the book.
func (d lateDraw) r() *state.Reading { return d.s.Reading() }

// grid draws the axes: cells upwards, from none to all there are; the hours of
// the day along.
func (d lateDraw) grid(g hourPlot) {
	for _, n := range g.ticks() {
		d.rule(g.X, g.y(n), g.Right(), g.y(n), scene.Hair)
		d.right(g.X-8, g.y(n)+4.5, fmt.Sprint(n), ink2(12))
	}
	every := 3
	for _, more := range []int{6, 12, 24} {
		if g.W*float64(every) < 40*g.hours {
			every = more
		}
	}
	first := d.Now.In(d.zone).Truncate(time.Hour).Add(time.Hour)
	for t := first; t.Sub(d.Now).Hours() <= g.hours; t = t.Add(time.Hour) {
		local := t.In(d.zone)
		h := t.Sub(d.Now).Hours()
		if local.Hour()%every != 0 {
			continue
		}
		f := ink2(12)
		if local.Hour() == 0 {
			f = ink(12).semi()
			d.rule(g.x(h), g.Y, g.x(h), g.Bottom(), scene.Rule)
			day := local.Format("Mon 2 Jan")
			d.text(min(g.x(h)+6, g.Right()-d.width(day, f)), g.Bottom()+35, day, f)
		}
		d.rule(g.x(h), g.Bottom(), g.x(h), g.Bottom()+4, scene.Ink2)
		d.centre(g.x(h), g.Bottom()+18, fmt.Sprint(local.Hour()), f)
	}
	d.rule(g.X, g.Bottom(), g.Right(), g.Bottom(), scene.Ink2)
}

// band draws how far the curve of doing nothing moves if the clock of the whole
// batch is off by its usual error. Its edge is drawn, for its fill is pale.
func (d lateDraw) band(g hourPlot) {
	i := slices.IndexFunc(d.Curves, func(c rules.LateCurve) bool { return c.Way == bee.Wait })
	if i < 0 {
		return
	}
	kept := d.Curves[i].Kept
	var up, low []scene.Point
	for h := range d.Hours + 1 {
		up = append(up, at(g.x(float64(h)), g.y(state.KeptAt(kept, float64(h)-d.Spread))))
		low = append(low, at(g.x(float64(h)), g.y(state.KeptAt(kept, float64(h)+d.Spread))))
	}
	slices.Reverse(low)
	d.add(scene.Poly{Points: append(up, low...), Fill: scene.Sunk, Stroke: stroke(scene.Bar, 1)})
}

// curve draws one way out.
func (d lateDraw) curve(g hourPlot, i int, c rules.LateCurve) {
	line := d.curveStroke(i, c)
	points := make([]scene.Point, d.Hours+1)
	for h := range points {
		points[h] = at(g.x(float64(h)), g.y(c.Kept[h])+d.beside(g, i))
	}
	d.add(scene.Poly{Points: points, Open: true, Stroke: line})
}

// beside is how far below its place a curve is drawn that runs all along one before
// it, so that both show.
func (d lateDraw) beside(g hourPlot, i int) float64 {
	const near, apart = 2.5, 5.0
	below := 0.0
	for _, before := range d.Curves[:i] {
		along := true
		for h, n := range d.Curves[i].Kept[:d.Hours+1] {
			along = along && math.Abs(g.y(n)-g.y(before.Kept[h])) < near
		}
		if along {
			below += apart
		}
	}
	return below
}

func (d lateDraw) curveStroke(i int, c rules.LateCurve) scene.Stroke {
	tone, _ := d.alarm()
	switch {
	case i == 0:
		return stroke(scene.Good, 4)
	case c.Way == bee.Wait:
		return stroke(tone, 2.4)
	case c.Way == bee.Cool:
		return scene.Stroke{Role: scene.Ink2, Width: 1.8, Dash: [2]float64{6, 3}}
	case c.Way == bee.Cage:
		return scene.Stroke{Role: scene.Ink2, Width: 2, Dash: [2]float64{2, 3}}
	default:
		return stroke(scene.Ink2, 2)
	}
}
