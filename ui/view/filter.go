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
	if p.s.Marked {
		p.rect(scene.Area{X: a.X + 10, Y: a.Y + 5, W: min(p.width(text, f)+4, end-a.X-10), H: a.H - 10}, scene.PenTint)
	}
	tip := p.fit(a.X+12, y, text, f, end)
	p.filterAt = a
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
	if shown == 0 && len(p.s.FilterThings()) > 0 {
		return p.right(x, y, "no nuc", ink2(12))
	}
	if shown == 0 {
		return p.right(x, y, "nothing matches", ink(12).semi())
	}
	return p.right(x, y, thousands(shown)+" of "+thousands(all), ink(12).semi())
}

// filterWords lists below the field of the filter the words it can go on with.
func (p *sheet) filterWords() {
	words := p.s.FilterWords()
	things := p.s.FilterThings()
	if len(words)+len(things) == 0 || p.filterAt.Empty() {
		return
	}
	const h = leastTarget
	a := scene.Area{X: p.filterAt.X, Y: p.filterAt.Bottom() + 2, W: min(p.filterAt.W, 300), H: h*float64(len(words)+len(things)) + 10}
	p.add(scene.Rect{Area: a, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1), Tag: scene.Tag{Ref: state.CommandOf("filter")}})
	for i, w := range words {
		row := scene.Rect{Area: scene.Area{X: a.X + 5, Y: a.Y + 5 + float64(i)*h, W: a.W - 10, H: h}, Radius: 3, Tag: scene.Tag{Ref: scene.Ref{Kind: state.FilterRef, ID: w.Word}}}
		if p.hovers(row.Tag.Ref) {
			row.Fill = scene.Sunk
		}
		p.add(row)
		end := p.right(row.Right()-8, row.Y+19, thousands(w.N), ink2(13)) - 8
		if i == 0 {
			end = p.right(end, row.Y+19, "Tab", ink2(12)) - 8
		}
		p.fit(row.X+7, row.Y+19, w.Word, ink(14), end)
	}
	for i, sub := range things {
		row := scene.Rect{Area: scene.Area{X: a.X + 5, Y: a.Y + 5 + float64(len(words)+i)*h, W: a.W - 10, H: h}, Radius: 3, Tag: scene.Tag{Ref: state.LinkTo(sub)}}
		if p.hovers(row.Tag.Ref) {
			row.Fill = scene.Sunk
		}
		p.add(row)
		end := row.Right() - 8
		if i == 0 && len(p.s.Shown()) == 0 {
			end = p.right(end, row.Y+19, "Enter", ink2(12)) - 8
		}
		p.fit(row.X+7, row.Y+19, sentence(nameOf(p.s.Reading().View, sub)), ink(14).as(scene.Pen), end)
	}
}
