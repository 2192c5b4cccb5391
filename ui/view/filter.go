package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// filtering tells whether a filter is set or being typed: then its field is
// shown in every pane that follows it.
func (p *sheet) filtering() bool { return p.s.Typing || p.s.Filter != "" }

// filterField draws the field of the filter into an area 28 dp high: the words
// typed, how many nucs they show, and the way back.
func (p *sheet) filterField(a scene.Area, hint string) {
	edge := stroke(scene.Ink2, 1)
	if p.s.Typing {
		edge = stroke(scene.Pen, 2)
	}
	p.add(scene.Rect{Area: a, Radius: 4, Fill: scene.Panel, Stroke: edge, Tag: scene.Tag{Ref: state.CommandOf("filter"), Reason: p.says("filter")}})
	y, end := a.Y+a.H/2+5, a.Right()-10
	if p.filtering() {
		end = p.filterCount(end, y, a.W) - 8
	}
	text, f := hint, ink3(13)
	if p.filtering() {
		text, f = p.s.Filter, ink(14)
	}
	tip := p.fit(a.X+12, y, text, f, end)
	if p.s.Typing {
		p.rule(tip+1, a.Y+6, tip+1, a.Bottom()-6, scene.Pen)
	}
}

// filterCount writes up to x how many nucs the filter shows, in a wide field
// also how to show all again, and gives where that begins.
func (p *sheet) filterCount(x, y, width float64) float64 {
	const wide = 260.0
	if width >= wide {
		x = p.right(x, y, "Esc shows all", ink2(12)) - 10
	}
	shown, all := len(p.s.Shown()), len(p.s.Reading().In(p.s.Filled()))
	if shown == 0 {
		return p.right(x, y, "nothing matches", ink(12).semi())
	}
	return p.right(x, y, thousands(shown)+" of "+thousands(all), ink(12).semi())
}
