package state

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// Grid is the grid of lids now: its rows, and where it is scrolled.
type Grid struct {
	Rows   []Row
	Row    float64    // height of a row of lids, dp
	Lid    float64    // size of a lid
	Field  scene.Area // where the field of the filter lies; empty without a filter
	Head   float64    // height of what lies above the lids
	Legend SignLegend // what lies below them
	Offset float64    // how far it is scrolled: a row begins at the top
	Height float64    // of the lids' part of the pane
	All    float64    // height of all rows
}

// Measures of the grid, dp: names stand under the lids.
const (
	gridLidLeast  = 35.0
	gridLidMost   = 48.0
	gridLidGap    = 17.0 // from lid to lid in a row, at least
	gridNameLeast = 24.0 // what a row is higher than its lids: a name, and the frame of the lid below
	gridNameMost  = 26.0
	gridYard      = 30.0 // the head of a yard
	gridHead      = 36.0
	gridHeadTurns = 4.0 // the head is that of the parts that take turns
	gridField     = 34.0
	gridLeast     = 150.0 // a pane lower than this has no legend

	// The field of the filter stands between title and forms if so much is left
	// of the pane, else below them.
	gridFieldLeast = 150.0
	gridFieldHigh  = 28.0
	gridTitle      = 72.0
	gridForms      = 184.0
)

// Grid is the grid of lids in the layout l.
func (s State) Grid(l Layout) Grid {
	rows := s.Reading().rows(rowsKey{sectionsKey{yard: s.Filled(), by: s.Heads, week: s.Week}, s.foldedKeys(), l.Columns})
	g := Grid{Rows: slices.Clone(rows), Head: gridHead}
	if l.Main.H >= gridLeast && len(rows) > 0 {
		g.Legend = s.columnLegend(l.Main)
	}
	if !l.Turns.Empty() {
		g.Head = gridHeadTurns
	}
	if s.Typing || s.Filter != "" {
		g.field(l)
	}
	g.lay(l)
	if g.All > g.Height && g.Legend.Height > 0 && s.folds(l.Main) {
		g.Legend = folded()
		g.lay(l)
	}
	g.Offset = g.rowFrom(min(s.Scroll[GridPlace], g.most()))
	return g
}

// lay lays the rows one below the other.
func (g *Grid) lay(l Layout) {
	g.Height, g.All = max(0, l.Main.H-g.Head-g.Legend.Height), 0
	g.sizeLids(l.Pitch)
	for i := range g.Rows {
		g.Rows[i].Y, g.Rows[i].H = g.All, g.Row
		if g.Rows[i].Lids == nil {
			g.Rows[i].H = gridYard
		}
		g.All += g.Rows[i].H
	}
}

// field places the field of the filter.
func (g *Grid) field(l Layout) {
	a := l.Main
	g.Field = scene.Area{X: a.X + gridTitle, Y: a.Y + (gridHead-gridFieldHigh)/2, W: a.W - gridTitle - gridForms, H: gridFieldHigh}
	if l.Turns.Empty() && g.Field.W >= gridFieldLeast {
		return
	}
	g.Field.X, g.Field.Y, g.Field.W = a.X+Edge, a.Y+g.Head, max(0, a.W-2*Edge)
	g.Head += gridField
}

// sizeLids makes the lids as large as the pitch allows, smaller where all rows
// have room only so.
func (g *Grid) sizeLids(pitch float64) {
	lids := 0
	for _, r := range g.Rows {
		lids += boolInt(r.Lids != nil)
	}
	room := g.Height - float64(len(g.Rows)-lids)*gridYard
	g.Lid = min(max(pitch-gridLidGap, gridLidLeast), gridLidMost)
	share := room / float64(max(lids, 1))
	if share < g.Lid+gridNameLeast {
		g.Lid = max(gridLidLeast, min(g.Lid, share-gridNameLeast))
	}
	if least := g.Lid + gridNameLeast; share < least { // some are out of sight: those in it fill the pane
		room = g.Height - gridYard*float64(boolInt(lids < len(g.Rows)))
		share = room / max(1, math.Floor(room/least))
	}
	g.Row = min(max(share, g.Lid+gridNameLeast), g.Lid+gridNameMost)
}

// most is how far the grid can be scrolled.
func (g Grid) most() float64 { return max(0, g.All-g.Height) }

// rowFrom is where the first row begins that does not begin above y, or the last
// of all.
func (g Grid) rowFrom(y float64) (top float64) {
	for _, r := range g.Rows {
		if top = r.Y; top >= y-0.01 {
			break
		}
	}
	return top
}

// Visible are the rows that are in sight: whole ones, or the first lids there
// are where not even those have room.
func (g Grid) Visible() []Row {
	from := slices.IndexFunc(g.Rows, func(r Row) bool { return r.Y >= g.Offset-0.01 })
	if from < 0 {
		return nil
	}
	to, lids := from, false
	for ; to < len(g.Rows); to++ {
		if whole := g.Rows[to].Y+g.Rows[to].H <= g.Offset+g.Height+0.01; !whole && lids {
			break
		}
		lids = lids || g.Rows[to].Lids != nil
	}
	return g.Rows[from:to]
}

// find is where a nuc stands in the grid.
func (g Grid) find(id book.NucID) (row, column int, ok bool) {
	for i, r := range g.Rows {
		for j, n := range r.Lids {
			if n != nil && n.Nuc.Nuc == id {
				return i, j, true
			}
		}
	}
	return 0, 0, false
}
