package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// hint writes below the top of an area what to do next in a book that has just
// begun, with a button for each.
func (p *sheet) hint(a scene.Area) {
	next := p.s.Next()
	if next.Words == "" || a.H <= 40 {
		return
	}
	y := p.wrap(a.X, a.Y+16, "What to do next", ink(14).semi(), a.W, 1)
	y = p.wrap(a.X, y, next.Words, ink(15), min(a.W, 620), 4)
	x := a.X
	for i, name := range next.Commands {
		c, _ := state.CommandNamed(name)
		if w := p.width(c.Word, ink(14).medium()) + 28; x > a.X && x+w > a.Right() {
			x, y = a.X, y+42
		}
		x = p.button(x, y, c.Word, name, i == 0) + 8
	}
}

// hintLine writes what to do next in a book that has just begun below the map,
// in the place of what there is to know of a nuc, and tells whether it did: a link
// for the likeliest.
func (p *sheet) hintLine(x, y, to float64) bool {
	next := p.s.Next()
	if next.Words == "" {
		return false
	}
	c, _ := state.CommandNamed(next.Commands[0])
	x = p.text(x, y, "Next", ink(14).bold()) + 8
	x = p.link(x, y, c.Word, ink(14).as(scene.Pen), next.Commands[0], false) + 12
	if said := p.say(next.Words); x+p.width(said, ink2(14)) <= to {
		p.text(x, y, said, ink2(14))
	}
	return true
}
