package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// buttonRadius is how round the corners of a button are, dp.
const buttonRadius = 5.0

// button draws a button that runs a command and gives where it ends. One that
// cannot run is dashed.
func (p *sheet) button(x, y float64, word, command string, main bool) float64 {
	const h = 34.0
	a := scene.Area{X: x, Y: y, W: p.width(word, ink(14).medium()) + 28, H: h}
	p.wideButton(a, word, command, main)
	return a.Right()
}

// wideButton draws a button that fills an area.
func (p *sheet) wideButton(a scene.Area, word, command string, main bool) {
	f := ink(14).medium()
	r := scene.Rect{Area: a, Radius: buttonRadius, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)}
	c, _ := state.CommandNamed(command)
	switch {
	case c.Reason(p.s) != "":
		f, r.Fill = f.as(scene.Ink3), scene.None
		r.Stroke = refusedStroke
	case main:
		f, r.Fill, r.Stroke = f.as(scene.Ground), scene.Ink, scene.Stroke{}
	}
	r.Tag = scene.Tag{Ref: state.CommandOf(command), Reason: p.says(command)}
	p.hoverRing(a, r.Ref)
	p.add(r)
	p.centre(r.Centre().X, a.Y+a.H/2+f.size*0.35, word, f)
}

// refusedStroke is the outline of what cannot be done now.
var refusedStroke = scene.Stroke{Role: scene.Rule, Width: 1, Dash: [2]float64{3, 3}}

// hoverRing draws the ring about a button that the pointer is over. It is ink: pen
// blue is for what has the focus or is chosen.
func (p *sheet) hoverRing(a scene.Area, ref scene.Ref) {
	if p.hovers(ref) {
		p.add(scene.Rect{Area: a.Inset(-2.5), Radius: 7, Stroke: stroke(scene.Ink2, 1.5)})
	}
}
