package view

import (
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// minutesTo is where the column of minutes ends: before the boxes.
func (r routeDraw) minutesTo() float64 { return r.area.Right() - state.Edge - state.TickBox - 16 }

// tickBox draws the box of a line about y, ticked when it is done.
func (r routeDraw) tickBox(l state.PageLine, y float64) {
	box := scene.Rect{
		Area:   scene.Area{X: r.area.Right() - state.Edge - state.TickBox - 2, Y: y - state.TickBox/2, W: state.TickBox, H: state.TickBox},
		Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1.5),
	}
	c := box.Centre()
	if l.Done {
		box.Fill, box.Stroke = scene.None, stroke(scene.Ink3, 1.2)
		r.add(box)
		if l.Off == "" {
			r.add(scene.Poly{Points: []scene.Point{at(c.X-5.5, c.Y), at(c.X-1.5, c.Y+4.5), at(c.X+6, c.Y-5.5)}, Open: true, Stroke: stroke(scene.Good, 2.6)})
		}
		return
	}
	why := r.s.TickSays(l)
	if why.Cannot {
		box.Fill, box.Stroke = scene.None, scene.Stroke{Role: scene.Rule, Width: 1, Dash: [2]float64{3, 3}}
	}
	ref := scene.Ref{Kind: state.TickRef, ID: state.TaskOf(l.Number).ID}
	if r.hovers(ref) {
		r.add(scene.Rect{Area: box.Inset(-2.5), Radius: 6, Stroke: stroke(scene.Ink2, 1.5)})
	}
	r.add(box)
	if why.Asks { // a tick cannot tell: it opens what asks
		for _, d := range []float64{-5, 0, 5} {
			r.add(scene.Circle{At: at(c.X+d, c.Y), Radius: 1.2, Fill: scene.Ink2})
		}
	}
	r.hit(scene.Around(c, leastTarget), ref, why.Words)
}

// done draws a line that is done: its lids as they became, and what it was,
// struck out. One that was put off says until when, and is not struck out.
func (r routeDraw) done(l state.PageLine, y float64) {
	f, end := ink3(14), r.end-10
	if l.Off != "" {
		to := r.end
		if r.s.UndoesOff(l) {
			const word = "undo"
			to -= r.width(word, ink(13)) + 4
			r.link(to, y+5, word, ink(13).as(scene.Pen), "undo", false)
			to -= 14
		}
		end = r.right(to, y+5, "put off to "+l.Off, ink2(13)) - 10
	}
	x := r.lids(l.Task, y, r.line+150)
	names := book.Names(r.r.TaskNames(l.Task), func(said string) bool { return r.width(said, f) < (end-x)/2 })
	said := strings.TrimSpace(sentence(names) + "  " + l.Title)
	to := r.fit(x, y+5, said, f, end)
	if l.Off == "" {
		r.rule(x, y, to, y, scene.Ink3)
	}
}
