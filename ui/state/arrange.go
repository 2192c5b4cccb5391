package state

import (
	"math"
	"slices"
	"strings"

	"lidmark/ui/scene"
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

// LidWall is the wall of lids now: rows of small lids, section by section.
type LidWall struct {
	Parts  []WallPart
	PerRow int
	Lid    float64 // size of a lid: as large as all have room for, from 16 to 36
	Offset float64
	Height float64    // of the lids' part of the pane
	Legend SignLegend // what lies below them
	All    float64    // height of all rows
}

// WallPart is one section of the wall.
type WallPart struct {
	Section
	Y, H float64 // where it begins below the top of the wall, and how high it is
}

// Measures of the wall, dp.
const (
	WallGap     = 3.5                   // from lid to lid
	WallGroup   = 7.0                   // gap after eight lids
	WallNames   = 150.0                 // where the lids begin
	WallWide    = WallNames - Edge - 32 // the words before them
	WallRow     = 18.0                  // a line of these
	WallHead    = 46.0
	wallGap     = 18.0
	wallFolded  = 36.0
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

// Pitch is how far apart the middles of lids lie.
func (w LidWall) Pitch() float64 { return w.Lid + WallGap }

// Wall is the wall of lids in the layout l.
func (s State) Wall(l Layout) LidWall {
	w := s.wall(l, s.rowLegend(l.Main))
	if w.All > w.Height && s.folds(l.Main) {
		w = s.wall(l, folded())
	}
	w.Offset = min(s.Scroll[WallPlace], max(0, w.All-w.Height))
	return w
}

// wall is the wall above a legend.
func (s State) wall(l Layout, legend SignLegend) (w LidWall) {
	const least, most, step = 16.0, 36.0, 2.0
	sections := s.Sections()
	words := make([]float64, len(sections))
	for i := range sections {
		words[i] = wallWords(&sections[i], l.Main.W)
	}
	for lid := most; lid >= least; lid -= step {
		w = LidWall{Lid: lid, Legend: legend, Height: max(0, l.Main.H-WallHead-legend.Height)}
		w.lay(sections, words, l.Main.W)
		if w.All <= w.Height {
			break
		}
	}
	return w
}

// lay lays the sections one below the other in a pane so wide, each at least as high
// as its words.
func (w *LidWall) lay(sections []Section, words []float64, width float64) {
	room := width - WallNames - WallCounts(width)
	const least, step = 8, 4
	w.PerRow = least
	for wide := func(n int) float64 { return float64(n)*w.Pitch() + float64((n-1)/8)*WallGroup }; wide(w.PerRow+step) <= room; {
		w.PerRow += step
	}
	for i, sec := range sections {
		h := max(math.Ceil(float64(len(sec.Nucs))/float64(w.PerRow))*w.Pitch(), wallLeast, words[i]) + wallGap
		if sec.Folded {
			h = wallFolded
		}
		w.Parts = append(w.Parts, WallPart{sec, w.All, h})
		w.All += h
	}
}

// wallWords is how high the words before the lids of a section are: its name and its
// count in up to two lines each, and in a slender wall how many need the keeper.
func wallWords(sec *Section, width float64) float64 {
	lines := wallLines(sec.Word, 14)
	if sec.Note == "" {
		lines++
	} else {
		lines += wallLines(sec.Note+", "+counted(len(sec.Nucs), "nuc"), 13)
	}
	if sec.Need > 0 && WallCounts(width) == 0 {
		lines++
	}
	return WallRow * float64(lines)
}

// wallLines is how many lines before the lids a text takes, two at most.
func wallLines(text string, size float64) int {
	if (Reckoner{}).Width(text, size, scene.SemiBold) <= WallWide {
		return 1
	}
	return min(2, linesOf(text, size, WallWide))
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
