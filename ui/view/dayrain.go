package view

import (
	"fmt"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// rainHigh is the height of the line that says until when it rains, and rainLeast what
// is kept below it for who comes and for the kit, dp.
const rainHigh, rainLeast = 36.0, 210.0

// rain draws the line that says until when it rains: the day begins then. While it holds
// the hour can be changed beside it.
func (p *sheet) rain(a scene.Area) {
	c, _ := state.CommandNamed("rain until")
	if c.Reason(p.s) != "" {
		return
	}
	on := p.s.DayPage.Less.From > 0
	box := scene.Rect{Area: a, Radius: 5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1), Tag: scene.Tag{Ref: state.CommandOf("rain until"), Reason: p.says("rain until")}}
	if on {
		box.Fill, box.Stroke = scene.PenTint, stroke(scene.Pen, 1.5)
	}
	p.hoverRing(a, box.Ref)
	p.add(box)
	to := a.Right() - 12
	if on {
		to -= 66
		p.wideButton(scene.Area{X: a.Right() - 64, Y: a.Y + 1, W: 28, H: 28}, "−", "rain shorter", false)
		p.wideButton(scene.Area{X: a.Right() - 32, Y: a.Y + 1, W: 28, H: 28}, "+", "rain longer", false)
	}
	p.fit(a.X+12, a.Y+a.H/2+5, fmt.Sprintf("It rains until %d:00", p.s.RainUntil()), ink(14).semi(), to)
}
