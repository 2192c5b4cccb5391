package view

import (
	"fmt"
	"strconv"
	"strings"

	"lidmark/domain/roll"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// bringDraw is a list being drawn while it is brought.
type bringDraw struct {
	*sheet
	b *state.Bring
	l state.ListLayout
}

// listRowRef is the kind of a ref of a row of a list; ID is its place from 0.
const listRowRef = "list row"

// bringList draws a list that is brought: what its columns mean, its rows, and
// what each of them becomes.
func (p *sheet) bringList() {
	if p.s.Bring == nil { // it was typed at when the program ended
		p.start()
		return
	}
	d := &bringDraw{p, p.s.Bring, p.s.ListLayout()}
	d.rect(d.l.Page, scene.Panel)
	x, y := d.l.Page.X+state.Edge, d.l.Page.Y+38
	file, _ := state.FileName(d.b.Path)
	if len(d.b.Sheets) == 0 {
		d.encodings(scene.Area{X: x, Y: y, W: d.l.Page.W - 2*state.Edge, H: d.l.Page.Bottom() - y}, file)
		return
	}
	end := d.text(x, y, file, ink(24).semi())
	counts := d.b.Counts()
	from := d.right(d.l.Page.Right()-state.Edge, y, scene.Shorten(d.measure, counts, 15, scene.Medium, d.l.Page.Right()-state.Edge-end-24), ink(15).medium())
	d.fit(end+20, y, d.asksFor(), ink2(14), from-20)
	d.said(scene.Area{X: x, Y: y + 20, W: d.l.Page.W - 2*state.Edge, H: d.l.Table.Y - state.ListHead - y - 20})
	d.heads()
	d.clipped(d.l.Table, scene.Tag{}, d.rows)
	d.scrollBar(scene.Area{X: d.l.Table.X, Y: d.l.Table.Y, W: d.l.Table.W + state.Edge - 4, H: d.l.Table.H}, d.l.Offset, d.l.Top(len(d.b.Result.Rows)))
	d.foot()
	d.meanings()
}

// heads draw above each column its letter, what the file calls it, and what it
// means.
func (d *bringDraw) heads() {
	top := d.l.Table.Y - state.ListHead
	d.rule(d.l.Table.X, d.l.Table.Y, d.l.Table.Right(), d.l.Table.Y, scene.Rule)
	for _, c := range d.l.Columns {
		end := d.text(c.X+8, top+12, roll.Letters(c.Column), ink(12).semi())
		d.fit(end+6, top+12, d.b.HeadingOf(c.Column), ink2(12), c.X+c.W-4)
		d.meaning(scene.Area{X: c.X, Y: top + 18, W: c.W - 6, H: 30}, c.Column)
	}
	becomes := "what each row becomes"
	if d.l.Below {
		becomes = "below: " + becomes
	}
	d.text(d.l.Words, top+12, becomes, ink2(12))
	if n := len(d.l.Columns); d.l.More > 0 && n > 0 {
		d.hidden(d.l.Words, top+38, plural(d.l.More, "more column", "more columns")+" to the right", d.l.Columns[n-1].Column+1)
	}
	if d.b.First > 0 {
		d.hidden(d.l.Table.X, top+12, plural(d.b.First, "column", "columns")+" left", d.b.First)
	}
}

// hidden says how many columns lie beyond a side; it leads to the nearest.
func (d *bringDraw) hidden(x, y float64, said string, column int) {
	end := d.text(x, y, said, ink(13).as(scene.Pen))
	d.hit(target(scene.Area{X: x - 4, Y: y - 14, W: end - x + 8, H: 20}), scene.Ref{Kind: state.ColumnRef, ID: strconv.Itoa(column)}, "show column "+roll.Letters(column))
}

// meaning draws what a column means, which opens the meanings there are.
func (d *bringDraw) meaning(a scene.Area, column int) {
	c := d.b.Means[column-1]
	ref := scene.Ref{Kind: state.ColumnRef, ID: strconv.Itoa(column)}
	r := scene.Rect{Area: a, Radius: 4, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1), Tag: scene.Tag{Ref: ref, Reason: "what column " + roll.Letters(column) + " means"}}
	f := ink(14).medium()
	switch {
	case d.columnWrong(column) != "":
		r.Stroke, r.Reason = stroke(scene.Act, 1.5), d.columnWrong(column)
	case d.b.Open == column:
		r.Stroke = stroke(scene.Pen, 2)
	}
	if c.Left {
		f = ink2(14)
	}
	d.add(r)
	tip := a.Right() - 8
	d.add(scene.Poly{Points: []scene.Point{at(tip-9, a.Y+12), at(tip, a.Y+12), at(tip-4.5, a.Y+18)}, Fill: scene.Ink2})
	d.fit(a.X+8, a.Y+20, c.Word, f, tip-12)
}

// columnWrong is what is wrong with a column as a whole.
func (d *bringDraw) columnWrong(column int) string {
	for _, m := range d.b.Result.Columns {
		if m.Column == column {
			return state.WhatDo(m, "; ")
		}
	}
	return ""
}

// foot says the row pointed at in full, and what can be done with the list.
func (d *bringDraw) foot() {
	page := d.l.Page
	d.rule(page.X, d.l.Table.Bottom(), page.Right(), d.l.Table.Bottom(), scene.Rule)
	y := page.Bottom() - 46
	words, look := d.pointedRow()
	beside := y-d.l.Table.Bottom() <= 30 // no room above the buttons
	if !beside {
		d.wrap(page.X+state.Edge, d.l.Table.Bottom()+21, words, look, page.W-2*state.Edge, 2)
	}
	word := d.width("Keep it", ink(14).medium()) + 28
	to := page.Right() - state.Edge - word
	d.button(to, y, "Keep it", "keep list", true)
	x := d.button(page.X+state.Edge, y, "Back", "give back", false) + 12
	if d.b.Result.Counts.Mistaken > 0 {
		x = d.button(x, y, "Next mistake", "next mistake", false) + 12
		const said = 180.0 // of what stands beside the buttons
		if again := d.width("Read it again", ink(14).medium()) + 28; x+again+said <= to {
			x = d.button(x, y, "Read it again", "list again", false) + 12
		}
	}
	if beside && d.pointed() >= 0 {
		look.size = 13
		d.wrap(x, y+3, words, look, to-16-x, 3)
		return
	}
	d.state(x, to-16, y, beside)
}

// state says from x to end whether the list can be kept, on as many lines as the foot
// has room for.
func (d *bringDraw) state(x, end, y float64, beside bool) {
	said, f := "", ink2(14)
	c, _ := state.CommandNamed("keep list")
	switch said = c.Reason(d.s); {
	case d.s.Note.Bad:
		said, f = d.s.Note.Text, ink(14).as(scene.Act)
	case said == "":
		said = "Reads right: " + d.b.Counts()
		if beside && d.b.Series != nil {
			said += ". " + d.b.Series.Fit
		}
	}
	if said = d.say(sentence(said)); d.width(said, f) <= end-x {
		d.right(end, y+22, said, f)
		return
	}
	f.size = 13
	const most = 3
	lines := scene.Wrap(d.measure, said, f.size, f.weight, end-x)
	d.wrap(x, y+22-9*float64(min(len(lines), most)-1), said, f, end-x, most)
}

// asksFor says what is asked on the page.
func (d *bringDraw) asksFor() string {
	if d.b.Series == nil {
		return "say above each column what it means"
	}
	return "weather of " + d.s.Present().View.Yard(d.b.Series.Yard).Name + "; say above each column what it is, and its unit"
}

// pointed is the place of the row that is pointed at, or has the focus; -1 for
// none.
func (d *bringDraw) pointed() int {
	at := -1
	if d.s.Hover.Ref.Kind == listRowRef {
		at, _ = strconv.Atoi(d.s.Hover.Ref.ID)
	} else if number, ok := strings.CutPrefix(d.s.Focus.ID, state.ListSkip("")); ok {
		at = d.rowNumbered(number)
	}
	if at >= len(d.b.Result.Rows) {
		return -1
	}
	return at
}

// pointedRow is what that row becomes.
func (d *bringDraw) pointedRow() (string, font) {
	at := d.pointed()
	if at < 0 && d.b.Series != nil && d.b.Series.Fit != "" {
		return d.b.Series.Fit, ink(14)
	}
	if at < 0 {
		return "Point at a row to read all of it. Rows with a mistake are mended in the file, which is then read again, or left out with their tick.", ink2(13)
	}
	row := d.b.Result.Rows[at]
	if len(row.Mistakes) > 0 {
		return sentence(state.MistakesOf(row)), ink(14).as(scene.Act)
	}
	return sentence(fmt.Sprintf("row %d: %s", row.Row.Number, row.Words)), ink(14)
}

func (d *bringDraw) rowNumbered(number string) int {
	for i, row := range d.b.Result.Rows {
		if strconv.Itoa(row.Row.Number) == number {
			return i
		}
	}
	return -1
}
