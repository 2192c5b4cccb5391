package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// wall draws thousands of small lids, section by section; only those in sight become
// marks.
func (p *sheet) wall(a scene.Area) {
	p.clipped(a, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: state.WallGround}}, func() {
		w := p.s.Wall(p.l)
		nucs := p.s.Reading().In(p.s.Filled())
		p.formHead(a, plural(len(nucs), "nuc", "nucs"), "filter: the others turn pale")
		body := scene.Area{X: a.X, Y: a.Y + state.WallHead, W: a.W, H: w.Height}
		p.clipped(body, scene.Tag{}, func() {
			for i := range w.Parts {
				p.wallPart(w, &w.Parts[i], body)
			}
		})
		p.scrollBar(body, w.Offset, w.All)
		p.rule(a.X, body.Bottom(), a.Right(), body.Bottom(), scene.Hair)
		p.legend(scene.Area{X: a.X + state.Edge, Y: body.Bottom() + state.WallLegend/2, W: a.W - 2*state.Edge, H: state.WallLegend})
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
	x := p.folder(a.X+state.Edge, top+18, &part.Section)
	to := a.X + state.WallNames - 16
	if part.Folded {
		to = a.X + a.W/2
	}
	count := sectionCount(&part.Section)
	if part.Folded {
		end := p.sectionWord(x, top+23, &part.Section, to)
		p.text(end+12, top+23, count, ink2(13))
	} else {
		y := p.wallName(part, x, top+23, to, a)
		p.fit(x, y+18, count, ink2(13), to)
		p.wallLids(w, part.Nucs, at(a.X+state.WallNames-10+w.Lid/2, top+8+w.Lid/2), a)
	}
	p.wallCount(part, x, top, a)
}

// wallName writes the name of a section before its lids, over two lines where it is
// long and nothing else needs the second, and gives the baseline of the last.
func (p *sheet) wallName(part *state.WallPart, x, y, to float64, a scene.Area) float64 {
	first, rest := p.broken(sentence(part.Word), ink(14).semi(), to-x)
	if rest == "" || state.WallCounts(a.W) == 0 {
		p.sectionWord(x, y, &part.Section, to)
		return y
	}
	p.sectionLine(x, y, first, &part.Section, to)
	p.sectionLine(x, y+16, rest, &part.Section, to)
	return y + 14
}

// broken parts a text at a space so that the first part is no wider than room; rest
// is empty where all of it fits, or nothing of it.
func (p *sheet) broken(text string, f font, room float64) (first, rest string) {
	if p.width(text, f) <= room {
		return text, ""
	}
	for i, r := range text {
		if r == ' ' && p.width(text[:i], f) <= room {
			first, rest = text[:i], text[i+1:]
		}
	}
	return first, rest
}

// wallCount writes how many nucs of a section need the keeper: at the right, or,
// where the lids take that room, under the name.
func (p *sheet) wallCount(part *state.WallPart, x, top float64, a scene.Area) {
	if part.Need == 0 {
		return
	}
	tone, _ := p.alarm()
	f := ink(13).semi().as(tone)
	if state.WallCounts(a.W) > 0 || part.Folded {
		p.right(a.Right()-state.Edge, top+23, needWords(part.Need, p.s), f)
		return
	}
	p.fit(x, top+58, needWords(part.Need, p.s), f, a.X+state.WallNames-16)
}

// wallLids draws the lids of a section from the point o on, those that are in
// sight in a.
func (p *sheet) wallLids(w state.LidWall, nucs []*state.Nuc, o scene.Point, a scene.Area) {
	size, perRow, pitch := w.Lid, w.PerRow, w.Pitch()
	filter := state.FilterBy(p.s.Filter)
	first := max(0, int((a.Y-size-o.Y)/pitch)) * perRow
	for i := first; i < len(nucs); i++ {
		row, column := i/perRow, i%perRow
		c := o.Add(at(float64(column)*pitch+float64(column/8)*state.WallGroup, float64(row)*pitch))
		if c.Y > a.Bottom()+size {
			break
		}
		l := p.lidOf(nucs[i], c, size)
		l.Faded = !filter.Shows(nucs[i])
		l.Focus = p.s.RingAt(nucs[i].Nuc.Nuc.Subject())
		p.add(l)
	}
}
