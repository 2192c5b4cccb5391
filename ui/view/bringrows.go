package view

import (
	"strconv"

	"lidmark/domain/roll"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// rows draw the rows of the list in sight, each of them whole.
func (d *bringDraw) rows() {
	all := d.b.Result.Rows
	top := d.l.Table.Y - d.l.Offset
	for i := d.l.FirstRow; i < d.l.Behind(); i++ {
		d.row(i, all[i], scene.Area{X: d.l.Table.X, Y: top + d.l.Top(i), W: d.l.Table.W, H: d.l.Top(i+1) - d.l.Top(i)})
	}
}

// row draws a row: its number, its cells, what it becomes or what is wrong, and
// there a tick to leave it out.
func (d *bringDraw) row(i int, row roll.RowRead, a scene.Area) {
	base := a.Y + state.ListRow/2 + 5
	hover := d.s.Hover.Ref.Kind == listRowRef && d.s.Hover.Ref.ID == strconv.Itoa(i)
	switch {
	case hover:
		d.rect(a, scene.Ground)
	case len(row.Mistakes) > 0:
		d.rect(a, scene.ActTint)
	}
	if d.reached(a) {
		d.hit(a, scene.Ref{Kind: listRowRef, ID: strconv.Itoa(i)}, "")
	}
	d.right(a.X+state.ListNumber-14, base, strconv.Itoa(row.Row.Number), ink2(13))
	wrong := map[int]bool{}
	for _, m := range row.Mistakes {
		wrong[m.Column] = true
	}
	for _, c := range d.l.Columns {
		f := ink(14)
		switch {
		case row.Skipped || d.b.Means[c.Column-1].Left:
			f = ink2(14)
		case wrong[c.Column]:
			d.add(scene.Rect{Area: scene.Area{X: c.X + 2, Y: a.Y + 3, W: c.W - 10, H: state.ListRow - 6}, Radius: 3, Fill: scene.Panel, Stroke: stroke(scene.Act, 1.5)})
			f = ink(14).semi().as(scene.Act)
		}
		d.fit(c.X+8, base, row.Row.Cell(c.Column).Text, f, c.X+c.W-10)
	}
	d.becomes(i, row, a, base)
	d.rule(a.X, a.Bottom(), a.Right(), a.Bottom(), scene.Hair)
}

// becomes writes what becomes of a row; what is wrong with it is never cut, and
// stands below the cells where it has no room beside the tick.
func (d *bringDraw) becomes(i int, row roll.RowRead, a scene.Area, base float64) {
	to := a.Right() - 8
	if len(row.Mistakes) > 0 || row.Skipped {
		to = d.tick(row, to, a) - 12
	}
	said, f := row.Words, ink(14)
	switch {
	case row.Skipped:
		said, f = "left out", ink2(14)
	case len(row.Mistakes) > 0:
		said, f = sentence(state.MistakesOf(row)), ink(14).as(scene.Act)
	}
	if n := d.l.Lines(i); n > 0 {
		x := a.X + state.ListNumber + 8
		d.wrap(x, base+state.ListLine+1, said, f, a.Right()-8-x, n)
		return
	}
	d.fit(d.l.Words, base, said, f, to)
}

// tick draws the tick that leaves a row out, and gives where it begins.
func (d *bringDraw) tick(row roll.RowRead, right float64, a scene.Area) float64 {
	f := ink(14)
	x := right - d.width("leave out", f)
	d.text(x, a.Y+state.ListRow/2+5, "leave out", f)
	box := scene.Area{X: x - 24, Y: a.Y + 7, W: 16, H: 16}
	d.add(scene.Rect{Area: box, Radius: 3, Fill: scene.Panel, Stroke: stroke(scene.Ink, 1.2)})
	if row.Skipped {
		d.add(scene.Poly{Points: []scene.Point{at(box.X+3, box.Y+8), at(box.X+7, box.Y+12), at(box.X+13, box.Y+4)}, Open: true, Stroke: stroke(scene.Ink, 2.2)})
	}
	name := state.ListSkip(strconv.Itoa(row.Row.Number))
	if hit := (scene.Area{X: box.X - 4, Y: a.Y + 1, W: right - box.X + 8, H: state.ListRow - 2}); d.reached(hit) {
		d.hit(hit, state.ChoiceOf(name, "yes"), "")
	}
	return box.X
}

// reached tells whether enough of something in the table is in sight to be hit.
func (d *bringDraw) reached(a scene.Area) bool {
	const least = 28.0
	return a.Intersect(d.l.Table).H >= least
}

// Measures of the list of meanings, dp.
const (
	meaningRow  = 28.0
	meaningWide = 206.0
)

// meanings draw what a column can mean, below its head while it is open.
func (d *bringDraw) meanings() {
	if d.b.Open == 0 {
		return
	}
	d.hit(d.l.Page, scene.Ref{Kind: state.ColumnRef, ID: strconv.Itoa(d.b.Open)}, "")
	all := d.b.Meanings()
	per := (len(all) + 1) / 2
	box := scene.Area{W: 2*meaningWide + 16, H: float64(per)*meaningRow + 16, Y: d.l.Table.Y + 2}
	for _, c := range d.l.Columns {
		if c.Column == d.b.Open {
			box.X = min(c.X, d.l.Page.Right()-state.Edge-box.W)
		}
	}
	box.Y = min(box.Y, d.l.Page.Bottom()-box.H-6)
	d.add(scene.Rect{Area: box, Radius: 5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1.5), Tag: scene.Tag{Ref: scene.Ref{Kind: "note"}}})
	name := state.ListColumn(d.b.Open)
	for i, c := range all {
		row := scene.Area{X: box.X + 8 + float64(i/per)*meaningWide, Y: box.Y + 8 + float64(i%per)*meaningRow, W: meaningWide, H: meaningRow}
		d.meaningOf(row, c, name)
	}
}

// meaningOf draws one of the meanings; one that another column has is pale.
func (d *bringDraw) meaningOf(a scene.Area, c state.Meaning, name string) {
	f := ink(14)
	for i, taken := range d.b.Means {
		if taken == c && !c.Many && i+1 != d.b.Open {
			f = ink2(14)
		}
	}
	r := scene.Rect{Area: a, Radius: 4, Tag: scene.Tag{Ref: state.ChoiceOf(name, c.Value)}}
	switch {
	case d.s.Typed(name) == c.Value:
		r.Fill, f = scene.Ink, ink(14).semi().as(scene.Ground)
	case d.hovers(r.Ref):
		r.Fill = scene.Sunk
	}
	d.add(r)
	d.fit(a.X+10, a.Y+19, c.Word, f, a.Right()-6)
}

// encodings ask how a text is written: each way shows what some of its words
// are in it.
func (d *bringDraw) encodings(a scene.Area, file string) {
	d.fit(a.X, a.Y, file, ink(24).semi(), a.Right())
	w := min(a.W, 720)
	y := d.wrap(a.X, a.Y+30, "The file does not say how its letters are written. Choose the line in which names and words read right.", ink2(15), w, 3) + 4
	const least, most, foot, gap = 36.0, 54.0, 56.0, 12.0
	n, columns := len(d.b.Encodings), 1
	room := a.Bottom() - foot - y
	if room/float64(n) < least {
		columns, w = 2, a.W
	}
	per := (n + columns - 1) / columns
	pitch, wide := min(room/float64(per), most), (w-gap*float64(columns-1))/float64(columns)
	for i, e := range d.b.Encodings {
		at := scene.Area{X: a.X + float64(i/per)*(wide+gap), Y: y + float64(i%per)*pitch, W: wide, H: pitch - 6}
		d.encoding(at, e)
	}
	c, _ := state.CommandNamed("read list")
	word := d.width(c.Word, ink(14).medium()) + 28
	below := y + float64(per)*pitch + 10
	d.button(a.X, below, "Back", "give back", false)
	d.button(a.X+w-word, below, c.Word, "read list", true)
}

// encoding draws one way in which a text may be written.
func (d *bringDraw) encoding(a scene.Area, e roll.Encoding) {
	r := scene.Rect{Area: a, Radius: 5, Fill: scene.Panel, Stroke: stroke(scene.Ink2, 1), Tag: scene.Tag{Ref: state.ChoiceOf(state.ListEncoding, e.Name)}}
	words := ink2(13)
	if d.s.Typed(state.ListEncoding) == e.Name {
		r.Fill, r.Stroke = scene.PenTint, stroke(scene.Pen, 2)
		words = ink(13)
	}
	d.add(r)
	base := a.Y + a.H/2 + 5.5
	from := d.right(a.Right()-14, base, scene.Shorten(d.measure, e.Words, 13, scene.Regular, a.W*0.45), words)
	d.fit(a.X+14, base, e.Preview, ink(17).medium(), from-16)
}
