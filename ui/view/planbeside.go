package view

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// besideLadder lists what is on the plan, and what was kept to be compared, where
// the ladder leaves room.
func (d *planDraw) besideLadder() {
	a := d.Ladder
	const below = 6.4 * state.RungHeight
	box := scene.Area{X: a.X + a.W*0.635, Y: a.Y + 10 + below, W: a.W*0.365 - state.Edge, H: a.H - below - 16}
	if a.W < planSide {
		return
	}
	y := box.Y + 14
	planned := d.s.PlannedBatches()
	if len(planned) > 0 {
		y = d.plannedLines(planned, box, y)
	}
	if tries := d.s.Planning.Tries; len(tries) > 0 {
		d.tryLines(tries, box, y)
	}
}

// besideLine is a line that can be clicked, with a figure at its end.
func (d *planDraw) besideLine(box scene.Area, y float64, words, figure string, ref scene.Ref, on bool) float64 {
	const row = 20.0
	area := scene.Area{X: box.X - 6, Y: y - 14, W: box.W + 12, H: row}
	r := scene.Rect{Area: area, Radius: 4, Tag: scene.Tag{Ref: ref}}
	if on {
		r.Fill, r.Stroke = scene.PenTint, stroke(scene.Pen, 1.5)
	} else if d.hovers(ref) {
		r.Fill = scene.Sunk
	}
	d.add(r)
	end := box.X + box.W
	if figure != "" {
		end = d.right(end, y, figure, ink(13).semi()) - 10
	}
	d.fit(box.X, y, words, ink(13), end)
	return y + row
}

func (d *planDraw) plannedLines(planned []book.BatchPlan, box scene.Area, y float64) float64 {
	d.text(box.X, y, "On the plan", ink(13.5).semi())
	if !d.s.Planning.Batch.IsZero() {
		d.link(box.X+100, y, "another batch", ink(13).as(scene.Pen), "new plan", false)
		d.link(box.X+214, y, "take it off", ink(13).as(scene.Pen), "drop plan", false)
	}
	y += 21
	for i, b := range planned {
		if y > box.Bottom()-24 && i < len(planned)-1 {
			d.text(box.X, y, fmt.Sprintf("and %d more", len(planned)-i), ink2(13))
			return y + 20
		}
		words := fmt.Sprintf("%s  %d larvae, %d nucs", b.Day.Short(), b.Larvae, b.Nucs)
		if b.Line != "" {
			words += ", " + b.Line
		}
		figure := ""
		if b.Queens > 0 {
			figure = fmt.Sprintf("%d by %s", b.Queens, b.By.Short())
		}
		ref := scene.Ref{Kind: state.PlannedRef, ID: b.Batch.Subject().String()}
		y = d.besideLine(box, y, words, figure, ref, b.Batch == d.s.Planning.Batch)
	}
	return y + 8
}

// tryLines compare what was kept by its figures.
func (d *planDraw) tryLines(tries []state.PlanTry, box scene.Area, y float64) {
	d.text(box.X, y, "Kept beside", ink(13.5).semi())
	d.link(box.X+100, y, "forget them", ink(13).as(scene.Pen), "forget tries", false)
	y += 21
	for i, t := range tries {
		words := fmt.Sprintf("%d queens, graft %s, %d larvae, %d nucs, %.0f h", t.Wish.Queens, t.Graft.Short(), t.Larvae, t.Nucs, t.Hours)
		y = d.besideLine(box, y, words, ofHundred(t.Chance), scene.Ref{Kind: state.TryRef, ID: fmt.Sprint(i)}, false)
	}
}
