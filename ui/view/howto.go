package view

import (
	"strconv"

	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// Least sizes of the pane in which the parts of the lid are named about it, dp.
const (
	howToWide = 600.0
	howToHigh = 600.0
)

// howToRead explains the lid: its parts about a large one, then every letter
// seen and not seen yet.
func (p *sheet) howToRead(a scene.Area) {
	if a.W < howToWide || a.H < howToHigh {
		p.compact(scene.Area{X: a.X + state.Edge, Y: a.Y, W: a.W - 2*state.Edge, H: a.H})
		return
	}
	x := a.X + min(56, a.W*0.06)
	p.text(x, a.Y+58, "How to read a lid", ink(20).semi())
	large := min(216, a.H*0.3, a.W*0.3)
	c := at(a.X+a.W/2-6, a.Y+90+large*0.62)
	p.add(largeLid(c, large))
	p.notes(c, large, scene.Area{X: x, Y: a.Y, W: a.Right() - x - 20, H: a.H})
	p.letters(scene.Area{X: x, Y: c.Y + large*0.62 + 54, W: a.Right() - x - 24, H: a.Bottom()})
}

// largeLid is the lid on which the parts are shown.
func largeLid(c scene.Point, size float64) scene.Lid {
	return scene.Lid{
		At: c, Size: size, Condition: scene.Virgin, Entrance: 180, Timed: true, Used: 0.57, NeedsYou: true, Paint: scene.Watch,
	}
}

// note is what a part of the lid means, and where that part is and its words
// stand, in sizes of the lid from its middle.
type note struct {
	part        scene.Point
	y           float64
	title, text string
	onLeft      bool
}

var lidNotes = []note{
	{at(0.10, -0.455), -0.55, "edge: the clock", "57 % of the time used", false},
	{at(0.24, 0.1), 0, "hatched: not seen yet", "solid: somebody saw it", false},
	{at(-0.40, -0.43), -0.45, "corner: needs you", "always with a reason", true},
	{at(-0.06, -0.02), 0, "V: virgin", "the condition", true},
	{at(-0.42, 0.40), 0.4, "your paint strokes", "two: watch", true},
}

// compact explains the lid in a small pane: its parts in a numbered list beside
// it, where that has room, and every letter with its word.
func (p *sheet) compact(a scene.Area) {
	const large, row = 92.0, 20.0
	y := a.Y + 34
	if a.H >= p.lettersHigh(a.W)+large+90 {
		p.text(a.X, y, "How to read a lid", ink(17).semi())
		c := at(a.X+large/2+6, y+26+large/2)
		p.add(largeLid(c, large))
		x := a.X + large + 28
		for i, n := range lidNotes {
			part, number := c.Add(n.part.Mul(large)), strconv.Itoa(i+1)
			p.add(scene.Circle{At: part, Radius: 8, Fill: scene.Panel, Stroke: stroke(scene.Ink, 1)})
			p.centre(part.X, part.Y+4, number, ink(12).semi())
			p.text(x, y+32+float64(i)*row, number, ink(13).semi())
			p.fit(x+16, y+32+float64(i)*row, n.title+"; "+n.text, ink(13), a.Right())
		}
		y += large + 60
	}
	p.letterList(scene.Area{X: a.X, Y: y - 18, W: a.W})
}

// letterRow is how high a row of the list of letters is, dp, and letterWide how
// wide a column.
const letterRow, letterWide = 28.0, 152.0

// letterColumns is in how many columns a list so wide has the letters.
func letterColumns(w float64) int { return max(2, min(5, int(w/letterWide))) }

// lettersHigh is how high the list of letters is in a width.
func (p *sheet) lettersHigh(w float64) float64 {
	columns := letterColumns(w)
	return letterRow*float64((len(scene.Conditions())+columns-1)/columns) + 30
}

// letterList draws every condition in columns: seen, not seen yet, its word.
func (p *sheet) letterList(a scene.Area) {
	all, columns := scene.Conditions(), letterColumns(a.W)
	rows := (len(all) + columns - 1) / columns
	pitch := a.W / float64(columns)
	said := "Solid: somebody saw it. Hatched: not seen yet."
	if longer := said + " The further along, the " + p.further() + "."; p.width(longer, ink2(13)) <= a.W {
		said = longer
	}
	p.fit(a.X, a.Y+14, said, ink2(13), a.X+a.W)
	for i, k := range all {
		o := at(a.X+float64(i/rows)*pitch, a.Y+36+float64(i%rows)*letterRow)
		p.add(scene.Lid{At: o.Add(at(12, 0)), Size: 24, Condition: k, Seen: true, Entrance: 180, NoRim: true})
		if k != scene.Empty {
			p.add(scene.Lid{At: o.Add(at(40, 0)), Size: 24, Condition: k, Entrance: 180, NoRim: true})
		}
		p.fit(o.X+58, o.Y+4.5, k.String(), ink(13), o.X+pitch-6)
	}
}

// further is how a lid looks that is further along.
func (p *sheet) further() string {
	if p.s.Dark {
		return "lighter"
	}
	return "darker"
}

// notes write what the parts of the large lid mean.
func (p *sheet) notes(c scene.Point, k float64, a scene.Area) {
	gap := min(56, a.W*0.07)
	left, right := c.X-k*0.5-gap, c.X+k*0.5+gap
	for _, n := range lidNotes {
		part := c.Add(n.part.Mul(k))
		x, y := right, c.Y+n.y*k
		tip := x - 8
		if n.onLeft {
			x, tip = left, left+8
		}
		p.add(scene.Line{From: part, To: at(tip, y-5), Stroke: stroke(scene.Ink, 1.2)}, scene.Circle{At: part, Radius: 3, Fill: scene.Ink})
		if n.onLeft {
			p.right(x, y, scene.Shorten(p.measure, n.title, 15, scene.SemiBold, x-a.X), ink(15).semi())
			p.right(x, y+19, scene.Shorten(p.measure, n.text, 14, scene.Regular, x-a.X), ink2(14))
			continue
		}
		p.fit(x, y, n.title, ink(15).semi(), a.Right())
		p.fit(x, y+19, n.text, ink2(14), a.Right())
	}
	foot := c.Add(at(0, k*0.38))
	p.add(scene.Line{From: foot, To: at(c.X, c.Y+k*0.58), Stroke: stroke(scene.Ink, 1.2)}, scene.Circle{At: foot, Radius: 3, Fill: scene.Ink})
	p.centre(c.X, c.Y+k*0.58+18, "the entrance, here to the south", ink(15).semi())
}

// letters draws every condition, seen and not seen yet, with its words.
func (p *sheet) letters(a scene.Area) {
	p.rule(a.X, a.Y-18, a.Right(), a.Y-18, scene.Rule)
	const names = 86.0
	all := scene.Conditions()
	pitch := (a.W - names) / float64(len(all))
	size := min(44, pitch*0.8)
	p.text(a.X, a.Y+size/2+4, "seen", ink2(13))
	p.text(a.X, a.Y+size*1.3+size/2+4, "not seen yet", ink2(13))
	for i, k := range all {
		x := a.X + names + pitch*(float64(i)+0.5)
		p.add(scene.Lid{At: at(x, a.Y+size/2), Size: size, Condition: k, Seen: true, Entrance: 180})
		if k != scene.Empty {
			p.add(scene.Lid{At: at(x, a.Y+size*1.8), Size: size, Condition: k, Entrance: 180})
		}
		y := a.Y + size*2.3 + 18
		for _, l := range scene.Wrap(p.measure, k.String(), 12, scene.Medium, pitch-2) {
			p.centre(x, y, l, ink(12).medium())
			y += 16
		}
	}
	text := "The further along, the " + p.further() + ". Cut corners: trouble. The same letters on the sheet. The typed line has letters of its own."
	p.wrap(a.X, a.Y+size*2.3+62, text, ink2(14), a.W, 2)
}
