package view

import (
	"slices"
	"strconv"

	"lidmark/ui/scene"
)

// Least sizes of the pane in which the parts of the lid are named about it, dp.
const (
	howToWide = 600.0
	howToHigh = 530.0
)

// howToRead explains the lid: its parts about a large one, then every letter
// seen and not seen yet.
func (p *sheet) howToRead(a scene.Area) {
	if a.W < howToWide || a.H < howToHigh {
		edge := lidEdge(a.W)
		p.compact(scene.Area{X: a.X + edge, Y: a.Y, W: a.W - 2*edge, H: a.H})
		return
	}
	x := a.X + lidEdge(a.W)
	p.text(x, a.Y+58, "How to read a lid", ink(20).semi())
	large := min(216, a.H*0.3, a.W*0.3)
	c := at(a.X+a.W/2-6, a.Y+90+large*0.62)
	p.add(largeLid(c, large))
	p.notes(c, large, scene.Area{X: x, Y: a.Y, W: a.Right() - x - 20, H: a.H})
	p.letters(scene.Area{X: x, Y: c.Y + large*0.62 + 54, W: a.Right() - x - 24, H: a.Bottom()})
}

// lidEdge is the air beside what explains the lid in a pane so wide.
func lidEdge(w float64) float64 { return min(30, w*0.05) }

// howToHigh is how high a small pane so wide must be to explain all of the lid.
func (p *sheet) howToHigh(w float64) float64 { return p.compactHigh(w - 2*lidEdge(w)) }

// largeLid is the lid on which the parts are shown.
func largeLid(c scene.Point, size float64) scene.Lid {
	return scene.Lid{
		At: c, Size: size, Condition: scene.Virgin, Entrance: 180, Timed: true, Used: 0.57, NeedsYou: true, Paint: scene.Watch,
	}
}

// note is what a part of the lid means, and where that part is and its words
// stand, in sizes of the lid from its middle; and all of it in short.
type note struct {
	part        scene.Point
	y           float64
	title, text string
	short       string
	onLeft      bool
}

var lidNotes = []note{
	{at(0.10, -0.455), -0.55, "edge: the clock", "57 % of the time used", "edge: the clock, 57 % used", false},
	{at(0.24, 0.1), 0, "hatched: not seen yet", "solid: somebody saw it", "hatched: not seen yet", false},
	{at(-0.40, -0.43), -0.45, "corner: needs you", "always with a reason", "corner: needs you, and why", true},
	{at(-0.06, -0.02), 0, "V: virgin", "the condition", "V: virgin, the condition", true},
	{at(-0.42, 0.40), 0.4, "your paint strokes", "two: watch", "your paint strokes, two: watch", true},
}

// lidEntrance is the part below the lid, and what it means.
var lidEntrance = note{part: at(0.12, 0.43), title: "notch: the entrance", text: "here to the south", short: "notch: the entrance, to the south"}

// lidFoot is what is said below the letters of a lid that further is how it gets.
func lidFoot(further string) string {
	return "The further along, the " + further + ". Cut corners: trouble. The same letters stand on the sheet and, small, in the typed line."
}

// Measures of the lid and its numbered list in a small pane, dp.
const (
	compactLid  = 92.0
	compactSide = 22.0 // beside the lid, for the numbers
	compactRow  = 20.0
	compactHead = 34.0
)

// compact explains the lid in a small pane: its parts in a numbered list beside it,
// each said whole, and every letter with its word.
func (p *sheet) compact(a scene.Area) {
	y := a.Y + compactHead
	if a.H >= p.compactHigh(a.W)-compactFoot {
		p.text(a.X, y, "How to read a lid", ink(17).semi())
		c := at(a.X+compactSide+compactLid/2, y+26+compactLid/2)
		p.add(largeLid(c, compactLid))
		p.compactNumbers(c)
		y = max(p.compactNotes(scene.Area{X: a.X + compactNotesAt, Y: y + 32, W: a.W - compactNotesAt}), y+26+compactLid+compactSide) + 18
	}
	y = p.letterList(scene.Area{X: a.X, Y: y - 18, W: a.W})
	if a.H >= p.compactHigh(a.W) {
		p.wrap(a.X, y+6, lidFoot(p.further()), ink2(13), a.W, 4)
	}
}

// compactNotesAt is from the side of a small pane to the words beside the lid, dp.
const compactNotesAt = compactLid + 2*compactSide + 14

// compactNumbers number the parts of a lid beside it, with a line to each: upon it they
// would hide what they stand for.
func (p *sheet) compactNumbers(lid scene.Point) {
	for i, n := range allNotes() {
		part := lid.Add(n.part.Mul(compactLid))
		number, end := lid.Add(at(compactLid/2+14, n.y*compactLid)), at(-6, 0)
		switch {
		case n == lidEntrance:
			number, end = lid.Add(at(n.part.X*compactLid, compactLid/2+20)), at(0, -9)
		case n.onLeft:
			number.X, end.X = lid.X-compactLid/2-16, 6
		}
		p.add(scene.Line{From: part, To: number.Add(end), Stroke: stroke(scene.Ink, 1)}, scene.Circle{At: part, Radius: 2.2, Fill: scene.Ink})
		p.centre(number.X, number.Y+4.5, strconv.Itoa(i+1), ink(13).semi())
	}
}

// allNotes are the parts of a lid in the order of their numbers.
func allNotes() []note { return append(slices.Clone(lidNotes), lidEntrance) }

// compactNotes say what the numbered parts of a lid mean, and give where the next
// thing begins.
func (p *sheet) compactNotes(a scene.Area) float64 {
	y := a.Y
	for i, n := range allNotes() {
		p.text(a.X, y, strconv.Itoa(i+1), ink(13).semi())
		y = p.wrap(a.X+16, y, n.short, ink(13), a.W-16, 2) + compactRow - scene.LineHeight(13)
	}
	return y
}

// compactFoot is how high the words below the letters are at most, dp.
const compactFoot = 84.0

// compactHigh is how high all of it is in a width.
func (p *sheet) compactHigh(w float64) float64 {
	alone := *p
	alone.marks = nil
	notes := alone.compactNotes(scene.Area{W: w - compactNotesAt})
	return compactHead + max(notes+32, compactLid+26+compactSide) + p.lettersHigh(w) + compactFoot
}

// letterRow is how high a row of the list of letters is, and letterLids how wide its
// two lids, dp.
const letterRow, letterLids = 28.0, 64.0

// letterColumns is in how many columns a list so wide has the letters, no word cut.
func (p *sheet) letterColumns(w float64) int {
	word := 0.0
	for _, k := range scene.Conditions() {
		word = max(word, p.width(k.String(), ink(13)))
	}
	return max(1, min(5, int(w/(word+letterLids))))
}

// lettersHigh is how high the list of letters is in a width.
func (p *sheet) lettersHigh(w float64) float64 {
	columns := p.letterColumns(w)
	return letterRow*float64((len(scene.Conditions())+columns-1)/columns) + 30
}

// letterList draws every condition in columns: seen, not seen yet, its word; and gives
// where the next thing begins.
func (p *sheet) letterList(a scene.Area) float64 {
	all, columns := scene.Conditions(), p.letterColumns(a.W)
	rows := (len(all) + columns - 1) / columns
	pitch := a.W / float64(columns)
	p.fit(a.X, a.Y+14, "Solid: somebody saw it. Hatched: not seen yet.", ink2(13), a.X+a.W)
	for i, k := range all {
		o := at(a.X+float64(i/rows)*pitch, a.Y+36+float64(i%rows)*letterRow)
		p.add(scene.Lid{At: o.Add(at(12, 0)), Size: 24, Condition: k, Seen: true, Entrance: 180, NoRim: true})
		if k != scene.Empty {
			p.add(scene.Lid{At: o.Add(at(40, 0)), Size: 24, Condition: k, Entrance: 180, NoRim: true})
		}
		p.fit(o.X+58, o.Y+4.5, k.String(), ink(13), o.X+pitch-6)
	}
	return a.Y + 36 + float64(rows)*letterRow
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
	p.wrap(a.X, a.Y+size*2.3+62, lidFoot(p.further()), ink2(14), a.W, 2)
}
