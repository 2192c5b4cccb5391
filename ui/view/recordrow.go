package view

import (
	"fmt"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// row draws a row that is not typed into.
func (d recordDraw) row(row state.WalkRow, a scene.Area) {
	line := scene.Rect{Area: scene.Area{X: a.X + state.Edge, Y: a.Y + 1, W: a.W - 2*state.Edge, H: a.H - 1}}
	line.Tag = scene.Tag{Ref: row.Ref(), Reason: d.rowReason(row)}
	switch {
	case row.Asks || row.Failed:
		line.Fill = scene.ActTint
	case d.hovers(line.Ref):
		line.Fill, line.Radius = scene.Sunk, 4
	}
	d.add(line)
	if row.Asks || row.Failed {
		d.rect(scene.Area{X: line.X, Y: line.Y, W: 5, H: line.H}, scene.Act)
	}
	y := a.Y + state.WalkLine/2
	d.subject(row, y)
	f := ink(state.TypedSize).medium()
	if row.Many() {
		f = f.semi()
	}
	switch draft := d.s.RowDraft(row); {
	case draft != "" && draft != row.Typed:
		d.fit(d.Typed, y+5, draft, f.as(scene.Pen), d.Back-16)
		d.fit(d.Back, y+5, "not written yet", ink2(14), d.After-24)
		return
	case row.Open():
		d.rule(d.Typed, y+8, min(d.Typed+240, d.Back-16), y+8, scene.Rule)
		return
	}
	d.twoLines(d.Typed, y, row.Typed, f, d.Back-16)
	d.readBack(row, y)
	d.passed(row, a)
	d.lidAfter(row, y)
}

// rowReason is the one line that a row shows when the pointer rests on it.
func (d recordDraw) rowReason(row state.WalkRow) string {
	switch {
	case row.Any():
		return "a line for any nuc, like A3 e s5"
	case row.Open():
		return strings.TrimSpace(row.Title + "  " + row.Planned)
	}
	return row.Title + "  " + d.s.WalkBack(row)
}

// subject draws the lids before, the name, and what was planned.
func (d recordDraw) subject(row state.WalkRow, y float64) {
	r := d.s.Reading()
	if row.Any() {
		d.fit(d.Name, y+5, "any nuc", ink2(15).semi(), d.Typed-12)
		return
	}
	end := d.Plan - 6
	if row.Many() {
		const most, pitch = 3, 7.0
		for i, id := range row.Nucs[:min(most, len(row.Nucs))] {
			if n := r.Nuc(id); n != nil {
				l := d.plainLid(n, at(d.Lid-8+float64(i)*pitch, y), 20)
				l.Blank = true
				d.add(l)
			}
		}
		d.fit(d.Name+8, y+5, row.Title, ink(14).bold(), d.Typed-8)
		return
	}
	if n := r.Nuc(row.Nucs[0]); n != nil {
		d.add(d.plainLid(n, at(d.Lid, y), 24))
	}
	d.fit(d.Name, y+5, row.Title, ink(15).bold(), end)
	if d.Planned && row.RowName == d.w.At {
		d.wrap(d.Plan, y+5, row.Planned, ink2(14), d.Typed-16-d.Plan, 4)
	} else if d.Planned {
		d.plan(row.Planned, y)
	}
}

// plan writes what was planned, in as many lines as the row has.
func (d recordDraw) plan(words string, y float64) {
	f, end := ink2(state.WalkSize), d.Typed-12
	lines := scene.Wrap(d.measure, d.say(words), f.size, f.weight, end-d.Plan)
	for i, said := range lines[:min(len(lines), d.more+1)] {
		if i == d.more {
			said = strings.Join(lines[i:], " ")
		}
		d.fit(d.Plan, y+5+float64(i)*state.WalkMore, said, f, end)
	}
}

// plainLid is a lid in a row: the row is what is clicked.
func (d recordDraw) plainLid(n *state.Nuc, at scene.Point, size float64) scene.Lid {
	l := small(d.lidOf(n, at, size))
	l.Tag = scene.Tag{}
	return l
}

func (d recordDraw) readBack(row state.WalkRow, y float64) {
	f, end := ink2(state.WalkSize), d.After-24
	if row.Failed || row.Asks || row.Twice {
		f = f.as(scene.Ink)
	}
	if row.Many() && len(row.Nucs) > 0 {
		end -= 34
	}
	if row.Under {
		end = d.right(end, y+5, "saving …", ink3(13)) - 10
	}
	words := d.s.WalkBack(row)
	if like := "the same words as " + row.SameAs; row.SameAs != "" && d.Back+d.width(words, f)+24+d.width(like, ink3(13)) < end {
		d.right(end, y+5, like, ink3(13))
	}
	d.twoLines(d.Back, y, words, f, end)
}

// twoLines writes a text about y, on two lines where one is too short for it and the
// row has a second one.
func (d recordDraw) twoLines(x, y float64, words string, f font, end float64) {
	if d.more == 0 || x+d.width(words, f) <= end {
		d.fit(x, y+5, words, f, end)
		return
	}
	first, rest := d.broken(words, f, end-x)
	d.fit(x, y+5, first, f, end)
	d.fit(x, y+5+state.WalkMore, rest, f, end)
}

// broken is a text broken into what has room in a width, and the rest: behind the
// last comma where the rest has room too, so that no figure stands alone.
func (d recordDraw) broken(words string, f font, w float64) (first, rest string) {
	first = scene.Wrap(d.measure, words, f.size, f.weight, w)[0]
	rest = strings.TrimSpace(strings.TrimPrefix(words, first))
	if i := strings.LastIndex(first, ", "); rest != "" && i > 0 && d.width(words[i+2:], f) <= w {
		first, rest = words[:i+1], words[i+2:]
	}
	return first, rest
}

// passed writes below a row the question that was passed in it, its keys pale.
func (d recordDraw) passed(row state.WalkRow, a scene.Area) {
	if row.Passed.Asks == "" {
		return
	}
	y := a.Bottom() - state.WalkQuestion + 15
	d.fit(d.Typed, y, sentence(row.Passed.Asks), ink(13).semi().as(scene.Act), d.After-24)
	x := d.Typed
	for _, o := range row.Passed.Answers {
		x = d.fit(x, y+21, o.Value+"  "+o.Word, ink3(13), d.After-24) + 16
	}
	d.fit(d.Name, y, "open in the book;", ink2(13), d.Typed-12)
	d.fit(d.Name, y+21, "open the row to answer", ink2(13), d.Typed-12)
}

// lidAfter draws the lid as it stands with what was written.
func (d recordDraw) lidAfter(row state.WalkRow, y float64) {
	if len(row.Nucs) == 0 {
		return
	}
	if row.Many() {
		d.right(d.After-18, y+5, fmt.Sprintf("%d ×", len(row.Nucs)), ink2(13))
	}
	d.add(d.becomes(d.w.Lid(row), at(d.After, y), 24))
}

// becomes is a lid as it stands when a line is written: seen just now, with the
// keeper's strokes.
func (d recordDraw) becomes(n *state.Nuc, at scene.Point, size float64) scene.Lid {
	l := d.plainLid(n, at, size)
	l.Paint = scene.Paint(n.Paint)
	l.NoRim = n.Paint == book.NoStroke
	return l
}
