package view

import (
	"strconv"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// grid draws the lids in stand order, with names, and below them the legend.
func (p *sheet) grid(a scene.Area) {
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: state.GridGround}}, func() {
		g := p.s.Grid(p.l)
		if p.l.Turns.Empty() {
			p.forms(a, "Nucs, stand order")
		}
		lids := scene.Area{X: a.X, Y: a.Y + g.Head, W: a.W, H: g.Height}
		p.clipped(lids, scene.Tag{}, func() { p.gridRows(g, lids) })
		p.scrollBar(lids, g.Offset, float64(len(g.Rows))*g.Row)
		if len(g.Rows) == 0 {
			p.fit(a.X+state.Edge, lids.Y+30, "No nuc stands here", ink2(14), a.Right())
		}
		p.rule(a.X, a.Bottom()-68, a.Right(), a.Bottom()-68, scene.Hair)
		p.legend(scene.Area{X: a.X + 14, Y: a.Bottom() - 54, W: a.W - 28, H: 48})
	})
	if a.X > 0 {
		p.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
	}
}

// forms draws the head of a pane: its title and the forms that Yard can take.
func (p *sheet) forms(a scene.Area, title string) {
	x := a.Right() - 14
	y := a.Y + 22
	for _, form := range []struct {
		word string
		pane state.Pane
	}{{"table", state.Table}, {"wall", state.Wall}, {"lids", state.Lids}} {
		on := p.s.Pane == form.pane || form.pane == state.Lids && p.s.Pane == state.Split
		f := ink2(13)
		if on {
			f = f.semi()
		}
		from := x - p.width(form.word, f)
		p.link(from, y, form.word, ink2(13), form.word, on)
		x = from - 16
	}
	p.fit(a.X+14, y, title, ink(14).semi(), x)
}

// gridRows draws the rows that are in sight.
func (p *sheet) gridRows(g state.Grid, a scene.Area) {
	filter := state.FilterBy(p.s.Filter)
	first := int(g.Offset / g.Row)
	last := min(len(g.Rows)-1, int((g.Offset+g.Height)/g.Row))
	for i := max(0, first); i <= last; i++ {
		y := a.Y + float64(i)*g.Row - g.Offset
		row := g.Rows[i]
		if row.Lids == nil {
			p.yardHead(scene.Area{X: a.X, Y: y, W: a.W, H: g.Row}, row.Yard)
			continue
		}
		for j, n := range row.Lids {
			if n != nil {
				x := a.X + gridLeft + (float64(j)+0.5)*p.l.Pitch + float64(j/4)*state.GridGap
				p.gridLid(n, at(x, y), g, filter.Shows(n))
			}
		}
	}
}

// gridLeft is where the grid's lids begin.
const gridLeft = 11.0

// gridLid draws one lid of the grid with its name below; top is the middle of
// its upper edge.
func (p *sheet) gridLid(n *state.Nuc, top scene.Point, g state.Grid, shown bool) {
	l := p.lidOf(n, top.Add(at(0, g.Lid/2+1)), g.Lid)
	l.Faded = !shown
	p.add(l)
	f := ink(13).medium()
	switch {
	case l.Selected:
		f = f.semi()
	case l.Faded:
		f = f.as(scene.Ink3)
	}
	p.centre(top.X, top.Y+g.Lid+min(g.Row-g.Lid-3.5, 17), scene.Shorten(p.measure, n.Name, f.size, f.weight, p.l.Pitch-4), f)
}

// yardHead draws the head of a yard among the rows of the grid.
func (p *sheet) yardHead(a scene.Area, id book.YardID) {
	y := a.Y + a.H/2 + 5
	r := p.s.Reading()
	name := r.View.Yard(id).Name
	if name == "" {
		name = "on no yard"
	}
	x := p.text(a.X+20, y, name, ink(14).semi())
	p.text(x+10, y, plural(len(r.In(id)), "nuc", "nucs"), ink2(13))
	p.rule(a.X+20, y+8, a.Right()-20, y+8, scene.Hair)
}

// scrollBar shows how much of a pane is in sight; nothing when all is.
func (p *sheet) scrollBar(a scene.Area, offset, all float64) {
	if all <= a.H || a.H <= 0 {
		return
	}
	track := scene.Area{X: a.Right() - 8, Y: a.Y + 2, W: 4, H: a.H - 4}
	p.add(scene.Rect{Area: track, Radius: 2, Fill: scene.Off})
	thumb := track
	thumb.H = max(20, track.H*a.H/all)
	thumb.Y += (track.H - thumb.H) * offset / (all - a.H)
	p.add(scene.Rect{Area: thumb, Radius: 2, Fill: scene.Ink3})
}

// legend says what the letters mean, with counts of the nucs shown.
func (p *sheet) legend(a scene.Area) {
	nucs := p.s.Reading().In(p.s.Filled())
	counts := map[book.Condition]int{}
	for _, n := range nucs {
		counts[n.Presumed.Condition]++
	}
	if a.W < 340 {
		p.shortLegend(a, counts, nucs)
		return
	}
	columns := [4]float64{0, 0.28, 0.505, 0.755}
	place := func(i int) scene.Point { return at(a.X+columns[i%4]*a.W, a.Y+float64(i/4)*20) }
	for i, c := range book.Conditions() {
		o := place(i)
		p.add(scene.Lid{At: o.Add(at(8, 0)), Size: 16, Condition: scene.Condition(c), Seen: true, Entrance: 180, NoRim: true})
		x := p.text(o.X+21, o.Y+4.5, strconv.Itoa(counts[c]), ink(13).semi())
		p.fit(x+5, o.Y+4.5, c.String(), ink2(13), o.X+a.W*0.25+8)
	}
	o := place(10)
	p.add(scene.Lid{At: o.Add(at(8, 0)), Size: 20, Condition: scene.Virgin, Entrance: 180, NoRim: true, Blank: true})
	p.text(o.X+25, o.Y+4.5, "not seen yet", ink2(13))
	p.needLegend(place(11), state.NeedYou(nucs), a.Right()+8)
}

// needLegend explains the corner and filters by it; it reaches no further than
// to.
func (p *sheet) needLegend(o scene.Point, n int, to float64) {
	p.corner(at(o.X+2, o.Y-6), 13)
	x := p.text(o.X+21, o.Y+4.5, strconv.Itoa(n), ink(13).semi())
	word := "needs you"
	if p.s.Ahead() {
		word = "will need you"
	}
	end := p.fit(x+5, o.Y+4.5, word, ink2(13), to)
	p.command(target(scene.Area{X: o.X, Y: o.Y - 10, W: end - o.X, H: 20}), "needs you")
}

// shortLegend names only what there is, most of it first, where room is short.
func (p *sheet) shortLegend(a scene.Area, counts map[book.Condition]int, nucs []*state.Nuc) {
	i := 0
	place := func() scene.Point { return at(a.X+float64(i%2)*a.W*0.52, a.Y+float64(i/2)*20) }
	for _, c := range book.Conditions() {
		if counts[c] == 0 || i >= 5 {
			continue
		}
		o := place()
		p.add(scene.Lid{At: o.Add(at(8, 0)), Size: 16, Condition: scene.Condition(c), Seen: true, Entrance: 180, NoRim: true})
		x := p.text(o.X+21, o.Y+4.5, strconv.Itoa(counts[c]), ink(13).semi())
		p.fit(x+5, o.Y+4.5, c.String(), ink2(13), o.X+a.W*0.5)
		i++
	}
	p.needLegend(place(), state.NeedYou(nucs), a.Right()+8)
}

// corner draws the sign "needs you": filled for now, hollow for a day ahead.
func (p *sheet) corner(o scene.Point, k float64) {
	poly := scene.Poly{Points: []scene.Point{o, o.Add(at(k, 0)), o.Add(at(0, k))}, Fill: scene.Act}
	if p.s.Ahead() {
		poly.Fill, poly.Stroke = scene.Panel, stroke(scene.Ink3, 1.3)
	}
	p.add(poly)
}
