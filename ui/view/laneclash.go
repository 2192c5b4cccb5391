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

// clashesOf draws the bars of one batch, and names them: the chosen one first, then those that no
// lane above names. A name lies on a ground of its own over the handle, and stands once.
func (d seasonDraw) clashesOf(id book.BatchID, lane scene.Area, named map[scene.Ref]bool) {
	c := clashLane{seasonDraw: d, lane: lane, marks: d.s.ClashMarks(id), bars: d.clashBars(id, lane)}
	ground := scene.Ground
	if d.s.Selection.Has(id.Subject()) {
		ground = scene.PenTint
	}
	for i, m := range c.marks {
		d.clashInTime(m, c.bars[i], clashHit(c.bars[i], c.bars))
	}
	for _, w := range c.words(named) {
		d.rect(scene.Area{X: w.X - 2, Y: w.Y - 1, W: w.W + 4, H: w.H}, ground)
		d.text(w.X, lane.Y+laneTop-2.5, w.says, clashFont)
	}
	for _, m := range c.marks {
		named[m.Ref] = true
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
