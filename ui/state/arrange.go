package state

import (
	"slices"
	"strings"
)

// Row is a row of lids as they stand: a nil is a gap. A row without lids is
// the head of a section.
type Row struct {
	Head *Section
	Lids []*Nuc
	Y, H float64 // where it begins below the top of the grid, and how high it is, dp
}

// block is how many lids stand together before a gap.
const block = 4

// rowsKey is which nucs are put into rows, and how many stand in one.
type rowsKey struct {
	sectionsKey
	folded  string
	columns int
}

// readRows puts nucs into rows, in stand order by stands: one of up to four
// takes a block, a longer one, or a line of stands with one letter, whole rows.
// A single yard in stand order has no head.
func (r *Reading) readRows(k rowsKey) []Row {
	a := arranger{columns: max(k.columns, block)}
	folded := strings.Split(k.folded, "\n")
	for _, sec := range r.sections(k.sectionsKey) {
		sec.Folded = slices.Contains(folded, sec.Key)
		if k.by != StandHeads || k.yard.IsZero() {
			a.rows = append(a.rows, Row{Head: &sec})
		} else {
			sec.Folded = false
		}
		a.at = a.columns
		switch {
		case sec.Folded:
		case k.by <= YardHeads:
			r.byStand(&a, sec.Nucs)
		default:
			a.stand(sec.Nucs)
		}
	}
	return a.rows
}

// byStand puts the nucs of a yard into rows, stand by stand.
func (r *Reading) byStand(a *arranger, nucs []*Nuc) {
	for i := 0; i < len(nucs); {
		j, letter := i, r.letter(nucs[i])
		for j < len(nucs) && r.letter(nucs[j]) == letter {
			j++
		}
		a.stand(nucs[i:j])
		i = j
	}
}

// letter is the letter of a nuc's stand without its number.
func (r *Reading) letter(n *Nuc) string {
	if n.Stand.IsZero() {
		return ""
	}
	return strings.TrimRight(r.View.Stand(n.Stand).Letter, "0123456789")
}

// arranger fills rows; at is how many places of the last row are taken.
type arranger struct {
	columns int
	rows    []Row
	at      int
}

func (a *arranger) stand(nucs []*Nuc) {
	if len(nucs) > block {
		a.at = a.columns
	}
	for _, n := range nucs {
		if a.at >= a.columns {
			a.rows, a.at = append(a.rows, Row{Lids: make([]*Nuc, a.columns)}), 0
		}
		a.rows[len(a.rows)-1].Lids[a.at] = n
		a.at++
	}
	a.at = (a.at + block - 1) / block * block
	if len(nucs) > block {
		a.at = a.columns
	}
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
		return s.bookMost(l)
	case NumbersPlace:
		return s.numbersMost(l)
	case OrdersPlace:
		return s.OrderPane(l).most()
	case SeasonPlace:
		return s.SeasonPane(l).most()
	case PlanPlace:
		return s.PlanPane(l).most()
	case ReviewPlace:
		return s.reviewMost(s.ReviewPane(l))
	case FillPlace:
		all, shown := s.FillHeight(l)
		return max(0, all-shown)
	case GridPlace:
		return s.Grid(l).most()
	case WallPlace:
		w := s.Wall(l)
		return max(0, w.All-w.Height)
	case TablePlace:
		return TableRow * float64(max(0, len(s.Listing())-l.TableRows()))
	case LanePlace:
		return LaneHeight * float64(max(0, s.laneCountAll()-l.laneRows()))
	case RecordPlace:
		return s.WalkPane(l).most()
	default:
		return max(0, s.RouteHeight()-l.Main.H)
	}
}
