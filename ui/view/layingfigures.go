package view

import (
	"fmt"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// costLeast is how wide the figures are at least that have what the try-out costs
// beside them, dp.
const costLeast = 760.0

// figuresPane draws the figures of both layouts and, beside them, what the try-out costs.
func (d *layingDraw) figuresPane(a scene.Area) {
	d.rule(a.X, a.Y, a.Right(), a.Y, scene.Hair)
	in := scene.Area{X: a.X + state.Edge, Y: a.Y, W: a.W - 2*state.Edge, H: a.H}
	if in.W >= costLeast {
		const wide = 250.0
		var costs scene.Area
		costs, in = scene.Area{X: in.Right() - wide, Y: in.Y, W: wide, H: in.H}, scene.Area{X: in.X, Y: in.Y, W: in.W - wide - 28, H: in.H}
		d.costs(costs)
	}
	d.figures(in)
}

// figureColumns are where the columns of the figures end.
type figureColumns struct {
	now, try   float64
	kept       []float64
	from, to   float64 // of the line from better to worse
	ends, word float64
}

const keptMost = 2 // try-outs that were kept have a column, where there is room

func (d *layingDraw) columns(a scene.Area) (c figureColumns) {
	const column = 76.0
	c.word = min(250, a.W*0.42)
	c.now = a.X + c.word + 58
	at := c.now
	if a.W > 700 {
		for range min(keptMost, len(d.is.Kept)) {
			at += column
			c.kept = append(c.kept, at)
		}
	}
	c.try = at + 68
	c.from, c.to, c.ends = c.try+40, a.Right()-62, a.Right()-54
	return c
}

// figures draws a line for each figure: today and the try-out in figures, and on a line
// from better to worse.
func (d *layingDraw) figures(a scene.Area) {
	rows := d.s.LayoutFigures()
	c := d.columns(a)
	const head = 34.0
	y := a.Y + 24
	title := "Figures"
	if d.is.Full {
		title = "Figures, as if a virgin flew from each"
	}
	d.fit(a.X, y, title, ink(14).semi(), c.now-46)
	d.right(c.now, y, "today", ink2(13))
	for i, x := range c.kept {
		name := scene.Shorten(d.measure, d.is.Kept[i].Name, 12, scene.Regular, 70)
		d.right(x, y, name, ink2(12))
	}
	d.right(c.try, y, "try-out", ink(13).semi().as(scene.Pen))
	if c.to-c.from > 60 {
		end := d.text(c.from, y, "better", ink2(12))
		d.add(scene.Poly{Points: []scene.Point{at(end+13, y-8), at(end+13, y), at(end+6, y-4)}, Fill: scene.Ink2})
	}
	high := (a.H - head) / float64(len(rows))
	for i, f := range rows {
		d.figure(scene.Area{X: a.X, Y: a.Y + head + float64(i)*high, W: a.W, H: high}, f, c)
	}
}

func (d *layingDraw) figure(row scene.Area, f state.LayoutFigure, c figureColumns) {
	d.rule(row.X, row.Y, row.Right(), row.Y, scene.Hair)
	d.hit(row, scene.Ref{Kind: state.FigureRef, ID: f.Word}, f.Word+"  "+f.Says)
	y := row.Y + row.H/2 + 5
	d.fit(row.X, y, f.Word, ink(14), c.now-52)
	d.right(c.now, y, f.Now, ink(14).semi())
	for i, x := range c.kept {
		d.right(x, y, f.Kept[i], ink2(14))
	}
	d.right(c.try, y, f.Try, ink(14).semi().as(scene.Pen))
	if c.to-c.from <= 60 {
		return
	}
	middle := row.Y + row.H/2
	spot := func(share float64) scene.Point { return at(c.from+min(max(share, 0), 1)*(c.to-c.from), middle) }
	d.rule(c.from, middle, c.to, middle, scene.Rule)
	d.text(c.ends, y-1, f.Ends, ink2(12))
	for i := range c.kept {
		d.add(scene.Circle{At: spot(f.KeptAt[i]), Radius: 3.5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1.2)})
	}
	now := spot(f.At[0])
	if f.NoNow {
		d.add(scene.Circle{At: spot(f.At[1]), Radius: 5.5, Fill: scene.Pen})
		return
	}
	if f.Reckoning {
		d.add(scene.Circle{At: now, Radius: 5.2, Fill: scene.Panel, Stroke: stroke(scene.Ink, 2)})
		return
	}
	try := spot(f.At[1])
	d.add(scene.Line{From: now, To: try, Stroke: stroke(scene.Pen, 3)},
		scene.Circle{At: now, Radius: 5.2, Fill: scene.Panel, Stroke: stroke(scene.Ink, 2)},
		scene.Circle{At: try, Radius: 5.5, Fill: scene.Pen})
}

// costs draws what it costs to get there.
func (d *layingDraw) costs(a scene.Area) {
	y := a.Y + 24
	d.text(a.X, y, "What it costs", ink(14).semi())
	y += 26
	for _, row := range d.costRows() {
		d.text(a.X, y, row[0], ink2(13))
		d.fit(a.X+86, y, row[1], ink(14), a.Right())
		y += 24
	}
	for _, caution := range d.s.LayoutCautions() {
		y = d.wrap(a.X, y+2, caution, ink2(12.5), a.W, 4)
	}
}

// costRows are what it costs in words, the same rows whatever is changed: while a better
// layout is looked for none goes.
func (d *layingDraw) costRows() [][2]string {
	rows := [][2]string{{"moves", "none"}, {"to mark", "none"}, {"work", "none"}, {"walk a round", "…"}}
	if d.is.Carried > 0 {
		rows[0][1] = plural(d.is.Carried, "nuc", "nucs") + ", after dusk"
	}
	if d.is.SetUp > 0 && d.is.Carried == 0 {
		rows[0] = [2]string{"to set up", plural(d.is.SetUp, "nuc", "nucs")}
	}
	if d.is.Fronts > 0 {
		rows[1][1] = plural(d.is.Fronts, "front", "fronts")
	}
	if d.is.Minutes > 0 {
		rows[2][1] = minutes(d.is.Minutes)
	}
	if now, try := fmt.Sprintf("%.0f", d.is.Now.Round), fmt.Sprintf("%.0f m", d.is.Try.Round); d.is.Whole {
		switch {
		case d.is.Now.Round == 0:
			rows[3][1] = try
		case now+" m" == try:
			rows[3][1] = try + ", as today"
		default:
			rows[3][1] = now + " → " + try
		}
	}
	return rows
}
