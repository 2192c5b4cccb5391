package view

import (
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
	g.fit(state.Edge, g.middle, g.name, ink(13).semi(), g.ribbon.X-6)
	g.fit(state.Edge, g.middle+15, g.Line, ink2(12), g.ribbon.X-6)
}

// titleAbove writes the number before the frame of today and the line behind it, where no
// clash lies.
func (g *lane) titleAbove() {
	const begin, air = 14.0, 6.0
	f, y := ink(13).semi(), g.area.Y+laneTop-2
	left, right := g.frameSides(g.s.Today())
	behind, end := right+air, begin+g.width(g.name, f)
	x := begin
	if end > left-air && begin < behind {
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
