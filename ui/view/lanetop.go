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

// titleAbove writes number and line before the frame of today, else both behind it, else the number
// before and the line behind it, where no clash lies.
func (g *lane) titleAbove() {
	const begin, air = 14.0, 6.0
	f, y := ink(13).semi(), g.area.Y+laneTop-2
	left, right := g.frameSides(g.s.Today())
	behind, end := right+air, begin+g.width(g.name, f)
	x := begin
	line := 0.0
	if g.Line != "" {
		line = 10 + g.width(g.Line, ink2(12))
	}
	if wide := end - begin; begin < behind && (end > left-air || end+line > left-air && g.clearOfClashes(behind, behind+wide+line+air)) {
		x, end = behind, behind+wide
	}
	g.rect(scene.Area{X: x - 2, Y: y - 11, W: end - x + 4, H: 14}, g.ground)
	g.text(x, y, g.name, f)
	line, f = end+10, ink2(12)
	if x == begin && line+g.width(g.Line, f) > left-air {
		line = max(behind, line)
	}
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

// clearOfClashes tells whether no clash of the lane lies from one place to another.
func (g *lane) clearOfClashes(from, to float64) bool {
	for _, bar := range g.clashBars(g.Batch.Batch, g.area) {
		if bar.W > 0 && bar.X < to && bar.Right() > from {
			return false
		}
	}
	return true
}
