package view

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// clashBars are where the clashes of a batch lie in the line above its stream: those of the
// same days one below the other, and where there are more than two of them, all thinner.
func (p *sheet) clashBars(of book.BatchID, lane scene.Area) (bars []scene.Area) {
	if !p.s.OnSeason() {
		return nil
	}
	r, last := p.l.Ribbon, 0.0
	for _, m := range p.s.ClashMarks(of) {
		x, to := max(r.X, r.Left(m.From)), min(lane.Right(), r.Left(m.To+1))
		bar := scene.Area{X: x, W: max(to-x, 0)} // Y counts from above until all are there
		if bar.W == 0 {
			bar.Y = -1
		}
		for bar.W > 0 && slices.ContainsFunc(bars, bar.Overlaps) {
			bar.Y++
		}
		bars, last = append(bars, bar), max(last, bar.Y)
	}
	first, pitch, high := 6.0, 5.0, 3.0
	if last > 1 {
		first = 1.5
		pitch = (laneTop - first) / (last + 1)
		high = 0.65 * pitch
	}
	for i := range bars {
		bars[i].Y, bars[i].H = lane.Y+first+bars[i].Y*pitch, high
	}
	return bars
}

// clashHit is where a bar is pointed at: around it, and half way to others of its days.
func clashHit(bar scene.Area, bars []scene.Area) scene.Area {
	hit := bar.Inset(-4)
	top, bottom := hit.Y, hit.Bottom()
	for _, b := range bars {
		switch {
		case b.W == 0 || b.X > hit.Right() || hit.X > b.Right():
		case b.Y < bar.Y:
			top = max(top, (b.Bottom()+bar.Y)/2)
		case b.Y > bar.Y:
			bottom = min(bottom, (bar.Bottom()+b.Y)/2)
		}
	}
	hit.Y, hit.H = top, bottom-top
	return hit
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
		d.clashInTime(m, bars[i], clashHit(bars[i], bars))
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

func (d seasonDraw) clashInTime(m state.ClashMark, bar, hit scene.Area) {
	if bar.W <= 0 {
		return
	}
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
