package state

import (
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// Row is a row of lids as they stand: a nil is a gap. A row without lids is
// the head of a yard.
type Row struct {
	Yard book.YardID
	Lids []*Nuc
	Y, H float64 // where it begins below the top of the grid, and how high it is, dp
}

// block is how many lids stand together before a gap.
const block = 4

// arranged puts nucs into rows in stand order. A stand of up to four takes a
// block, a longer one, or a line of stands with one letter, whole rows. With
// heads each yard begins with one.
func (r *Reading) arranged(nucs []*Nuc, columns int, heads bool) []Row {
	a := arranger{columns: max(columns, block)}
	for i := 0; i < len(nucs); {
		j := i
		for j < len(nucs) && r.line(nucs[j]) == r.line(nucs[i]) {
			j++
		}
		a.stand(nucs[i:j], heads)
		i = j
	}
	return a.rows
}

// line is the yard and the letter of a nuc's stand without its number.
func (r *Reading) line(n *Nuc) [2]string {
	letter := ""
	if !n.Stand.IsZero() {
		letter = strings.TrimRight(r.View.Stand(n.Stand).Letter, "0123456789")
	}
	return [2]string{n.Yard.String(), letter}
}

// arranger fills rows; at is how many places of the last row are taken.
type arranger struct {
	columns int
	rows    []Row
	at      int
	yard    book.YardID
}

func (a *arranger) stand(nucs []*Nuc, heads bool) {
	if yard := nucs[0].Yard; len(a.rows) == 0 || yard != a.yard {
		a.yard, a.at = yard, a.columns
		if heads {
			a.rows = append(a.rows, Row{Yard: yard})
		}
	}
	if len(nucs) > block {
		a.at = a.columns
	}
	for _, n := range nucs {
		if a.at >= a.columns {
			a.rows, a.at = append(a.rows, Row{Yard: a.yard, Lids: make([]*Nuc, a.columns)}), 0
		}
		a.rows[len(a.rows)-1].Lids[a.at] = n
		a.at++
	}
	a.at = (a.at + block - 1) / block * block
	if len(nucs) > block {
		a.at = a.columns
	}
}

// Grid is the grid of lids now: its rows, and where it is scrolled.
type Grid struct {
	Rows   []Row
	Row    float64    // height of a row of lids, dp
	Lid    float64    // size of a lid
	Field  scene.Area // where the field of the filter lies; empty without a filter
	Head   float64    // height of what lies above the lids
	Legend float64    // and of what lies below them
	Offset float64    // how far it is scrolled: a row begins at the top
	Height float64    // of the lids' part of the pane
	All    float64    // height of all rows
}

// Measures of the grid, dp: names stand under the lids.
const (
	gridLidLeast  = 38.0
	gridLidMost   = 48.0
	gridLidGap    = 17.0 // from lid to lid in a row, at least
	gridNameLeast = 24.0 // what a row is higher than its lids: a name, and the frame of the lid below
	gridNameMost  = 26.0
	gridYard      = 34.0 // the head of a yard
	gridHead      = 36.0
	gridHeadTurns = 8.0 // the head is that of the parts that take turns
	gridField     = 34.0
	gridLegend    = 70.0
	gridLegendLow = 34.0  // the legend in one line
	gridLow       = 420.0 // a pane lower than this has it so,
	gridLeast     = 150.0 // and one lower than this has none

	// The field of the filter stands between title and forms if so much is left
	// of the pane, else below them.
	gridFieldLeast = 150.0
	gridFieldHigh  = 28.0
	gridTitle      = 66.0
	gridForms      = 136.0
)

// Grid is the grid of lids in the layout l.
func (s State) Grid(l Layout) Grid {
	r, yard := s.Reading(), s.Filled()
	g := Grid{Rows: r.arranged(r.In(yard), l.Columns, yard.IsZero()), Head: gridHead, Legend: gridLegend}
	switch {
	case l.Main.H < gridLeast:
		g.Legend = 0
	case l.Main.H < gridLow:
		g.Legend = gridLegendLow
	}
	if !l.Turns.Empty() {
		g.Head = gridHeadTurns
	}
	if s.Typing || s.Filter != "" {
		g.field(l)
	}
	g.Height = max(0, l.Main.H-g.Head-g.Legend)
	g.sizeLids(l.Pitch)
	for i := range g.Rows {
		g.Rows[i].Y, g.Rows[i].H = g.All, g.Row
		if g.Rows[i].Lids == nil {
			g.Rows[i].H = gridYard
		}
		g.All += g.Rows[i].H
	}
	g.Offset = g.rowFrom(min(s.Scroll[GridPlace], g.most()))
	return g
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

// LidWall is the wall of lids now: rows of small lids, yard by yard.
type LidWall struct {
	Yards  []WallYard
	PerRow int
	Offset float64
	Height float64 // of the pane
	All    float64 // height of all rows
}

// WallYard is one yard of the wall.
type WallYard struct {
	Yard book.YardID
	Nucs []*Nuc
	Y, H float64 // where it begins below the top of the wall, and how high it is
}

// Measures of the wall, dp.
const (
	WallPitch   = 19.5
	WallGroup   = 7.0   // gap after eight lids
	WallNames   = 150.0 // where the lids begin
	WallHead    = 46.0
	wallGap     = 18.0
	wallLeast   = 44.0
	wallCount   = 110.0
	wallSlender = 620.0
)

// WallCounts is what a wall of some width keeps free for the counts at the
// right; in a slender one they stand under the names.
func WallCounts(width float64) float64 {
	if width < wallSlender {
		return 0
	}
	return wallCount
}

// Wall is the wall of lids in the layout l.
func (s State) Wall(l Layout) LidWall {
	room := l.Main.W - WallNames - WallCounts(l.Main.W)
	groups := max(1, int((room+WallGroup)/(8*WallPitch+WallGroup)))
	w := LidWall{PerRow: 8 * groups, Height: max(0, l.Main.H-WallHead)}
	all := s.Reading().In(s.Filled())
	for i := 0; i < len(all); {
		j := i
		for j < len(all) && all[j].Yard == all[i].Yard {
			j++
		}
		h := max(math.Ceil(float64(j-i)/float64(w.PerRow))*WallPitch, wallLeast) + wallGap
		w.Yards = append(w.Yards, WallYard{all[i].Yard, all[i:j], w.All, h})
		w.All += h
		i = j
	}
	w.Offset = min(s.Scroll[WallPlace], max(0, w.All-w.Height))
	return w
}

// Heights of the table's rows and head, dp.
const (
	TableRow  = 30.0
	TableHead = 68.0
	TableFoot = 34.0
)

// TableRows is how many rows of the table there is room for.
func (l Layout) TableRows() int { return max(0, int((l.Main.H-TableHead-TableFoot)/TableRow)) }

// most is how far a place can be scrolled.
func (s State) most(p Place, l Layout) float64 {
	switch p {
	case GridPlace:
		return s.Grid(l).most()
	case WallPlace:
		w := s.Wall(l)
		return max(0, w.All-w.Height)
	case TablePlace:
		return TableRow * float64(max(0, len(s.Shown())-l.TableRows()))
	case LanePlace:
		return LaneHeight * float64(max(0, len(s.Present().Batches())-l.laneRows()))
	default:
		return max(0, s.RouteHeight()-l.Main.H)
	}
}
