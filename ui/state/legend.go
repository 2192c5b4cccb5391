package state

import (
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
)

// LegendEntry is one sign with what it means; of conditions and of what needs the
// keeper also how many there are.
type LegendEntry struct {
	Sign      LegendSign
	Condition book.Condition
	Stroke    book.Stroke
	N         int
	Words     string
}

// Counts tells whether the entry says how many there are.
func (e LegendEntry) Counts() bool { return e.Sign == ConditionSign || e.Sign == NeedSign }

// Width is about how wide an entry is, dp.
func (e LegendEntry) Width() float64 {
	const sign, air = 26.0, 5.0
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
	legendPad  = 12.0 // above and below together
	legendMost = 0.4  // of the height of a pane, but one row in any

	legendColumns = 4
	legendSlack   = 24.0  // by which letters are narrower than reckoned
	legendTall    = 420.0 // a pane lower than this has no columns of all signs
)

// FullLegend are all conditions, also those that no nuc is in, and what every book has
// besides: each keeps its place in the columns on every day. More are the signs below
// them.
func (s State) FullLegend(yard book.YardID) (all, more []LegendEntry) {
	t := s.Reading().tally(yard)
	for _, c := range book.Conditions() {
		all = append(all, LegendEntry{Condition: c, N: t.holds[c], Words: c.String()})
	}
	all = append(all, LegendEntry{Sign: UnseenSign, Words: s.UnseenWord()}, LegendEntry{Sign: NeedSign, N: t.need, Words: s.NeedVerb(t.need)})
	return all, s.moreSigns(t)
}

// Legend are the signs on the lids of a yard, of all for the zero yard, and what they
// mean, in rows one after another: what needs the keeper first, all conditions, also
// those that no nuc is in, so that each keeps its place on every day, then the others.
func (s State) Legend(yard book.YardID) []LegendEntry {
	all, more := s.FullLegend(yard)
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

// NeedVerb is the word for so many that need the keeper on the day looked at.
func (s State) NeedVerb(n int) string {
	switch {
	case s.Ahead():
		return "will need you"
	case s.Away():
		return "needed you"
	case n == 1:
		return "needs you"
	default:
		return "need you"
	}
}

// gridLegend is how high the legend below the lids is in a pane.
func (s State) gridLegend(pane scene.Area) float64 {
	all, more := s.FullLegend(s.Filled())
	var widths [legendColumns]float64
	for i, e := range all {
		widths[i%legendColumns] = max(widths[i%legendColumns], e.Width())
	}
	wide := 0.0
	for _, w := range widths {
		wide += w
	}
	if pane.H < legendTall || wide > pane.W-2*Edge+legendSlack {
		return s.legendHeight(pane)
	}
	return legendPad + LegendRow*float64((len(all)+legendColumns-1)/legendColumns+boolInt(len(more) > 0))
}

// legendHeight is how high the legend of what is shown is in a pane, in rows one after
// another.
func (s State) legendHeight(pane scene.Area) float64 {
	rows := len(LegendRows(s.Legend(s.Filled()), pane.W-2*Edge, LegendEntry.Width))
	most := max(1, math.Floor(pane.H*legendMost/LegendRow))
	return legendPad + LegendRow*min(float64(rows), most)
}

// LegendRows parts entries of a width each into rows: each stands in the first row
// that has room for it.
func LegendRows(all []LegendEntry, room float64, width func(LegendEntry) float64) (rows [][]LegendEntry) {
	var ends []float64
	for _, e := range all {
		w := width(e)
		i := slices.IndexFunc(ends, func(end float64) bool { return end+w <= room })
		if i < 0 {
			i = len(rows)
			rows, ends = append(rows, nil), append(ends, 0)
		}
		rows[i] = append(rows[i], e)
		ends[i] += w + LegendGap
	}
	return rows
}
