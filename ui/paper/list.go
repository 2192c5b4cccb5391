package paper

import (
	"context"

	"lidmark/ui/scene"
)

// column is a column of a list: its head and its share of the width. Figures end at
// its right.
type column struct {
	head    string
	wide    float64
	figures bool
}

// list is lines of text in columns, each with a box to tick where tick is set.
type list struct {
	*flow
	columns []column
	tick    bool
	again   func() // draws what stands over the lines of a further page; nil: the heads
}

// Measures of a list, mm.
const (
	listGap  = 3.4 // between two columns
	listAir  = 2.0 // of a line, above and below together
	listTick = 3.6
	listMost = 8 // lines of text of a cell
)

// from is where the first column begins.
func (t list) from() float64 {
	if t.tick {
		return t.left() + listTick + 2.4
	}
	return t.left()
}

// places are where each column begins and how wide it is.
func (t list) places() (x, w []float64) {
	sum, at := 0.0, t.from()
	for _, c := range t.columns {
		sum += c.wide
	}
	for _, c := range t.columns {
		wide := (t.right() - t.from()) * c.wide / sum
		x, w = append(x, at), append(w, wide-listGap)
		at += wide
	}
	w[len(w)-1] += listGap
	return x, w
}

// part begins a part of the sheet with the heads of the columns.
func (t list) part(ctx context.Context, title, note string) error {
	const least = 14
	if err := t.section(ctx, title, note, least); err != nil {
		return err
	}
	t.heads()
	return nil
}

// heads writes the heads of the columns.
func (t list) heads() {
	x, w := t.places()
	l := soft(7.6)
	for i, c := range t.columns {
		t.cell(c, x[i], t.y+3.4, w[i], c.head, l)
	}
	t.y += 4.4
	t.rule(t.y, stroke{hair, 0.15})
}

func (t list) cell(c column, x, y, w float64, text string, l look) {
	if c.figures {
		t.ends(x+w, y, text, l)
		return
	}
	t.text(x, y, text, l)
}

// listLine is a line of a list.
type listLine struct {
	look
	cells []string
	done  bool    // its box is ticked
	bare  bool    // without a box
	hard  bool    // with a thick bar in place of the box
	span  bool    // the first cell has the place of the second as well
	below float64 // so much room is kept below it on its page, mm
}

// high is how high a line is, and its cells in lines of text.
func (t list) high(l listLine) (high float64, cells [][]string) {
	_, w := t.places()
	for i := 1; l.span && i < len(w) && l.cells[i] == ""; i++ {
		w[0] += listGap + w[i]
	}
	most := 1
	for i, text := range l.cells {
		cells = append(cells, t.wrap(text, l.look, w[i], listMost))
		most = max(most, len(cells[i]))
	}
	return float64(most)*l.leading() + listAir, cells
}

// put writes a line, on a new page if need be, where the heads stand again.
func (t list) put(ctx context.Context, l listLine) error {
	high, cells := t.high(l)
	turned, err := t.need(ctx, high+l.below)
	switch {
	case err != nil:
		return err
	case turned && t.again != nil:
		t.again()
	case turned:
		t.heads()
	}
	a, size := t.row(high), l.size*point
	t.mark(l, a)
	x, w := t.places()
	for i, lines := range cells {
		y := a.Y + listAir/2 + size*0.98
		for _, text := range lines {
			t.cell(t.columns[i], x[i], y, w[i], text, l.look)
			y += l.leading()
		}
	}
	t.rule(a.Bottom(), stroke{hair, 0.15})
	return nil
}

// mark draws what stands before a line.
func (t list) mark(l listLine, a scene.Area) {
	y := a.Y + listAir/2 + (l.leading()-listTick)/2
	switch {
	case l.hard:
		t.rect(scene.Area{X: a.X, Y: a.Y + 0.5, W: 2.4, H: a.H - 1}, 0, black, stroke{})
	case t.tick && !l.bare:
		t.sheet.tick(a.X+0.4, y, listTick)
		if l.done {
			t.ticked(a.X+0.4, y, listTick)
		}
	}
}
