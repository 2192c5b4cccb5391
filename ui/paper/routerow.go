package paper

import (
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// columns are the cells to write into, by the letters that go there, and their
// shares of the width.
var columns = []struct {
	letters string
	share   float64
}{{"q n v", 46}, {"e l", 48}, {"b", 48}, {"s", 48}, {"h", 48}, {"/", 36}, {"more", 58}}

// table is how a row of the route sheet is parted.
type table struct {
	lid   float64 // x of the middle of a lid
	name  float64 // x of names
	text  float64 // x of what to do at a named thing
	by    float64 // x where the last day ends
	cells float64 // x of the first cell to write into
	right float64 // x where a block's text ends
}

// Measures of a row, mm.
const (
	rowLeast   = 9.8
	rowTick    = 4.0
	lidPaper   = 6.6
	nameLeast  = 8.4
	nameMost   = 21.0
	cellsMost  = 87.0
	writeLeast = 8.2 // the height of a frame to write into: 8 mm for a hand that is no young one
)

// parted is the table for names up to the widest of a day. The cells take less
// than half of a narrow page: they need not grow with the type.
func (s *sheet) parted(widest float64) table {
	l, w := s.left(), s.right()-s.left()
	t := table{lid: l + 9.3, name: l + 13.5}
	t.text = t.name + min(max(widest+2.3, nameLeast), nameMost)
	t.cells = s.right() - min(cellsMost, w*0.465)
	t.by, t.right = t.cells-2.4, s.right()-1
	return t
}

// tableHead names the columns and draws the line below.
func (f *flow) tableHead(t table) {
	f.text(t.name-7.3, f.y+4, "nuc, what to do", soft(8.5))
	f.ends(t.by, f.y+4, "by", soft(8.5))
	f.columns(t, func(i int, x, w float64) { f.centre(x+w/2, f.y+4, columns[i].letters, bold(9.5)) })
	f.y += 5.4
	f.rule(f.y, stroke{black, 0.45})
}

// columns calls do with every column to write into.
func (s *sheet) columns(t table, do func(i int, x, w float64)) {
	sum := 0.0
	for _, c := range columns {
		sum += c.share
	}
	x := t.cells
	for i, c := range columns {
		w := c.share / sum * (s.right() - t.cells)
		do(i, x, w)
		x += w
	}
}

// drawRow draws a row that was laid out.
func (f *flow) drawRow(r *state.Reading, d drawnRow, t table) {
	a := f.row(d.high)
	middle := a.Y + d.high/2
	f.tick(a.X+0.5, middle-rowTick/2, rowTick)
	switch {
	case d.nuc != nil:
		f.lid(r, d.nuc, scene.Point{X: t.lid, Y: middle}, lidPaper)
		f.named(t.name, middle, t.text-t.name-1, d.nuc.Name)
	case d.colony != "":
		f.colony(scene.Point{X: t.lid, Y: middle}, 4.6)
		f.named(t.name, middle, t.text-t.name-1, d.colony)
	}
	f.rowText(d, a, t)
	f.rowCells(d, a, t)
	f.rule(a.Bottom(), stroke{hair, 0.15})
}

// byFoot is how far above the foot of a row its last day stands, mm.
const byFoot = 1.6

func (f *flow) rowText(d drawnRow, a scene.Area, t table) {
	text := lookDo.leading()*float64(len(d.do)) + lookWhy.leading()*float64(len(d.why))
	y := f.lines(d.x, a.Y+(a.H-text)/2+lookDo.size*point*0.95, d.do, lookDo)
	f.lines(d.x, y, d.why, lookWhy)
	f.ends(t.by, a.Bottom()-byFoot, d.by, lookBy(d.hard))
}

// rowCells draws what is to be written into: a cell a letter, or one for all.
func (f *flow) rowCells(d drawnRow, a scene.Area, t table) {
	high := min(a.H-1.6, 10)
	y := a.Y + (a.H-high)/2
	if !d.cells || d.nuc == nil {
		f.blank(scene.Area{X: t.cells + 0.3, Y: y, W: f.right() - t.cells - 0.3, H: high})
		return
	}
	f.columns(t, func(_ int, x, w float64) { f.blank(scene.Area{X: x + 0.3, Y: y, W: w - 0.6, H: high}) })
}
