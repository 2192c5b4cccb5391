package view

import (
	"strings"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// wall draws thousands of small lids, section by section; only those in sight become
// marks.
func (p *sheet) wall(a scene.Area) {
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: state.WallGround}}, func() {
		w := p.s.Wall(p.l)
		p.hollow = w.Legend.Hollow
		nucs := p.s.Reading().In(p.s.Filled())
		p.formHead(a, plural(len(nucs), "nuc", "nucs"), "filter: the others turn pale")
		body := scene.Area{X: a.X, Y: a.Y + state.WallHead, W: a.W, H: w.Height}
		p.clipped(body, scene.Tag{}, func() {
			for i := range w.Parts {
				p.wallPart(w, &w.Parts[i], body)
			}
		})
		if len(nucs) == 0 {
			p.noNucs(body)
		}
		p.scrollBar(body, w.Offset, w.All)
		p.rule(a.X, body.Bottom(), a.Right(), body.Bottom(), scene.Hair)
		p.signLegend(scene.Area{X: a.X + state.Edge, Y: body.Bottom(), W: a.W - 2*state.Edge, H: w.Legend.Height}, w.Legend)
	})
}

// wallPart draws one section of the wall: its head, its lids, how many need the
// keeper.
func (p *sheet) wallPart(w state.LidWall, part *state.WallPart, a scene.Area) {
	top := a.Y + part.Y - w.Offset
	if top > a.Bottom() || top+part.H < a.Y {
		return
	}
	p.rule(a.X+state.Edge, top+4, a.Right()-state.Edge, top+4, scene.Hair)
	x, headed := a.X+state.Edge+folderWide, lineWithin(top+23, a)
	if headed {
		p.folder(a.X+state.Edge, top+18, &part.Section)
	}
	switch {
	case part.Folded && !headed:
		return
	case part.Folded:
		end := p.sectionWord(x, top+23, &part.Section, a.X+a.W/2)
		p.text(end+12, top+23, sectionCount(&part.Section), ink2(13))
		p.wallNeed(part, top+23, a)
		return
	}
	y := p.wallWords(part, x, top+23, a)
	if state.WallCounts(a.W) > 0 {
		p.wallNeed(part, top+23, a)
	} else if part.Need > 0 {
		tone, _ := p.alarm()
		f := ink(13).semi().as(tone)
		for _, said := range p.needLines(part.Need, f) {
			if lineWithin(y, a) {
				p.fit(x, y, said, f, x+state.WallWide)
			}
			y += state.WallRow
		}
	}
	p.wallLids(w, part.Nucs, at(a.X+state.WallNames-10+w.Lid/2, top+8+w.Lid/2), a)
}

// wallWords writes the name of a section and how many nucs it has before its lids, each
// over two lines where it is long, and gives the baseline of the next line.
func (p *sheet) wallWords(part *state.WallPart, x, y float64, a scene.Area) float64 {
	for _, said := range p.twoAtMost(sentence(part.Word), ink(14).semi()) {
		if lineWithin(y, a) {
			p.sectionLine(x, y, said, &part.Section, x+state.WallWide)
		}
		y += state.WallRow
	}
	for _, said := range p.twoAtMost(sectionCount(&part.Section), ink2(13)) {
		if lineWithin(y, a) {
			p.fit(x, y, said, ink2(13), x+state.WallWide)
		}
		y += state.WallRow
	}
	return y
}

// needLines say how many need the keeper, the number over its words where they are long.
func (p *sheet) needLines(n int, f font) []string {
	if said := needWords(n, p.s); p.width(said, f) <= state.WallWide {
		return []string{said}
	}
	return []string{thousands(n), needVerb(n, p.s)}
}

// lineWithin tells whether a line of text with its baseline at y lies wholly in an area.
func lineWithin(y float64, a scene.Area) bool {
	const above, below = 12.0, 5.0
	return y-above >= a.Y && y+below <= a.Bottom()
}

// twoAtMost is a text in two lines at most; the second holds all that is left.
func (p *sheet) twoAtMost(text string, f font) []string {
	lines := scene.Wrap(p.measure, p.say(text), f.size, f.weight, state.WallWide)
	if len(lines) > 2 {
		return []string{lines[0], strings.Join(lines[1:], " ")}
	}
	return lines
}

// wallNeed writes at the right how many nucs of a section need the keeper.
func (p *sheet) wallNeed(part *state.WallPart, y float64, a scene.Area) {
	if part.Need > 0 && lineWithin(y, a) {
		tone, _ := p.alarm()
		p.right(a.Right()-state.Edge, y, needWords(part.Need, p.s), ink(13).semi().as(tone))
	}
}

// noNucs says in an area that no nuc stands there, and what to do first.
func (p *sheet) noNucs(a scene.Area) {
	x := a.X + state.Edge
	p.fit(x, a.Y+30, "No nuc stands here", ink2(14), a.Right()-state.Edge)
	p.hint(scene.Area{X: x, Y: a.Y + 46, W: a.W - 2*state.Edge, H: a.H - 46})
}

// wallLids draws the lids of a section from the point o on, those that are wholly in
// sight in a.
func (p *sheet) wallLids(w state.LidWall, nucs []*state.Nuc, o scene.Point, a scene.Area) {
	size, perRow, high := w.Lid, w.PerRow, w.Lid
	if w.Named {
		high = w.Down - 4
	}
	filter := state.FilterBy(p.s.Filter)
	first := max(0, int((a.Y-size-o.Y)/w.Down)) * perRow
	for i := first; i < len(nucs); i++ {
		row, column := i/perRow, i%perRow
		c := o.Add(at(float64(column)*w.Across+float64(column/8)*state.WallGroup, float64(row)*w.Down))
		if c.Y-size/2 < a.Y {
			continue
		}
		if c.Y-size/2+high > a.Bottom() {
			break
		}
		l := p.lidOf(nucs[i], c, size)
		l.Faded = !filter.Shows(nucs[i])
		l.Focus = p.s.RingAt(nucs[i].Nuc.Nuc.Subject())
		p.add(l)
		if w.Named {
			p.lidName(nucs[i], at(c.X, c.Y+size/2+15), l, w.Across-4)
		}
	}
}

// lidName writes the name of a nuc under its lid, about a point.
func (p *sheet) lidName(n *state.Nuc, o scene.Point, l scene.Lid, room float64) {
	f := ink(state.WallName).medium()
	switch {
	case l.Selected:
		f = f.semi()
	case l.Faded:
		f = f.as(scene.Ink3)
	}
	p.centre(o.X, o.Y, p.shortName(n.Name, f, room), f)
}
