package state

import (
	"math"
	"strings"

	"lidmark/domain/book"
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

// rowsKey is which nucs are put into rows, and how many stand in one.
type rowsKey struct {
	yard    book.YardID // zero: all of them, each yard under a head
	columns int
}

// readRows puts nucs into rows in stand order. A stand of up to four takes a
// block, a longer one, or a line of stands with one letter, whole rows.
func (r *Reading) readRows(k rowsKey) []Row {
	nucs, heads := r.In(k.yard), k.yard.IsZero()
	a := arranger{columns: max(k.columns, block)}
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
	case BookPlace:
		return max(0, s.bookHeight()-l.Main.H)
	case NumbersPlace:
		return s.numbersMost(l)
	case FillPlace:
		all, shown := s.FillHeight(l)
		return max(0, all-shown)
	case GridPlace:
		return s.Grid(l).most()
	case WallPlace:
		w := s.Wall(l)
		return max(0, w.All-w.Height)
	case TablePlace:
		return TableRow * float64(max(0, len(s.Shown())-l.TableRows()))
	case LanePlace:
		return LaneHeight * float64(max(0, len(s.Present().Batches())-l.laneRows()))
	case RecordPlace:
		return s.WalkPane(l).most()
	default:
		return max(0, s.RouteHeight()-l.Main.H)
	}
}
