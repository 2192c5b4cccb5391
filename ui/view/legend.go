package view

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// signLegend says what the signs on the lids mean, laid as l says.
func (p *sheet) signLegend(a scene.Area, l state.SignLegend) {
	switch {
	case l.Folded:
		p.foldedLegend(a, p.s.Filled())
	case l.Columns > 0:
		p.columnLegend(a, l.Columns)
	default:
		p.legend(a, l)
	}
}

// columnLegend has all signs in columns that keep their places on every day.
func (p *sheet) columnLegend(a scene.Area, columns int) {
	all, more := p.s.FullLegend(p.s.Filled())
	rows := (len(all) + columns - 1) / columns
	y := a.Y + (a.H-state.LegendRow*float64(rows-1+min(1, len(more))))/2
	widths := state.LegendWidths(all, columns, p.widestSign)
	even, gap := p.evenColumns(widths, a.W)
	x := a.X
	for i, e := range all {
		wide := widths[i%columns] + gap
		if even {
			wide = a.W / float64(columns)
		}
		if i%columns == 0 {
			x = a.X
		}
		p.legendEntry(e, at(x, y+float64(i/columns)*state.LegendRow), x+wide-min(4, max(0, gap)))
		x += wide
	}
	p.legendRow(more, at(a.X, y+float64(rows)*state.LegendRow), a.Right())
}

// evenColumns tells whether columns of these widths may all be equally wide, and how far
// they else lie apart.
func (p *sheet) evenColumns(widths []float64, room float64) (even bool, gap float64) {
	const apart = 6.0
	gap = room
	for _, w := range widths {
		gap -= w
	}
	return slices.Max(widths)+apart <= room/float64(len(widths)), gap / float64(len(widths)-1)
}

// legend says what the signs on the lids shown mean, in rows one after another.
func (p *sheet) legend(a scene.Area, l state.SignLegend) {
	rows := state.LegendRows(p.s.SignsOf(l), a.W, p.widestSign)
	most := max(1, int(a.H/state.LegendRow))
	rows = rows[:min(len(rows), most)]
	y := a.Y + (a.H-state.LegendRow*float64(len(rows)-1))/2
	for _, row := range rows {
		p.legendRow(row, at(a.X, y), a.Right())
		y += state.LegendRow
	}
}

// foldedLegend is a legend on one line: as many of its signs as have room, and behind
// them what needs the keeper and the way to all.
func (p *sheet) foldedLegend(a scene.Area, yard book.YardID) {
	signs, last := p.s.FoldedLegend(yard)
	room := a.W
	for _, e := range last {
		room -= p.legendWidth(e) + foldedGap
	}
	var row []state.LegendEntry
	for _, e := range signs {
		if w := p.legendWidth(e); w <= room {
			row, room = append(row, e), room-w-foldedGap
		}
	}
	o := at(a.X, a.Y+a.H/2)
	for i, e := range append(row, last...) {
		if i == len(row)+len(last)-1 {
			o.X = a.Right() - p.legendWidth(e)
		}
		p.legendEntry(e, o, a.Right())
		o.X += p.legendWidth(e) + foldedGap
	}
}

// foldedGap is how far apart the signs on one line stand.
const foldedGap = 12.0

// legendRow writes entries from o on, no further than to.
func (p *sheet) legendRow(row []state.LegendEntry, o scene.Point, to float64) {
	for _, e := range row {
		p.legendEntry(e, o, to)
		o.X += p.widestSign(e) + state.LegendGap
	}
}

// legendText is from a sign of the legend to its words, dp; its lids are so large.
const legendText, legendLid = 21.0, 16.0

// widestSign is how wide an entry of the legend is on the day on which it is widest.
func (p *sheet) widestSign(e state.LegendEntry) float64 { return p.legendWidth(e.Widest()) }

// legendWidth is how wide an entry of the legend is.
func (p *sheet) legendWidth(e state.LegendEntry) float64 {
	if e.Sign == state.FoldSign {
		return p.width(e.Words, ink(13))
	}
	w := legendText + p.width(e.Words, ink2(13))
	if e.Counts() {
		w += 5 + p.width(thousands(e.N), ink(13).semi())
	}
	return w
}

// legendEntry draws a sign and says what it means.
func (p *sheet) legendEntry(e state.LegendEntry, o scene.Point, to float64) {
	if e.Sign == state.FoldSign {
		p.link(o.X, o.Y+4.5, e.Words, ink(13).as(scene.Pen), "signs", false)
		return
	}
	p.legendSign(e, o)
	x := o.X + legendText
	if e.Counts() {
		x = p.text(x, o.Y+4.5, thousands(e.N), ink(13).semi()) + 5
	}
	end := p.fit(x, o.Y+4.5, e.Words, ink2(13), to)
	if e.Sign == state.NeedSign {
		p.command(target(scene.Area{X: o.X, Y: o.Y - 10, W: end - o.X, H: 20}), "needs you")
	}
}

// legendSign draws the sign of an entry.
func (p *sheet) legendSign(e state.LegendEntry, o scene.Point) {
	l := scene.Lid{At: o.Add(at(8, 0)), Size: legendLid, Seen: true, Entrance: 180, NoRim: true}
	switch e.Sign {
	case state.ConditionSign:
		l.Condition = scene.Condition(e.Condition)
	case state.NeedSign:
		p.corner(at(o.X+2, o.Y-6), 13)
		return
	case state.UnseenSign:
		l.Size, l.Condition, l.Seen, l.Blank = 20, scene.Virgin, false, true
		if e.Hollow {
			l.Size = legendLid
		}
	case state.CaughtSign:
		l.Condition, l.Caught = scene.NoQueen, true
	case state.StrokeSign:
		p.legendStroke(e.Stroke, o.Add(at(8, 0)))
		return
	case state.RobbersSign:
		l.Size, l.Condition, l.Robbing, l.Blank = 20, scene.Empty, true, true
	}
	p.add(l)
}

// legendStroke draws the keeper's strokes about a point.
func (p *sheet) legendStroke(s book.Stroke, c scene.Point) {
	const k = 5.0
	ink := stroke(scene.Ink, 2)
	line := func(x float64) {
		p.add(scene.Line{From: c.Add(at(x-k, k)), To: c.Add(at(x+k, -k)), Stroke: ink})
	}
	switch s {
	case book.Settled:
		line(0)
	case book.Watch:
		line(-2.5)
		line(2.5)
	case book.Act:
		line(0)
		p.add(scene.Line{From: c.Add(at(-k, -k)), To: c.Add(at(k, k)), Stroke: ink})
	}
}

// corner draws the sign "needs you": filled for now, hollow for another day.
func (p *sheet) corner(o scene.Point, k float64) {
	poly := scene.Poly{Points: []scene.Point{o, o.Add(at(k, 0)), o.Add(at(0, k))}, Fill: scene.Act}
	if p.s.Away() {
		poly.Fill, poly.Stroke = scene.Panel, stroke(scene.Ink3, 1.3)
	}
	p.add(poly)
}
