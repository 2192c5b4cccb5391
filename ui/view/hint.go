package view

import "lidmark/ui/scene"

// hint writes below the top of an area what to do next in a book that has just
// begun.
func (p *sheet) hint(a scene.Area) {
	if next := p.s.Next(); next != "" && a.H > 40 {
		y := p.wrap(a.X, a.Y+16, "What to do next", ink(14).semi(), a.W, 1)
		p.wrap(a.X, y, next, ink(15), min(a.W, 620), 4)
	}
}

// hintLine writes what to do next in a book that has just begun below the map,
// in the place of what there is to know of a nuc, and tells whether it did.
func (p *sheet) hintLine(x, y, to float64) bool {
	next := p.s.Next()
	if next == "" {
		return false
	}
	x = p.text(x, y, "Next", ink(14).bold()) + 8
	p.fit(x, y, next, ink(14), to)
	return true
}
