package view

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Measures of the legend of a course, dp.
const (
	legendSwatch = 14.0
	legendLine   = 22.0
	legendAir    = 18.0
)

// courseEntry is what a sign of the chart means.
type courseEntry struct {
	word string
	draw func(o scene.Area)
}

// courseLegend says what the bands, hatches, marks and bars of a chart mean, in rows as
// wide as there is room, and gives where they end.
func (p *sheet) courseLegend(x, y, w float64, parts []state.CoursePart) float64 {
	f, at := ink2(13), x
	for _, e := range p.courseEntries(parts) {
		wide := legendSwatch + 6 + p.width(e.word, f)
		if at > x && at+wide > x+w {
			at, y = x, y+legendLine
		}
		e.draw(scene.Area{X: at, Y: y - 12, W: legendSwatch, H: legendSwatch})
		if at == x && wide > w { // large text on a narrow card
			y = p.wrap(x+legendSwatch+6, y, e.word, f, w-legendSwatch-6, whole) + legendLine - scene.LineHeight(f.size)
			continue
		}
		p.text(at+legendSwatch+6, y, e.word, f)
		at += wide + legendAir
	}
	if at == x {
		return y // a row was begun and has nothing
	}
	return y + legendLine
}

func (p *sheet) courseEntries(parts []state.CoursePart) (all []courseEntry) {
	add := func(word string, draw func(o scene.Area)) { all = append(all, courseEntry{word, draw}) }
	for _, part := range parts {
		add(part.String(), func(o scene.Area) { p.swatch(o, part) })
	}
	add("hatched: not yet, if nobody looks", func(o scene.Area) {
		p.add(scene.Rect{Area: o, Fill: scene.Panel, Hatch: notYet(partLooks[state.LayingPart]), Stroke: stroke(scene.Ink2, 1)})
	})
	add("a look", func(o scene.Area) {
		p.add(scene.Poly{Points: []scene.Point{at(o.X+3, o.Y+3), at(o.X+12, o.Y+3), at(o.X+7.5, o.Y+12)}, Fill: scene.Ink})
	})
	add("flying hours: seen, foretold, usual", func(o scene.Area) {
		p.rect(scene.Area{X: o.X, Y: o.Y + 2, W: 4, H: 13}, scene.Bar)
		p.rect(scene.Area{X: o.X + 5.5, Y: o.Y + 5, W: 4, H: 10}, scene.BarLight)
		p.add(scene.Rect{Area: scene.Area{X: o.X + 11, Y: o.Y + 7, W: 4, H: 8}, Stroke: stroke(scene.BarLight, 1)})
	})
	return all
}
