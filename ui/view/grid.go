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
