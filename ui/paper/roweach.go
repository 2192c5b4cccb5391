package paper

import (
	"context"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Measures of a block of many nucs, mm.
const (
	eachRow   = 9.8  // of nucs with a frame each to write into
	eachLine  = 8.6  // of nucs with a line each to write on
	eachWide  = 60.0 // a nuc with its frame takes about so much of the width
	lineLeast = 18.0 // to write on
)

// drawBlockHead draws what is to be done at each of many, as wide as the page:
// the boxes to tick follow.
func (f *flow) drawBlockHead(d drawnRow, t table) {
	a := f.row(d.high)
	f.rowText(d, a, t)
}

// againFor says on a further page what is done at those that follow.
func (f *flow) againFor(w row, t table) {
	a := f.row(5)
	end := f.fit(t.name-7.3, a.Y+3.9, w.do, lookDo, f.right()-30)
	f.fit(end+2.6, a.Y+3.9, "continued", soft(8.6), f.right())
}

// eachHigh is the height of the first row of a block, which stays with its head.
func (f *flow) eachHigh(w row) float64 {
	switch {
	case !w.of():
		return 0
	case w.cells:
		return eachRow
	default:
		return eachLine
	}
}

// drawEach draws each of many side by side: a box to tick, a name, and a frame or
// a line to write into. No row is cut by the end of a page; head begins the next.
func (f *flow) drawEach(ctx context.Context, r *state.Reading, w row, head func()) error {
	widest := 0.0
	for _, n := range w.each {
		widest = max(widest, f.width(n.Name, bold(10)))
	}
	wide := f.right() - f.left()
	per := max(1, int(wide/(rowTick+3+widest+lineLeast)))
	if w.cells {
		per = max(1, int(wide/eachWide))
	}
	pitch, high := wide/float64(per), f.eachHigh(w)
	for nucs := w.each; len(nucs) > 0; nucs = nucs[min(per, len(nucs)):] {
		turned, err := f.need(ctx, high)
		if err != nil {
			return err
		}
		if turned {
			head()
		}
		a := f.row(high)
		for i, n := range nucs[:min(per, len(nucs))] {
			cell := scene.Area{X: a.X + float64(i)*pitch, Y: a.Y, W: pitch, H: high}
			if w.cells {
				f.eachFrame(r, n, cell, widest)
			} else {
				f.eachOnLine(n, cell, widest)
			}
		}
	}
	f.rule(f.y, stroke{hair, 0.15})
	return nil
}

// eachFrame draws one of many with its lid and a frame to write into.
func (f *flow) eachFrame(r *state.Reading, n *state.Nuc, a scene.Area, widest float64) {
	middle := a.Centre().Y
	f.tick(a.X+0.5, middle-rowTick/2, rowTick)
	f.lid(r, n, scene.Point{X: a.X + 9.3, Y: middle}, lidPaper)
	room := min(widest*1.13+1, nameMost)
	f.named(a.X+13.5, middle, room, n.Name)
	x := a.X + 14.5 + room
	f.blank(scene.Area{X: x, Y: middle - writeLeast/2, W: a.Right() - x - 2, H: writeLeast})
}

// eachOnLine draws one of many with a line to write on.
func (f *flow) eachOnLine(n *state.Nuc, a scene.Area, widest float64) {
	f.tick(a.X+0.5, a.Y+2.3, rowTick)
	f.fit(a.X+6, a.Y+5.8, n.Name, bold(10), a.Right()-4)
	f.writeOn(a.X+7.5+min(widest, a.W-14), a.Y+6.1, max(4, a.W-widest-9.5))
}
