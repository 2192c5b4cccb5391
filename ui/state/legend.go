package state

import (
	"cmp"
	"math"
	"slices"
	"strconv"

	"lidmark/domain/book"
	"lidmark/ui/scene"
)

// LegendSign is a kind of sign that stands on lids.
type LegendSign uint8

// The signs.
const (
	ConditionSign LegendSign = iota
	NeedSign
	UnseenSign
	CaughtSign
	StrokeSign
	RobbersSign
	FoldSign // opens the legend, or folds it on one line
)

// LegendEntry is one sign with what it means; of conditions and of what needs the
// keeper also how many there are.
type LegendEntry struct {
	Sign      LegendSign
	Condition book.Condition
	Stroke    book.Stroke
	N         int
	Words     string
	Most      int    // how many it may count on any day
	Longest   string // of what it says on any day; "" where that is always Words
	Hollow    bool   // of what nobody saw: small lids have no hatch
}

// Counts tells whether the entry says how many there are.
func (e LegendEntry) Counts() bool { return e.Sign == ConditionSign || e.Sign == NeedSign }

// Widest is the entry as it is on the day on which it is widest.
func (e LegendEntry) Widest() LegendEntry {
	e.N, e.Words = max(e.N, e.Most), cmp.Or(e.Longest, e.Words)
	return e
}

// Width is about how wide an entry is on the day on which it is widest, dp.
func (e LegendEntry) Width() float64 {
	const sign, air = 26.0, 5.0
	e = e.Widest()
	w := sign + Reckoner{}.Width(e.Words, legendSize, scene.Regular)
	if e.Counts() {
		w += air + Reckoner{}.Width(strconv.Itoa(e.N), legendSize, scene.SemiBold)
	}
	return w
}

// Measures of legends, dp.
const (
	LegendRow  = 20.0
	LegendGap  = 14.0 // between two entries of a row
	legendSize = 13.0
	legendPad  = 10.0 // above and below together
	legendMost = 0.4  // of the height of a pane, but one row in any

	legendOpen = 0.6   // of its height, where the keeper opened it in a low pane
	legendTall = 420.0 // a pane lower than this has it on one line

	legendColumns = 4 // at most; where these have no room one less
	legendApart   = 8.0
	legendSlack   = 24.0 // by which letters are narrower than reckoned
)

// FullLegend are all conditions, also those that no nuc is in, and what every book has
// besides: each keeps its place in the columns on every day. More are the signs below
// them.
func (s State) FullLegend(yard book.YardID) (all, more []LegendEntry) {
	t, most := s.Reading().tally(yard), len(s.Reading().In(yard))
	for _, c := range book.Conditions() {
		all = append(all, LegendEntry{Condition: c, N: t.holds[c], Words: c.String(), Most: most})
	}
	all = append(all, LegendEntry{Sign: UnseenSign, Words: s.UnseenWord()},
		LegendEntry{Sign: NeedSign, N: t.need, Words: s.NeedVerb(t.need), Most: most, Longest: willNeed})
	return all, s.moreSigns(t)
}

// Legend are the signs on the lids of a yard, of all for the zero yard, and what they
// mean, in rows one after another: what needs the keeper first, all conditions, also
// those that no nuc is in, so that each keeps its place on every day, then the others.
func (s State) Legend(yard book.YardID) []LegendEntry {
	return inRows(s.FullLegend(yard))
}

// inRows puts what needs the keeper first.
func inRows(all, more []LegendEntry) []LegendEntry {
	last := len(all) - 1
	return slices.Concat(all[last:], all[:last], more)
}

// moreSigns are the signs that lids have besides.
func (s State) moreSigns(t tally) (all []LegendEntry) {
	if t.caught > 0 {
		all = append(all, LegendEntry{Sign: CaughtSign, Words: "caught, brood left"})
	}
	for stroke, word := range []string{book.Settled: "settled", book.Watch: "watch", book.Act: "act"} {
		if st := book.Stroke(stroke); st != book.NoStroke && t.strokes[st] > 0 {
			all = append(all, LegendEntry{Sign: StrokeSign, Stroke: st, Words: word})
		}
	}
	if s.Room == Yard && s.Layer == ByRobbing {
		all = append(all, LegendEntry{Sign: RobbersSign, Words: "robbers: watch or act"})
	}
	return all
}

// UnseenWord says what a hatch is.
func (s State) UnseenWord() string {
	if s.Layer == BySureness {
		return "dense: less sure"
	}
	return "not seen yet"
}

// willNeed is the longest word for what needs the keeper.
const willNeed = "will need you"

// NeedVerb is the word for so many that need the keeper on the day looked at.
func (s State) NeedVerb(n int) string {
	switch {
	case s.Ahead():
		return willNeed
	case s.Away():
		return "needed you"
	case n == 1:
		return "needs you"
	default:
		return "need you"
	}
}

// OpenLegend is the legend of a low pane that the keeper opened.
func (s State) OpenLegend(yard book.YardID) []LegendEntry {
	return append(s.Legend(yard), onOneLine)
}

// onOneLine folds a legend.
var onOneLine = LegendEntry{Sign: FoldSign, Words: "on one line"}

// FoldedLegend is a legend on one line: what there is and what needs the keeper, in
// short words, then the way to all signs.
func (s State) FoldedLegend(yard book.YardID) (signs, last []LegendEntry) {
	short := map[book.Condition]string{book.Due: "due", book.GoodBrood: "brood"}
	all, _ := s.FullLegend(yard)
	for _, e := range all {
		switch {
		case e.Sign == NeedSign:
			last = append(last, e, LegendEntry{Sign: FoldSign, Words: "all signs"})
		case e.Sign == ConditionSign && e.Condition != book.Empty && e.N > 0:
			e.Words = cmp.Or(short[e.Condition], e.Words)
			signs = append(signs, e)
		}
	}
	return signs, last
}

// SignLegend is the legend below the lids: how high, and in how many columns; without
// any it is in rows one after another, folded on one line.
type SignLegend struct {
	Height  float64
	Columns int
	Folded  bool
	Low     bool // it takes much of its pane: it may fold
	Open    bool // in a low pane, by the keeper
	Wall    bool // it lies below the wall: lids may be too small for a hatch
	Hollow  bool // and are
}

// SignsOf are the entries of a legend in rows.
func (s State) SignsOf(l SignLegend) []LegendEntry {
	all := s.Legend(s.Filled())
	if l.Open {
		all = s.OpenLegend(s.Filled())
	}
	if l.Wall {
		return hollowed(all, l.Hollow)
	}
	return all
}

// hollowed are signs that leave room for what small lids have for a hatch, or have it.
func hollowed(all []LegendEntry, small bool) []LegendEntry {
	const hollow = "hollow: not seen yet"
	for i := range all {
		if e := &all[i]; e.Sign == UnseenSign {
			e.Longest, e.Hollow = hollow, small
			if small {
				e.Words = hollow
			}
		}
	}
	return all
}

// columnLegend is the legend of what is shown in columns below the lids of a pane, where
// these have room.
func (s State) columnLegend(pane scene.Area) SignLegend {
	all, more := s.FullLegend(s.Filled())
	n := columnsIn(all, pane.W-2*Edge+legendSlack)
	if n == 0 || s.lowLegend(pane) {
		return s.rowLegend(pane)
	}
	return SignLegend{Columns: n, Height: legendHeight((len(all)+n-1)/n + boolInt(len(more) > 0))}
}

// rowLegend is the legend of what is shown in rows one after another.
func (s State) rowLegend(pane scene.Area) SignLegend {
	return s.rowsLegend(pane, s.Legend(s.Filled()))
}

// rowsLegend is a legend of signs in rows.
func (s State) rowsLegend(pane scene.Area, signs []LegendEntry) SignLegend {
	l, share := SignLegend{Low: lowFor(pane, signs)}, legendMost
	if l.Open = l.Low && s.Signs; l.Open {
		share, signs = legendOpen, append(signs, onOneLine)
	}
	rows := len(LegendRows(signs, pane.W-2*Edge, LegendEntry.Width))
	l.Height = legendHeight(min(rows, max(1, int(pane.H*share/LegendRow))))
	return l
}

// lowLegend tells whether a pane is low for its legend: then it may fold.
func (s State) lowLegend(pane scene.Area) bool {
	return lowFor(pane, s.Legend(s.Filled()))
}

// lowFor tells whether a pane is low for a legend of signs.
func lowFor(pane scene.Area, signs []LegendEntry) bool {
	rows := len(LegendRows(signs, pane.W-2*Edge, LegendEntry.Width))
	return pane.H < legendTall || float64(rows)*LegendRow > pane.H*legendMost
}

// folds tells whether the legend is on one line below lids that have no room else.
func (s State) folds(pane scene.Area) bool { return s.lowLegend(pane) && !s.Signs }

// folded is the legend on one line.
func folded() SignLegend { return SignLegend{Folded: true, Height: legendHeight(1)} }

func legendHeight(rows int) float64 { return legendPad + LegendRow*float64(rows) }

// columnsIn is in how many columns entries fit into a width; 0 where these are too few.
func columnsIn(all []LegendEntry, room float64) int {
	for n := legendColumns; n >= legendColumns-1; n-- {
		wide := legendApart * float64(n-1)
		for _, w := range LegendWidths(all, n, LegendEntry.Width) {
			wide += w
		}
		if wide <= room {
			return n
		}
	}
	return 0
}

// LegendWidths are how wide the columns are that entries of a width each stand in.
func LegendWidths(all []LegendEntry, columns int, width func(LegendEntry) float64) []float64 {
	widths := make([]float64, columns)
	for i, e := range all {
		widths[i%columns] = max(widths[i%columns], width(e))
	}
	return widths
}

// LegendRows parts entries of a width each into rows, one after another; the keeper's
// strokes stand together.
func LegendRows(all []LegendEntry, room float64, width func(LegendEntry) float64) (rows [][]LegendEntry) {
	end := math.Inf(1)
	for i, e := range all {
		wide := width(e)
		if e.Sign == StrokeSign && all[i-1].Sign != StrokeSign {
			for _, next := range all[i+1:] {
				wide += float64(boolInt(next.Sign == StrokeSign)) * (LegendGap + width(next))
			}
		}
		if end+wide > room {
			rows, end = append(rows, nil), 0
		}
		last := len(rows) - 1
		rows[last] = append(rows[last], e)
		end += width(e) + LegendGap
	}
	return rows
}
