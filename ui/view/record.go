package view

import (
	"fmt"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// recordDraw is the walk of a day being drawn while it is typed in.
type recordDraw struct {
	*sheet
	state.WalkPane
	w    *state.Walk
	area scene.Area
	more int // lines that the row being drawn has below its first
}

// record draws the walk of a day: its rows, one of them typed into, the closing
// count, the letters.
func (p *sheet) record() {
	if p.s.Walk == nil {
		return
	}
	d := recordDraw{sheet: p, WalkPane: p.s.WalkPane(p.l), w: p.s.Walk, area: p.l.Main}
	p.rect(d.area, scene.Panel)
	d.head()
	p.clipped(d.Body, scene.Tag{Ref: scene.Ref{Kind: state.PaneRef, ID: "walk"}}, d.rows)
	d.closing()
	switch {
	case p.s.Form != nil:
		p.card()
	case !d.Letters.Empty():
		p.clipped(d.Letters, scene.Tag{Ref: scene.Ref{Kind: "card"}}, func() { p.lineLetters(d.Letters) })
		p.rule(d.Letters.X, d.Letters.Y, d.Letters.X, d.Letters.Bottom(), scene.Rule)
	}
	p.days()
}

// partChips are the parts of the day that can be chosen.
var partChips = []struct {
	part    calendar.Part
	command string
}{{calendar.Morning, "morning"}, {calendar.Midday, "midday"}, {calendar.Afternoon, "afternoon"}, {calendar.Evening, "evening"}}

// head draws which walk it is, when, who, how far, and the names of the columns.
func (d recordDraw) head() {
	a := d.Head
	x, right := a.X+state.Edge, a.Right()-state.Edge
	end := d.right(right, a.Y+29, fmt.Sprintf("%s of %s", thousands(d.w.Done), thousands(d.w.Nucs)), ink(14).semi()) - 20
	d.title(x, end, a.Y+29)
	bar := scene.Area{X: x, Y: a.Y + 44, W: right - x, H: 5}
	d.rect(bar, scene.Rule)
	if d.w.Nucs > 0 {
		bar.W *= float64(d.w.Done) / float64(d.w.Nucs)
		d.rect(bar, scene.Ink)
	}
	d.names(a.Y + 72)
	d.rule(x, a.Bottom(), right, a.Bottom(), scene.Ink)
}

// title draws from x to end which walk it is, the parts of the day, who reads and
// types, and the choice of all nucs, as far as there is room.
func (d recordDraw) title(x, end, y float64) {
	const word, gap = "all nucs", 20.0
	rows := ""
	if len(d.w.Stands) > 0 {
		rows = ", rows " + strings.Join(d.w.Stands, " ")
	}
	title, f := "The walk of "+d.w.Day.Short()+rows, ink(16).semi()
	chips := 16.0
	for _, c := range partChips {
		chips += d.width(c.command, ink(13).semi()) + 25
	}
	all := d.width(word, ink(13).semi()) + gap
	if x+d.width(title, f)+chips+all > end {
		title = d.w.Day.Short() + rows
	}
	if x+d.width(title, f)+chips+all <= end {
		d.link(end-all+gap, y, word, ink(13).as(scene.Pen), "all nucs", d.w.All)
		end -= all
	}
	x = d.text(x, y, title, f) + 16
	for _, c := range partChips {
		x = d.chip(x, y-17, c.command, d.w.Part == c.part) + 5
	}
	said := d.whoWords()
	if from := x + 16; said != "" && from+d.width(said, ink2(13)) < end {
		x = d.text(from, y, said, ink2(13))
		d.command(target(scene.Area{X: from, Y: y - 14, W: x - from, H: 20}), "reader")
	}
	if asks := "who reads aloud?"; d.w.Reader == "" && d.s.Readers() && x+16+d.width(asks, ink(13)) < end {
		d.link(x+16, y, asks, ink(13).as(scene.Pen), "reader", false)
	}
}

// names writes the names of the columns.
func (d recordDraw) names(y float64) {
	d.text(d.Name, y, "nuc", ink2(13))
	if d.Planned {
		d.text(d.Plan, y, "planned", ink2(13))
	}
	d.text(d.Typed, y, "typed", ink2(13))
	back := d.text(d.Back, y, "reads back", ink2(13))
	d.centre(d.After, y, "lid", ink2(13))
	if d.l.LettersGone() {
		word := d.firstFitting(d.After-34-20-back, "letters  Alt+Shift+L", "letters")
		d.link(d.After-34-d.width(word, ink(13)), y, word, ink(13).as(scene.Pen), "letters", false)
	}
}

// chip draws a part of the day, and gives where it ends.
func (d recordDraw) chip(x, y float64, command string, on bool) float64 {
	f := ink2(13)
	r := scene.Rect{Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1)}
	if on {
		f, r.Fill = f.semi().as(scene.Ground), scene.Ink
	}
	r.Area = scene.Area{X: x, Y: y, W: d.width(command, f) + 20, H: 25}
	d.add(r)
	d.centre(r.Centre().X, y+17, command, f)
	d.command(target(r.Area), command)
	return r.Right()
}

// whoWords say who reads aloud and who types.
func (d recordDraw) whoWords() string {
	reads, types := d.w.Reader, d.s.Pen.Writer
	switch {
	case reads != "" && types != "":
		return reads + " reads aloud, " + types + " types"
	case types != "":
		return types + " types"
	case reads != "":
		return reads + " reads aloud"
	}
	return ""
}

// rows draws the rows that show.
func (d recordDraw) rows() {
	a := d.Body
	from, to := d.Shown()
	for i := from; i < to; i++ {
		row := scene.Area{X: a.X, Y: a.Y + d.Y(i) - d.Offset, W: a.W, H: d.H(i)}
		switch {
		case i == d.Current:
			d.current(d.w.Rows[i], row)
		case row.Y < a.Y-1 || row.Bottom() > a.Bottom()+1:
			continue // whole rows only
		default:
			d.more = d.More(i)
			d.row(d.w.Rows[i], row)
		}
		d.rule(a.X+state.Edge, row.Bottom(), a.Right()-state.Edge, row.Bottom(), scene.Hair)
	}
	d.scrollBar(a, d.Offset, d.All())
	if len(d.w.Rows) == 1 {
		d.nothing(a.Y + d.All())
	}
}

// nothing says below the line for any nuc that there are no others.
func (d recordDraw) nothing(y float64) {
	x, w := d.area.X+state.Edge, d.area.W-2*state.Edge
	y = d.wrap(x, y+36, "Nothing was planned on "+d.w.Day.Short()+", and nothing is written of it", ink(16).semi(), w, 2)
	d.wrap(x, y+4, "Type nuc by nuc into the line above, or take all nucs, or another day.", ink2(14), w, 3)
}
