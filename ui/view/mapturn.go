package view

import (
	"fmt"
	"slices"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// turnHead writes what else the head of the turns has room for while the map has its
// turn: its layers, the way to lay out the yard, and the yard's name or the filter's field.
func (p *sheet) turnHead(x float64, a scene.Area) {
	y, end := a.Y+22, p.layersEnd(a)
	if p.filtering() {
		if end-x > leastFilter+p.choiceWidth() {
			end = p.layers(end, y, x+20) - 10
		}
		p.filterField(scene.Area{X: x, Y: a.Y + 3, W: end - x, H: leastTarget}, "any word, stand, batch or letter")
		return
	}
	to := p.layers(end, y, x+20)
	if word := "lay it out"; to-x > p.width(word, ink(13))+14 {
		to = p.layItOut(to, y, word)
	}
	if p.s.Filled().IsZero() {
		p.fitWhole(x, y, p.s.Reading().View.Yard(p.s.MapYard()).Name, ink2(13), to)
	}
}

// leastFilter is the width, dp, below which the filter's field takes the room of the layers.
const leastFilter = 110.0

// layItOut writes the way to the layout of the yard, up to x, and gives where it begins.
func (p *sheet) layItOut(x, y float64, word string) float64 {
	from := p.right(x, y, word, ink(13).as(scene.Pen))
	p.command(target(scene.Area{X: from - 4, Y: y - 14, W: p.width(word, ink(13)) + 8, H: 20}), "layout")
	return from - 14
}

// fitWhole writes a text that has room, or nothing.
func (p *sheet) fitWhole(x, y float64, text string, f font, to float64) {
	if x+p.width(text, f) <= to {
		p.text(x, y, text, f)
	}
}

// mapRow is the one row below a map that has its turn: the signs on the map, or while
// something on it is pointed at what there is to know of that. The list of all signs stays
// over the map meanwhile.
func (g *ground) mapRow(a scene.Area) {
	g.rule(a.X, a.Y, a.Right(), a.Y, scene.Hair)
	if g.s.SignsTold() {
		g.allSigns(scene.Area{X: a.X + state.Edge, Y: a.Y, W: a.W - 2*state.Edge, H: a.H})
	}
	if g.s.Hover.Reason == "" || g.s.Hover.Ref.Kind == state.CommandRef {
		if !g.hintLine(a.X+state.Edge, a.Y+21, a.Right()-14) {
			g.rowLegend(scene.Area{X: a.X + state.Edge, Y: a.Y, W: a.W - 2*state.Edge, H: a.H})
		}
		return
	}
	g.reason(a.X+state.Edge, a.Y+21, a.Right()-14)
}

// rowLegend explains the map on one line, with the way to all signs where that is more.
func (g *ground) rowLegend(a scene.Area) {
	if g.s.Layer == state.ByCondition {
		g.foldedLegend(a, g.yard.YardDescribed.Yard)
		return
	}
	signs := slices.DeleteFunc(g.mapSigns(), func(s mapSign) bool { return !s.used() })
	fold := state.LegendEntry{Sign: state.FoldSign, Words: "all signs"}
	o, room := at(a.X, a.Y+a.H/2), a.Right()-g.legendWidth(fold)-foldedGap
	for _, s := range signs {
		if w := g.signWidth(s); o.X+w <= room {
			g.mapSign(s, o, room)
			o.X += w + foldedGap
		}
	}
	g.legendEntry(fold, at(a.Right()-g.legendWidth(fold), o.Y), a.Right())
}

// signWidth is how wide a line of the legend is.
func (g *ground) signWidth(s mapSign) float64 {
	switch {
	case s.entry != nil && s.entry.Sign == state.UnseenSign && g.hollow:
		return legendText + g.width("hollow: "+s.entry.Words, ink2(13))
	case s.entry != nil:
		return g.legendWidth(*s.entry)
	case s.step != nil:
		return legendText + g.width(s.words, ink2(13))
	default:
		return g.width(s.words, ink2(13))
	}
}

// allSigns lists all signs on the map over its foot, above the row a: nothing else moves.
func (g *ground) allSigns(a scene.Area) {
	const pad, gap, shut = 8.0, 14.0, 26.0
	signs := g.mapSigns()
	wide := 0.0
	for _, s := range signs {
		wide = max(wide, g.signWidth(s)+gap)
	}
	columns := max(1, int((a.W-2*pad+gap-shut)/wide))
	rows := (len(signs) + columns - 1) / columns
	h := min(float64(rows)*state.LegendRow+2*pad, g.frame.H)
	list := scene.Area{X: a.X, Y: a.Y - h, W: a.W, H: h}
	g.add(scene.Rect{Area: list, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1), Tag: scene.Tag{Ref: state.SignsRef}})
	g.closeSign(at(list.Right()-pad-7, list.Y+pad+7))
	for i, s := range signs {
		o := at(list.X+pad+float64(i/rows)*wide, list.Y+pad+(float64(i%rows)+0.5)*state.LegendRow)
		g.mapSign(s, o, o.X+wide-gap)
	}
}

// closeSign draws a cross about c that closes the list of all signs.
func (g *ground) closeSign(c scene.Point) {
	const k = 5.0
	tag := scene.Tag{Ref: state.CommandOf("signs"), Reason: "close; Esc"}
	box := scene.Around(c, leastTarget)
	g.hoverRing(scene.Around(c, 20), tag.Ref)
	for _, y := range []float64{-k, k} {
		g.add(scene.Line{From: c.Add(at(-k, y)), To: c.Add(at(k, -y)), Stroke: stroke(scene.Ink, 1.8)})
	}
	g.add(scene.Rect{Area: box, Tag: tag})
}

// northAndScale writes north and the scale on the map in a corner at its foot where they
// hide nothing that stands there; where none is free they are left out.
func (g *ground) northAndScale() {
	const high, air, pad = 38.0, 4.0, 9.0
	metres := scaleMetres(g.camera)
	long := g.camera.Length(metres)
	left := scene.Area{X: g.frame.X + air, Y: g.frame.Bottom() - air - high, W: long + 2*pad, H: high}
	right := left
	right.X = g.frame.Right() - air - left.W
	places := []scene.Area{left, right}
	for _, free := range []func(scene.Area) bool{g.free, g.clear} {
		if i := slices.IndexFunc(places, free); i >= 0 {
			a := places[i]
			g.add(scene.Rect{Area: a, Radius: 3, Fill: scene.Panel, Stroke: stroke(scene.Rule, 1)})
			g.take(a)
			g.north(at(a.X+pad+6, a.Y+14))
			g.scaleBar(at(a.X+pad, a.Bottom()-10), long)
			g.right(a.Right()-pad, a.Bottom()-15, fmt.Sprintf("%.0f m", metres), ink2(12))
			return
		}
	}
}
