package view

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// laneTop is how high the line above a stream is, dp: for the name of its batch where the
// ribbon has no room for names, and on the page of the season for clashes.
const laneTop = 14.0

// title writes the batch's number and line before its stream, or, where the ribbon has no
// room for names, in the line above it, clear of the frame of today.
func (g *lane) title() {
	if g.l.Narrow {
		g.names = append(g.names, g.titleAbove)
		return
	}
	g.fit(16, g.middle, g.name, ink(13).semi(), g.ribbon.X-6)
	g.fit(16, g.middle+15, g.Line, ink2(12), g.ribbon.X-6)
}

// titleAbove writes the number before the frame of today and the line behind it, where no
// clash lies.
func (g *lane) titleAbove() {
	const left, air = 14.0, 6.0
	f, y := ink(13).semi(), g.area.Y+laneTop-2
	frame := g.ribbon.Left(g.s.Today())
	behind, end := frame+g.ribbon.Column+air, left+g.width(g.name, f)
	x := left
	if end > frame-air && left < behind {
		x, end = behind, behind+g.width(g.name, f)
	}
	g.rect(scene.Area{X: x - 2, Y: y - 11, W: end - x + 4, H: 14}, g.ground)
	g.text(x, y, g.name, f)
	line, f := max(behind, end+10), ink2(12)
	to := g.area.Right() - 30
	for _, bar := range g.clashBars(g.Batch.Batch, g.area) {
		if bar.Right() > line {
			to = min(to, bar.X-air)
		}
	}
	if w := g.width(g.Line, f); g.Line != "" && line+min(w, 60) <= to {
		g.rect(scene.Area{X: line - 2, Y: y - 11, W: min(w, to-line) + 4, H: 14}, g.ground)
		g.fit(line, y, g.Line, f, to)
	}
}

// clashBars are where the clashes of a batch lie in the line above its stream: those of the
// same days one below the other.
func (p *sheet) clashBars(of book.BatchID, lane scene.Area) (bars []scene.Area) {
	if !p.s.OnSeason() {
		return nil
	}
	r := p.l.Ribbon
	for _, m := range p.s.ClashMarks(of) {
		x, to := max(r.X, r.Left(m.From)), min(lane.Right(), r.Left(m.To+1))
		bar := scene.Area{X: x, Y: lane.Y + 6, W: max(to-x, 0), H: 3}
		for _, b := range bars {
			if b.Overlaps(bar) {
				bar.Y = lane.Y + 11
			}
		}
		bars = append(bars, bar)
	}
	return bars
}

// clashesInTime marks above each stream the days on which its batch wants what others
// want, and names the clash; that of the chosen one is thick.
func (d seasonDraw) clashesInTime() {
	var ids []book.BatchID
	for _, b := range d.s.Lanes(d.l) {
		ids = append(ids, b.Batch)
	}
	for _, b := range d.s.PlannedLanes(d.l) {
		ids = append(ids, b.Batch)
	}
	named := map[scene.Ref]bool{}
	for i, id := range ids {
		d.clashesOf(id, d.laneArea(i), named)
	}
}

// clashesOf draws the bars of one batch, and names those that have room: the chosen one
// first, then those that no lane above names. A name lies on a ground of its own over the
// handle, and stands once beside bars of the same days.
func (d seasonDraw) clashesOf(id book.BatchID, lane scene.Area, named map[scene.Ref]bool) {
	marks, bars := d.s.ClashMarks(id), d.clashBars(id, lane)
	taken, ground := slices.Clone(bars), scene.Ground
	if d.s.Selection.Has(id.Subject()) {
		ground = scene.PenTint
	}
	order := make([]int, len(marks))
	for i, m := range marks {
		order[i] = i
		d.clashInTime(m, bars[i])
	}
	slices.SortStableFunc(order, func(i, j int) int { return clashRank(marks[i], named) - clashRank(marks[j], named) })
	said := map[string]scene.Area{} // the bar beside which a name stands
	for _, i := range order {
		name := marks[i].Name
		words, ok := d.clashNamed(marks[i], bars[i], lane, taken)
		if by, is := said[name]; !ok || is && bars[i].X < by.Right() && by.X < bars[i].Right() {
			continue
		}
		d.rect(scene.Area{X: words.X - 2, Y: words.Y - 1, W: words.W + 4, H: words.H}, ground)
		d.text(words.X, lane.Y+laneTop-2.5, name, clashFont)
		said[name], named[marks[i].Ref], taken = bars[i], true, append(taken, words)
	}
}

// clashRank is how early a clash is named in a lane.
func clashRank(m state.ClashMark, named map[scene.Ref]bool) int {
	switch {
	case m.Chosen:
		return 0
	case !named[m.Ref]:
		return 1
	}
	return 2
}

func (d seasonDraw) clashInTime(m state.ClashMark, bar scene.Area) {
	if bar.W <= 0 {
		return
	}
	hit := bar.Inset(-4)
	if m.Chosen || d.hovers(m.Ref) {
		bar.Y, bar.H = bar.Y-0.5, bar.H+1
	}
	d.rect(bar, scene.Act)
	d.hit(hit, m.Ref, m.Says)
}

var clashFont = ink(12).semi().as(scene.Act)

// clashNamed is where the name of a clash stands, right behind its bar or right before it;
// elsewhere it would be read as that of another one.
func (d seasonDraw) clashNamed(m state.ClashMark, bar, lane scene.Area, taken []scene.Area) (words scene.Area, ok bool) {
	const air = 6.0
	words = scene.Area{X: bar.Right() + air, Y: lane.Y + 2, W: d.width(m.Name, clashFont), H: laneTop - 1}
	if bar.W <= 0 {
		return words, false
	}
	free := func() bool {
		for _, t := range taken {
			if t.W > 0 && words.Overlaps(t.Inset(-air/2)) {
				return false
			}
		}
		return words.Right() <= lane.Right()-30
	}
	if free() {
		return words, true
	}
	words.X = bar.X - air - words.W
	return words, words.X >= d.l.Ribbon.Left(d.s.Today()+1)+air && free()
}
