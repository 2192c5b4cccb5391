package state

import (
	"cmp"
	"math"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// Measures of the list of Review, dp.
const (
	ReviewRowHeight = 58.0 // of three lines: when a nuc was seen, and what was seen over two
	ReviewHead      = 56.0 // above the key to the strips
	ReviewLine      = 17.0 // a line of a row
	ReviewStrip     = 43.0 // in a narrow pane: from the last line down to the end of the row, with the strip and its figures
	ReviewUnder     = 6.0  // of these below the strip
	ReviewFirst     = 19.0 // and from the beginning of the row to its first line
	ReviewAct       = 26.0 // of a sign, before what is best done, where a list is not narrow
	ReviewFoot      = 52.0 // with the buttons

	reviewAir     = 7.0 // above and below the lines of a row
	reviewLines   = 2   // of a narrow row at the least, and one for what was seen
	reviewNarrow  = 640.0
	reviewLow     = 260.0 // a pane lower has neither foot nor key
	reviewButtons = 300.0 // of the foot's width
)

// ReviewPane says where the list of Review lies in its pane.
type ReviewPane struct {
	Narrow    bool
	Row, Foot float64 // heights
	Body      scene.Area
	Offset    float64
	Columns   ReviewColumns
	Legend    [][]ChancePart // the key to the strips
	Signs     [][]ReviewSign // the key to the signs
	Above     bool           // it stands above the buttons: beside them is no room
}

// ReviewColumns say where the columns of the list lie; what has no room is 0.
type ReviewColumns struct {
	Lid, Name, Seen float64
	Strip           scene.Area // of a row: Y from the middle; in a narrow list it lies under the words
	Act, ActTo      float64
	Yield, YieldTo  float64 // the scale
	Loses, To       float64
}

// ReviewPane is the list in the layout l. Its rows are as high as what they say, and all
// alike; it shows whole ones: none is cut at an end.
func (s State) ReviewPane(l Layout) ReviewPane {
	p := ReviewPane{Narrow: l.Main.W < reviewNarrow, Body: l.Main}
	p.Columns = s.reviewColumns(l.Main, p.Narrow)
	sheet, _ := s.ReviewSheet()
	p.Row = p.rowHigh(sheet)
	head := HeadHeight
	if l.Main.H >= reviewLow && sheet != nil {
		head, p.Foot = p.keys(sheet)
	}
	p.Body.Y += head
	p.Body.H = max(0, l.Main.H-head-p.Foot)
	if rows := math.Floor(p.Body.H / p.Row); rows > 0 {
		p.Body.H = p.Row * rows
	}
	p.Offset = min(p.Row*math.Round(s.Scroll[ReviewPlace]/p.Row), s.reviewMost(p))
	return p
}

// rowHigh is how high a row is at the least: the longest words of what is best done, with
// what makes it worth more, have room in it; in a narrow list one line more.
func (p *ReviewPane) rowHigh(sheet *ReviewSheet) float64 {
	lines := 1
	if p.Narrow {
		lines = reviewLines
	}
	if sheet != nil {
		for _, said := range sheet.longest {
			lines = max(lines, len(p.Said(Reckoner{}, said, 0)))
		}
	}
	if p.Narrow {
		return ReviewFirst + ReviewLine*float64(lines) + ReviewStrip
	}
	return max(ReviewRowHeight, ReviewLine*float64(lines)+reviewAir)
}

// keys sets the keys of the list, and gives the heights of its head and its foot.
func (p *ReviewPane) keys(sheet *ReviewSheet) (head, foot float64) {
	inner := p.Body.W - 2*Edge
	key := inner
	if !p.Narrow {
		key = p.Columns.Yield - 16 - p.Columns.Strip.X
	}
	p.Legend = sheet.LegendRows(key)
	rows := len(p.Legend)
	if !p.Narrow { // the first row of two stands beside the order
		rows--
	}
	head = ReviewHead + PartRow*float64(max(1, rows))
	p.Signs, foot = sheet.SignRows(!p.Narrow, inner-reviewButtons), ReviewFoot
	if p.Above = len(p.Signs) > 1; p.Above {
		p.Signs = sheet.SignRows(!p.Narrow, inner)
		foot += SignRow * float64(len(p.Signs))
	}
	return head, foot
}

func (s State) reviewColumns(a scene.Area, narrow bool) (c ReviewColumns) {
	const roomy, loses = 1080.0, 76.0
	strip, wide, act := 0.225, 0.18, 0.815
	c.Lid, c.Name, c.To = a.X+42, a.X+70, a.Right()-Edge
	left := c.Name + s.reviewNames(narrow) + 10
	if narrow {
		c.Strip = scene.Area{X: left, W: c.To - left, H: 14}
		c.Act, c.ActTo = left+24, c.To-46
		return c
	}
	end := c.To
	if a.W >= roomy {
		c.Loses = c.To
		end -= loses
		strip, wide, act = 0.215, 0.255, 0.81
	}
	free := end - left
	c.Seen = left
	c.Strip = scene.Area{X: left + free*strip, Y: -6, W: free * wide, H: 22}
	c.Act = c.Strip.Right() + 26
	c.ActTo = left + free*act - 18
	c.Yield = c.ActTo + 26 // a figure has room before the scale's 0
	c.YieldTo = end - 34
	return c
}

// ReviewName is the size of names in the list.
const ReviewName = 16.0

// reviewNames is how wide the widest name of the list is, within bounds; in a narrow list
// the names of like nucs too, which else go on behind it.
func (s State) reviewNames(narrow bool) (w float64) {
	const least = 32.0
	sheet, _ := s.ReviewSheet()
	if sheet == nil {
		return least
	}
	w = max(least, sheet.wide)
	if narrow {
		w = max(w, sheet.folds)
	}
	return min(w, reviewNamesMost)
}

const reviewNamesMost = 96.0

// Together are the names of like nucs on one line, as far as they fit, else how many they
// are.
func (r *ReviewSheet) Together(row ReviewRow, fits func(string) bool) string {
	if said := r.Alike(row, func(string) bool { return true }); fits(said) {
		return said
	}
	return counted(len(row.Nucs), "nuc")
}

// Alike are the names of like nucs as far as they fit, and how many there are besides.
func (r *ReviewSheet) Alike(row ReviewRow, fits func(string) bool) string {
	names := make([]string, len(row.Nucs))
	for i, k := range row.Nucs {
		names[i] = r.Nucs[k].NucNamed.Name
	}
	return book.Names(book.Runs(names), fits)
}

func (s State) reviewMost(p ReviewPane) float64 {
	return max(0, p.Row*float64(len(s.ReviewRows()))-p.Body.H)
}

// reviewAt is the row of the list on which the keys stand: that of the nuc chosen
// last, or the line it is folded in; below 0 for none.
func (s State) reviewAt(rows []ReviewRow) int {
	sheet, _ := s.ReviewSheet()
	last, fold := cmp.Or(s.Ring, s.Selection.Last()), -1
	for i, row := range rows {
		switch {
		case !slices.Contains(sheet.subjects(row), last):
		case row.Fold == "":
			if s.reviewOnFold(row, rows, fold) {
				return fold
			}
			return i
		default:
			fold = i
		}
	}
	return fold
}

// reviewOnFold tells whether the keys stand on an open line rather than on the
// first nuc below it: all of its nucs are chosen.
func (s State) reviewOnFold(row ReviewRow, rows []ReviewRow, fold int) bool {
	if !row.Within || fold < 0 || len(rows[fold].Nucs) != s.Selection.Len() {
		return false
	}
	sheet, _ := s.ReviewSheet()
	return !slices.ContainsFunc(sheet.subjects(rows[fold]), func(sub book.Subject) bool { return !s.Selection.Has(sub) })
}

// ReviewTakes tells whether all nucs of a row are chosen.
func (s State) ReviewTakes(row ReviewRow) bool {
	sheet, _ := s.ReviewSheet()
	for _, sub := range sheet.subjects(row) {
		if !s.Selection.Has(sub) {
			return false
		}
	}
	return true
}

// reviewStep goes so many rows on or back; extend keeps what was chosen.
func (s State) reviewStep(by int, extend bool) State {
	rows := s.ReviewRows()
	if len(rows) == 0 {
		return s
	}
	at := s.reviewAt(rows)
	switch {
	case at >= 0:
		at = min(max(at+by, 0), len(rows)-1)
	case by < 0:
		at = len(rows) - 1
	default:
		at = 0
	}
	sheet, _ := s.ReviewSheet()
	all := sheet.subjects(rows[at])
	if extend {
		s.Selection = s.Selection.With(all...)
	} else {
		s.Selection = Select(all...)
	}
	s.Focus, s.Ring = scene.Ref{}, book.Subject{}
	s.reviewed.last = s.Selection.Last()
	return s.reviewShown(at)
}

// reviewRevealed brings the row of what is chosen into sight.
func (s State) reviewRevealed() State {
	rows := s.ReviewRows()
	if at := s.reviewAt(rows); at >= 0 {
		return s.reviewShown(at)
	}
	return s
}

func (s State) reviewShown(at int) State {
	p := s.ReviewPane(s.Layout())
	return s.within(ReviewPlace, p.Offset, p.Row*float64(at), p.Row, p.Body.H)
}

// reviewFolded opens or closes the line of like nucs of a key.
func (s State) reviewFolded(key string) State {
	if s.ReviewOpen(key) {
		s.Reviewing.Open = strings.ReplaceAll(s.Reviewing.Open, key, "")
	} else {
		s.Reviewing.Open += key
	}
	return s
}

// ReviewOpen tells whether the line of like nucs of a key is open.
func (s State) ReviewOpen(key string) bool { return strings.Contains(s.Reviewing.Open, key) }
