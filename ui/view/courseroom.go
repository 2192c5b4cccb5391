package view

import (
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Measures of a course that fills the room, dp.
const (
	courseHead  = 46.0
	courseFly   = 44.0
	courseDates = 110.0 // of the looks
	courseLow   = 110.0
	courseHigh  = 480.0
)

// courseRoom draws the course of a nuc in the whole room: its bands and weather,
// and below them what each look was worth.
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
	if n == nil || len(p.s.Reading().CourseOf(n.Nuc.Nuc).Days) == 0 {
		p.wrap(x, a.Y+72, "Nothing is known of what it held on the day you are looking at.", ink(15), w, 2)
		return
	}
	x = p.text(x, a.Y+27, n.Name, ink(20).bold()) + 12
	p.fit(x, a.Y+27, "what it most probably holds, of 100, by day; below: flying hours", ink2(14), from-16)
	looks := p.s.Reading().CourseOf(n.Nuc.Nuc).Looks
	need := float64(len(looks))*(scene.LineHeight(14)+2) + 40
	high := min(max(a.H-courseHead-bandHeight(0, courseFly)-need, courseLow), courseHigh)
	chart := scene.Area{X: a.X + state.Edge, Y: a.Y + courseHead, W: w, H: bandHeight(high, courseFly)}
	g := p.newBand(p.s.Reading(), n, chart, courseFly)
	g.words = true
	g.draw()
	p.looksBelow(scene.Area{X: chart.X, Y: chart.Bottom() + 12, W: w, H: a.Bottom() - chart.Bottom() - 12}, n)
}

// looksBelow writes what the looks were worth, the last first, as many as there is
// room for: the card has them too.
func (p *sheet) looksBelow(a scene.Area, n *state.Nuc) {
	y := a.Y + 14
	for _, l := range slices.Backward(p.s.Reading().CourseOf(n.Nuc.Nuc).Looks) {
		lines := len(scene.Wrap(p.measure, p.say(l.Words), 14, scene.Regular, a.W-courseDates))
		if y+float64(lines-1)*scene.LineHeight(14) > a.Bottom()-4 {
			return
		}
		p.text(a.X, y, "▼ "+l.Day.Short(), ink2(13))
		y = p.wrap(a.X+courseDates, y, l.Words, ink(14), a.W-courseDates, lines) + 2
	}
}
