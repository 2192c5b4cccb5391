package view

import (
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// grid draws the lids in stand order, with names, and below them the legend.
func (p *sheet) grid(a scene.Area) {
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: state.GridGround}}, func() {
		g := p.s.Grid(p.l)
		lids := scene.Area{X: a.X, Y: a.Y + g.Head, W: a.W, H: g.Height}
		if p.l.Turns.Empty() {
			title := "Nucs, stand order"
			if !g.Field.Empty() && g.Field.Y < a.Y+20 {
				title = "Nucs"
			}
			p.forms(a, title)
		}
		if !g.Field.Empty() {
			p.filterField(g.Field, "any word, stand, batch or letter")
		}
		p.clipped(lids, scene.Tag{}, func() { p.gridRows(g, lids) })
		p.scrollBar(lids, min(g.Offset, max(0, g.All-g.Height)), g.All)
		if len(g.Rows) == 0 {
			p.fit(a.X+state.Edge, lids.Y+30, "No nuc stands here", ink2(14), a.Right())
		}
		if g.Legend > 0 {
			p.rule(a.X, lids.Bottom()+2, a.Right(), lids.Bottom()+2, scene.Hair)
			p.legend(scene.Area{X: a.X + 14, Y: lids.Bottom() + 16, W: a.W - 28, H: g.Legend - 22})
		}
	})
	if a.X > 0 {
		p.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
	}
}

// forms draws the head of a pane: its title, only up to a comma where there is
// no room, and the forms that Yard can take.
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
	if p.width(title, ink(14).semi()) > x-a.X-14 {
		title, _, _ = strings.Cut(title, ",")
	}
	p.fit(a.X+14, y, title, ink(14).semi(), x)
}

// gridRows draws the rows that are in sight.
func (p *sheet) gridRows(g state.Grid, a scene.Area) {
	filter := state.FilterBy(p.s.Filter)
	for _, row := range g.Visible() {
		y := a.Y + row.Y - g.Offset
		if row.Lids == nil {
			p.yardHead(scene.Area{X: a.X, Y: y, W: a.W, H: row.H}, row.Yard)
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
	l := p.lidOf(n, top.Add(at(0, g.Lid/2+4)), g.Lid)
	l.Faded = !shown
	l.Focus = p.s.Selection.Len() > 1 && n.Nuc.Nuc.Subject() == p.s.Selection.Last()
	p.add(l)
	f := ink(13).medium()
	switch {
	case l.Selected:
		f = f.semi()
	case l.Faded:
		f = f.as(scene.Ink3)
	}
	p.centre(top.X, top.Y+g.Lid+19, scene.Shorten(p.measure, n.Name, f.size, f.weight, p.l.Pitch-4), f)
}

// yardHead draws the head of a yard among the rows of the grid.
func (p *sheet) yardHead(a scene.Area, id book.YardID) {
	y := a.Y + 22
	r := p.s.Reading()
	name := r.View.Yard(id).Name
	if name == "" {
		name = "on no yard"
	}
	count := plural(len(r.In(id)), "nuc", "nucs")
	x := p.fit(a.X+20, y, name, ink(14).semi(), a.Right()-30-p.width(count, ink2(13)))
	p.text(x+10, y, count, ink2(13))
	p.rule(a.X+20, y+6, a.Right()-20, y+6, scene.Hair)
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
	counts := map[book.Condition]int{}
	nucs := p.s.Reading().In(p.s.Filled())
	for _, n := range nucs {
		counts[n.Presumed.Condition]++
	}
	need := state.NeedYou(nucs)
	switch {
	case a.H < 40:
		p.lineLegend(a, counts, need)
	case a.W < 340:
		p.shortLegend(a, counts, need)
	default:
		p.fullLegend(a, counts, need)
	}
}

// fullLegend names every condition, and the signs, in four columns, as wide as
// their words where that fits.
func (p *sheet) fullLegend(a scene.Area, counts map[book.Condition]int, need int) {
	columns := [5]float64{0, 0.28, 0.505, 0.755, 1}
	widths := [4]float64{2: 25 + p.width("not seen yet", ink2(13)), 3: p.needWidth(need)}
	for i, c := range book.Conditions() {
		widths[i%4] = max(widths[i%4], p.legendWidth(c, counts[c]))
	}
	if gap := (a.W - widths[0] - widths[1] - widths[2] - widths[3]) / 3; gap >= 6 {
		for i, w := range widths {
			columns[i+1] = columns[i] + (w+gap)/a.W
		}
	}
	place := func(i int) (o scene.Point, to float64) {
		return at(a.X+columns[i%4]*a.W, a.Y+float64(i/4)*20), a.X + columns[i%4+1]*a.W - 4
	}
	for i, c := range book.Conditions() {
		o, to := place(i)
		p.legendItem(o, c, counts[c], to)
	}
	o, to := place(10)
	p.add(scene.Lid{At: o.Add(at(8, 0)), Size: 20, Condition: scene.Virgin, Entrance: 180, NoRim: true, Blank: true})
	p.fit(o.X+25, o.Y+4.5, "not seen yet", ink2(13), to)
	o, _ = place(11)
	p.needLegend(o, need, a.Right()+8)
}

// legendWidth is how wide a condition is in the legend, needWidth the sign
// "needs you".
func (p *sheet) legendWidth(c book.Condition, n int) float64 {
	return 26 + p.width(thousands(n), ink(13).semi()) + p.width(c.String(), ink2(13))
}

func (p *sheet) needWidth(n int) float64 {
	return 26 + p.width(thousands(n), ink(13).semi()) + p.width(p.needWord(), ink2(13))
}

// legendItem writes a condition with its lid and how many there are, and gives
// where it ends.
func (p *sheet) legendItem(o scene.Point, c book.Condition, n int, to float64) float64 {
	p.add(scene.Lid{At: o.Add(at(8, 0)), Size: 16, Condition: scene.Condition(c), Seen: true, Entrance: 180, NoRim: true})
	x := p.text(o.X+21, o.Y+4.5, thousands(n), ink(13).semi())
	return p.fit(x+5, o.Y+4.5, c.String(), ink2(13), to)
}

// needLegend explains the corner and filters by it; it reaches no further than
// to.
func (p *sheet) needLegend(o scene.Point, n int, to float64) {
	p.corner(at(o.X+2, o.Y-6), 13)
	x := p.text(o.X+21, o.Y+4.5, thousands(n), ink(13).semi())
	end := x
	if word := p.needWord(); x+5+p.width(word, ink2(13)) <= to {
		end = p.text(x+5, o.Y+4.5, word, ink2(13))
	}
	p.command(target(scene.Area{X: o.X, Y: o.Y - 10, W: end - o.X, H: 20}), "needs you")
}

// needWord is what the corner says, on the day looked at.
func (p *sheet) needWord() string {
	switch {
	case p.s.Ahead():
		return "will need you"
	case p.s.Away():
		return "needed you"
	default:
		return "needs you"
	}
}

// shortLegend names only what there is, in two columns, where room is short.
func (p *sheet) shortLegend(a scene.Area, counts map[book.Condition]int, need int) {
	const most, gap = 5, 6.0
	var there []book.Condition
	widths := [2]float64{}
	for _, c := range book.Conditions() {
		if counts[c] > 0 && len(there) < most {
			widths[len(there)%2] = max(widths[len(there)%2], p.legendWidth(c, counts[c]))
			there = append(there, c)
		}
	}
	second := a.W * 0.52
	if widths[0]+gap+max(widths[1], p.needWidth(need)) <= a.W+8 {
		second = max(second, widths[0]+gap)
	}
	place := func(i int) scene.Point { return at(a.X+float64(i%2)*second, a.Y+float64(i/2)*20) }
	for i, c := range there {
		to := a.Right() + 8
		if i%2 == 0 {
			to = a.X + second - gap + 1
		}
		p.legendItem(place(i), c, counts[c], to)
	}
	p.needLegend(place(len(there)), need, a.Right()+8)
}

// lineLegend names in one line what there is, from what needs the keeper on, as
// much as fits.
func (p *sheet) lineLegend(a scene.Area, counts map[book.Condition]int, need int) {
	const gap = 14.0
	p.needLegend(at(a.X, a.Y), need, a.Right())
	x := a.X + p.needWidth(need) + gap
	for _, c := range book.Conditions() {
		if counts[c] > 0 && c != book.Empty && x+p.legendWidth(c, counts[c]) <= a.Right() {
			x = p.legendItem(at(x, a.Y), c, counts[c], a.Right()) + gap
		}
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
