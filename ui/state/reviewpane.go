package state

import (
	"cmp"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// Measures of the list of Review, dp.
const (
	ReviewRowHeight = 54.0
	ReviewTall      = 80.0 // in a narrow pane, where a row has lines one above the other
	ReviewHead      = 66.0
	ReviewFoot      = 52.0

	reviewNarrow = 640.0
	reviewLow    = 260.0 // a pane lower has neither foot nor key
)

// ReviewPane says where the list of Review lies in its pane.
type ReviewPane struct {
	Narrow    bool
	Row, Foot float64 // heights
	Body      scene.Area
	Offset    float64
}

// ReviewPane is the list in the layout l.
func (s State) ReviewPane(l Layout) ReviewPane {
	p := ReviewPane{Narrow: l.Main.W < reviewNarrow, Row: ReviewRowHeight, Foot: ReviewFoot, Body: l.Main}
	head := ReviewHead
	if p.Narrow {
		p.Row, head = ReviewTall, HeadHeight+24
	}
	if l.Main.H < reviewLow {
		head, p.Foot = HeadHeight, 0
	}
	p.Body.Y += head
	p.Body.H = max(0, l.Main.H-head-p.Foot)
	p.Offset = min(s.Scroll[ReviewPlace], s.reviewMost(p))
	return p
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
