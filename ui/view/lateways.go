package view

import (
	"fmt"

	"lidmark/domain/bee"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// ways draws the ways out, the best first.
func (d lateDraw) ways(a scene.Area) {
	d.rule(a.X, a.Y, a.Right(), a.Y, scene.Rule)
	g := d.wayPlaces(a)
	y := a.Y + 26
	from := d.right(g.kept, y, fmt.Sprintf("kept of %d by %s", d.Cells, weekdayHour(d.Next, d.zone)), ink2(13))
	d.widest(g.x, y, from-8, ink(14).semi(), "Ways out, the best first", "Ways out", "")
	d.widest(g.bar.X, y, g.work-70, ink2(13), "accepted by nucs in the end, 10–90 %", "accepted in the end", "accepted", "")
	d.right(g.work, y, "min now", ink2(13))
	if g.costs > 0 {
		d.text(g.costs, y, "what it costs", ink2(13))
	}
	y += 10
	for i, w := range d.Ways {
		d.way(i, w, scene.Area{X: a.X, Y: y, W: a.W, H: state.LateRow}, g)
		y += state.LateRow
	}
}

// wayPlaces are where the columns of the ways out lie.
type wayPlaces struct {
	x, kept, work float64
	bar           scene.Area
	costs, to     float64 // costs: 0 where it has no room
}

func (d lateDraw) wayPlaces(a scene.Area) wayPlaces {
	const costs, least = 200.0, 1000.0
	g := wayPlaces{x: a.X + state.Edge, to: a.Right() - state.Edge}
	g.work = g.to
	if a.W >= least {
		g.costs = g.to - costs
		g.work = g.costs - 24
	}
	const barLeast = 80.0
	g.kept = g.x + max(min(290, (g.work-a.X)*0.55), min(430, (g.work-a.X)*0.42))
	g.bar = scene.Area{X: g.kept + 44, W: g.work - g.kept - 200}
	if g.bar.W < barLeast { // a bar so short says nothing: the words have its room
		g.kept = g.work - 196
		g.bar = scene.Area{X: g.kept + 36}
	}
	return g
}

// way draws one way out in a row.
func (d lateDraw) way(i int, w bee.WayOut, row scene.Area, g wayPlaces) {
	tone, f := scene.Bar, ink(14).medium()
	switch {
	case i == 0:
		tone = scene.Good
	case w.Way == bee.Wait && !d.s.Away(): // a day ahead alarms nobody
		tone = scene.Act
	}
	box := scene.Rect{Area: scene.Area{X: row.X + 8, Y: row.Y + 1, W: row.W - 8 - besideBar, H: row.H - 2}, Radius: 5, Tag: scene.Tag{Ref: state.WayOf(i)}}
	if i == d.WayTaken(d.s) {
		box.Fill, box.Stroke, f = scene.PenTint, stroke(scene.Pen, 1.5), ink(14).semi()
	} else {
		d.rule(g.x, row.Bottom(), g.to, row.Bottom(), scene.Hair)
		if d.hovers(box.Ref) {
			box.Stroke = stroke(scene.Ink2, 1.5)
		}
	}
	d.add(box)
	y := row.Y + row.H/2 - 1
	d.text(g.x, y, letter(i), ink(15).bold())
	from := d.right(g.kept, y, d.Kept[i].String(), ink(15).semi())
	d.fit(g.x+24, y, sentence(w.Way.String()), f, from-10)
	d.wayNote(i, w, at(g.x+24, y+16), g)
	d.takenBar(d.Taken[i], g.bar, y-5, tone)
	d.right(g.work, y, fmt.Sprintf("%.0f", w.Work.Minutes()), ink(14))
	if g.costs > 0 {
		d.fit(g.costs, y, d.cost(i, w), ink2(13), g.to)
	}
}

// wayNote writes what a way comes to below its figures, whose room it has, and what it
// costs where that has no column.
func (d lateDraw) wayNote(i int, w bee.WayOut, o scene.Point, g wayPlaces) {
	end := d.fit(o.X, o.Y, d.Note(i), ink2(13), g.bar.X+60)
	if g.costs > 0 {
		return
	}
	cost := d.cost(i, w)
	if w.Way == bee.Wait {
		cost += " lost"
	}
	d.widest(end+12, o.Y, g.to, ink2(13), cost, "")
}

// takenBar draws from how many to how many are accepted: a bar on a hairline that
// leads to it.
func (d lateDraw) takenBar(n state.Span, bar scene.Area, middle float64, tone scene.Role) {
	if bar.W <= 0 {
		d.text(bar.X, middle+5, n.String(), ink(14).semi())
		return
	}
	const least = 10.0
	k := bar.W / float64(max(d.Cells, 1))
	low, high := bar.X+k*n.Low, bar.X+k*n.High
	if high-low < least {
		low = max(bar.X, (low+high-least)/2)
		high = low + least
	}
	d.rule(bar.X, middle, low, middle, scene.Hair)
	d.add(scene.Rect{Area: scene.Area{X: low, Y: middle - 6, W: high - low, H: 12}, Radius: 2, Fill: tone})
	d.text(high+10, middle+5, n.String(), ink(14).semi())
}

// cost says what a way out costs besides its minutes.
func (d lateDraw) cost(i int, w bee.WayOut) string {
	switch w.Way {
	case bee.Wait:
		return d.LostBy(i).String() + " cells"
	case bee.Cool:
		return "rests on a single study"
	case bee.Place:
		return fmt.Sprintf("the risk of the %d left", w.Left)
	case bee.Cage:
		return "virgins are accepted less"
	default:
		return plural(w.Caged, "cage", "cages") + ", each for one cell"
	}
}

// letter names a way out, A for the best.
func letter(i int) string { return string(rune('A' + i)) }

// widest writes the first of some texts that has room up to an edge; "" is none.
func (p *sheet) widest(x, y, to float64, f font, texts ...string) {
	for _, t := range texts {
		if x+p.width(t, f) <= to {
			p.text(x, y, t, f)
			return
		}
	}
}
