package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// grid draws the lids in stand order, with names, and below them the legend.
func (p *sheet) grid(a scene.Area) {
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: state.GridGround}}, func() {
		g := p.s.Grid(p.l)
		lids := scene.Area{X: a.X, Y: a.Y + g.Head, W: a.W, H: g.Height}
		if p.l.Turns.Empty() {
			to := p.forms(a)
			end := p.fit(a.X+state.Edge, a.Y+22, "Nucs", ink(14).semi(), to)
			if g.Field.Empty() || g.Field.Y >= a.Y+20 {
				p.headsMenu(end+12, a.Y+22, to)
			}
		}
		if !g.Field.Empty() {
			p.filterField(g.Field, "any word, stand, batch or letter")
		}
		p.clipped(lids, scene.Tag{}, func() { p.gridRows(g, lids) })
		p.scrollBar(lids, min(g.Offset, max(0, g.All-g.Height)), g.All)
		if len(g.Rows) == 0 {
			x := a.X + state.Edge
			p.fit(x, lids.Y+30, "No nuc stands here", ink2(14), a.Right())
			p.hint(scene.Area{X: x, Y: lids.Y + 46, W: a.W - 2*state.Edge, H: lids.H - 46})
		}
		if g.Legend.Height > 0 {
			p.rule(a.X, lids.Bottom()+2, a.Right(), lids.Bottom()+2, scene.Hair)
			p.signLegend(scene.Area{X: a.X + state.Edge, Y: lids.Bottom() + 2, W: a.W - 2*state.Edge, H: g.Legend.Height - 2}, g.Legend)
		}
	})
	if a.X > 0 {
		p.rule(a.X, a.Y, a.X, a.Bottom(), scene.Rule)
	}
}

// splitter draws what divides map and lids where it can be taken.
func (p *sheet) splitter() {
	a := p.l.Splitter()
	if a.Empty() {
		return
	}
	ref := scene.Ref{Kind: state.SplitRef}
	x, y := a.X+a.W/2, a.Y+a.H/2
	if p.hovers(ref) || p.s.Drag.Kind == state.SplitDrag {
		p.add(scene.Line{From: at(x, a.Y), To: at(x, a.Bottom()), Stroke: stroke(scene.Pen, 2.5)})
	}
	for _, d := range []float64{-6, 0, 6} {
		p.add(scene.Circle{At: at(x, y+d), Radius: 1.3, Fill: scene.Ink2})
	}
	p.hit(a, ref, "drag to divide; a double click puts it back")
}

// forms draws the forms that Yard can take in the head of the lids, and gives up to
// where it is free.
func (p *sheet) forms(a scene.Area) float64 {
	x := a.Right() - state.Edge
	y := a.Y + 22
	for _, form := range []struct {
		word string
		pane state.Pane
	}{{"table", state.Table}, {"wall", state.Wall}, {"lids", state.Lids}, {"map", state.Map}} {
		if form.pane == state.Map && !p.l.Turns.Empty() {
			continue // it takes its turn
		}
		on := p.s.Pane == form.pane || form.pane == state.Lids && p.s.Pane == state.Split
		f := ink2(13)
		if on {
			f = f.semi()
		}
		from := x - p.width(form.word, f)
		p.link(from, y, form.word, ink2(13), form.word, on)
		x = from - 16
	}
	return x
}

// gridRows draws the rows that are in sight.
func (p *sheet) gridRows(g state.Grid, a scene.Area) {
	filter := state.FilterBy(p.s.Filter)
	for _, row := range g.Visible() {
		y := a.Y + row.Y - g.Offset
		if row.Lids == nil {
			p.sectionHead(scene.Area{X: a.X + 20, Y: y, W: a.W - 40, H: row.H}, row.Head)
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
	l.Focus = p.s.RingAt(n.Nuc.Nuc.Subject())
	p.add(l)
	p.lidName(n, at(top.X, top.Y+g.Lid+19), l, p.l.Pitch-4)
}

// besideBar is from the right side of a pane to where the frame of a row ends: 4 dp
// before the scroll bar.
const besideBar = 13.0

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
