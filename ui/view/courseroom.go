package view

import (
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// courseRoom draws the course of a nuc in the whole room: its bands as they were known
// then and as they are known now, its weather, and what each look was worth.
func (p *sheet) courseRoom() {
	a := p.l.Main
	p.rect(a, scene.Panel)
	p.days()
	p.card()
	n := p.s.CourseNuc()
	x, w := a.X+state.Edge, a.W-2*state.Edge
	from := p.right(x+w, a.Y+27, "Esc", ink2(12)) - 10
	const back = "back to the yard"
	from -= p.width(back, ink(14).semi())
	p.link(from, a.Y+27, back, ink(14).semi().as(scene.Pen), "give back", false)
	pane := p.s.CoursePane(p.l)
	if !pane.Then {
		p.wrap(x, a.Y+72, "Nothing is known of what it held on the day you are looking at.", ink(15), w, 2)
		return
	}
	x = p.text(x, a.Y+27, n.Name, ink(20).bold()) + 12
	p.widest(x, a.Y+27, from-16, ink2(14), "what it most probably holds, of 100, by day; below: flying hours", "what it most probably holds, of 100, by day", "most probably, of 100, by day", "of 100, by day")
	body := scene.Area{X: a.X, Y: a.Y + state.CourseHead, W: a.W, H: a.H - state.CourseHead}
	offset := p.s.FillOffset(p.l)
	p.wholeLines(body, func() { p.courseBody(n, pane, body, offset) })
	p.scrollBar(body, offset, pane.High())
}

// courseBody draws what scrolls of a course that fills the room.
func (p *sheet) courseBody(n *state.Nuc, pane state.CoursePane, body scene.Area, offset float64) {
	of := p.s.Reading().CourseOf(n.Nuc.Nuc)
	x, y, w := body.X+state.Edge, body.Y-offset, body.W-2*state.Edge
	if pane.Now {
		p.fit(x+bandScale, y+13, "As known then: by what was seen up to each evening", ink(13).semi(), x+w)
		y += state.CourseTitle
	}
	chart := scene.Area{X: x, Y: y, W: w, H: bandHeight(pane.Bands, state.CourseFly)}
	g := p.newBand(p.s.Reading(), n, chart, state.CourseFly)
	g.words = true
	g.draw()
	y = chart.Bottom()
	if pane.Now {
		p.fit(x+bandScale, y+14, "As known now: by all that was seen since as well", ink(13).semi(), x+w)
		y += state.CourseTitle
		g.nowKnown(p.s.NowKnown(n.Nuc.Nuc), scene.Area{X: x, Y: y, W: w, H: pane.Bands})
		y += pane.Bands
	}
	y = p.courseLegend(x, y+20, w, of.Parts())
	p.looksBelow(scene.Area{X: x, Y: y + 4, W: w}, of)
}

// looksBelow writes what the looks were worth, the last first.
func (p *sheet) looksBelow(a scene.Area, of *state.NucCourse) {
	y := a.Y
	for _, l := range slices.Backward(of.Looks) {
		p.text(a.X, y, "▼ "+l.Day.Short(), ink2(13))
		y = p.wrap(a.X+state.CourseDates, y, l.Words, ink(14), a.W-state.CourseDates, whole) + 2
	}
}
