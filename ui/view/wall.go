package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// wall draws thousands of small lids, yard by yard; only those in sight become
// marks.
func (p *sheet) wall(a scene.Area) {
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: state.WallGround}}, func() {
		w := p.s.Wall(p.l)
		nucs := p.s.Reading().In(p.s.Filled())
		p.formHead(a, plural(len(nucs), "nuc", "nucs"), "filter: the others turn pale")
		body := scene.Area{X: a.X, Y: a.Y + state.WallHead, W: a.W, H: w.Height}
		p.clipped(body, scene.Tag{}, func() {
			for _, y := range w.Yards {
				p.wallYard(w, y, body)
			}
		})
		p.scrollBar(body, w.Offset, w.All)
	})
}

// wallYard draws one yard of the wall: its name, its lids, how many need the
// keeper.
func (p *sheet) wallYard(w state.LidWall, y state.WallYard, a scene.Area) {
	top := a.Y + y.Y - w.Offset
	if top > a.Bottom() || top+y.H < a.Y {
		return
	}
	name := p.s.Reading().View.Yard(y.Yard).Name
	p.rule(a.X+state.Edge, top+4, a.Right()-state.Edge, top+4, scene.Hair)
	p.fit(a.X+state.Edge, top+23, name, ink(14).semi(), a.X+state.WallNames-16)
	p.text(a.X+state.Edge, top+41, plural(len(y.Nucs), "nuc", "nucs"), ink2(13))
	p.wallCount(y, top, a)
	p.wallLids(w.PerRow, y.Nucs, at(a.X+state.WallNames, top+18), a)
}

// wallCount writes how many nucs of a yard need the keeper: at the right, or,
// where the lids take that room, under the name.
func (p *sheet) wallCount(y state.WallYard, top float64, a scene.Area) {
	n := state.NeedYou(y.Nucs)
	if n == 0 {
		return
	}
	tone, _ := p.alarm()
	f := ink(13).semi().as(tone)
	if state.WallCounts(a.W) > 0 {
		p.right(a.Right()-state.Edge, top+23, needWords(n, p.s), f)
		return
	}
	p.fit(a.X+state.Edge, top+58, needWords(n, p.s), f, a.X+state.WallNames-16)
}

// wallLids draws the lids of a yard from the point o on, those that are in
// sight in a.
func (p *sheet) wallLids(perRow int, nucs []*state.Nuc, o scene.Point, a scene.Area) {
	const size = 16.0
	filter := state.FilterBy(p.s.Filter)
	for i, n := range nucs {
		row, column := i/perRow, i%perRow
		c := o.Add(at(float64(column)*state.WallPitch+float64(column/8)*state.WallGroup, float64(row)*state.WallPitch))
		if c.Y < a.Y-size || c.Y > a.Bottom()+size {
			continue
		}
		l := p.lidOf(n, c, size)
		l.Faded = !filter.Shows(n)
		p.add(l)
	}
}
