package state

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"lidmark/domain/practice"
)

// LayoutFigure is one figure by which layouts are compared: in words, and where it
// lies between the best and the worst that its line shows.
type LayoutFigure struct {
	Word      string
	Short     string // the word where there is little room
	Now, Try  string
	At        [2]float64 // of today's layout and the try-out, 0 the best end, 1 the worst
	Ends      string
	Kept      []string  // of the try-outs that were kept
	KeptAt    []float64 // where they lie
	Says      string    // where it comes from
	NoNow     bool      // no nuc stands today that it could be of
	Reckoning bool      // it waits until a stand is let go
}

// figured is a row of the figures: what it takes of a layout and how that is said.
type figured struct {
	word  string
	short string
	from  string
	of    func(*LayoutSheet, practice.Numbers) float64 // the figure in the word
	take  func(*LayoutSide) float64
	say   string
	times float64 // what is said is so many times as much; 0: it is not
	whole bool    // it is reckoned only once nothing is dragged
	least float64
	share bool // the more the better, and 1 is all
}

var figuredRows = []figured{
	{word: "Bees that drift to another nuc", short: "Bees that drift", from: "by distance, facing, marks and bees of the doors near; held against published drift of 5 to 22 %", take: func(a *LayoutSide) float64 { return a.Cost.Drift }, say: "%.1f %%", times: 100, least: 0.05},
	{word: "Virgins lost on return, of %.0f", short: "Virgins lost, of %.0f", from: "who end at a wrong door where a queen is; published: 4 of 100 astray in pairs 2 to 5 m apart", of: flying, take: func(a *LayoutSide) float64 { return a.Cost.Lost }, say: "%.1f", least: 1},
	{word: "Entrances alike within %g m", short: "Alike within %g m", from: "entrances with a look-alike near: the same mark, less than a right angle apart", of: byNumber(practice.AlikeApart), take: func(a *LayoutSide) float64 { return float64(a.Cost.Alike) }, say: "%.0f", least: 10},
	{word: "Sun on the entrance by %02.0f:00", short: "In the sun by %02.0f:00", from: "by the sun of the day and what is drawn on the ground", of: byNumber(practice.SunOnFrontBy), take: sunShare, say: "%.0f %%", times: 100, whole: true, share: true},
	{word: "Walk past all stands and back", short: "Walk past all", from: "a short round from where the vehicle stands", take: func(a *LayoutSide) float64 { return a.Round }, say: "%.0f m", whole: true, least: 50},
	{word: "Pull of strong colonies", short: "Pull of colonies", from: "what the full-size colonies near add to the exposure of a nuc to robbers, their mean; 0 is none", take: func(a *LayoutSide) float64 { return a.Cost.Pull }, say: "%.2f", least: 0.1},
}

func flying(t *LayoutSheet, _ practice.Numbers) float64 { return t.Try.Cost.Virgins }

func byNumber(k practice.Key) func(*LayoutSheet, practice.Numbers) float64 {
	return func(_ *LayoutSheet, n practice.Numbers) float64 { return n.Get(k) }
}

func sunShare(a *LayoutSide) float64 { return float64(a.Sunny) / float64(max(1, a.Cost.Nucs)) }

// name is what the row says of a sheet, in its word or its short one.
func (f figured) name(word string, t *LayoutSheet, n practice.Numbers) string {
	if f.of == nil {
		return word
	}
	return fmt.Sprintf(word, f.of(t, n))
}

func (f figured) says(v float64) string {
	if f.times > 0 {
		v *= f.times
	}
	return thousandsApart(fmt.Sprintf(f.say, v))
}

// thousandsApart is a figure with a space before its thousands.
func thousandsApart(words string) string {
	whole := strings.IndexFunc(words, func(r rune) bool { return r < '0' || r > '9' })
	if whole < 0 {
		whole = len(words)
	}
	if whole > 3 {
		return words[:whole-3] + " " + words[whole-3:]
	}
	return words
}

// end is the worse end of the row's line.
func (f figured) end(v float64) string {
	_, unit, spaced := strings.Cut(f.say, " ")
	if f.times > 0 {
		v *= f.times
	}
	words := thousandsApart(strconv.FormatFloat(math.Round(1000*v)/1000, 'f', -1, 64))
	if spaced {
		words += " " + strings.ReplaceAll(unit, "%%", "%")
	}
	return words
}

// LayoutFigures are the figures of the yard as it stands, of the try-out and of those
// that were kept.
func (s State) LayoutFigures() (all []LayoutFigure) {
	t := s.LayoutSheet()
	if t == nil {
		return nil
	}
	n := s.Present().Numbers()
	for _, row := range figuredRows {
		f := LayoutFigure{Says: row.from, Word: row.name(row.word, t, n), Short: row.name(row.short, t, n), Now: row.says(row.take(&t.Now)), Try: row.says(row.take(&t.Try)), Reckoning: row.whole && !t.Whole}
		most := max(row.least, row.take(&t.Now), row.take(&t.Try))
		for i := range t.Kept {
			most = max(most, row.take(&t.Kept[i].LayoutSide))
		}
		most = roundUp(most)
		at := func(a *LayoutSide) float64 {
			if row.share {
				return 1 - row.take(a)
			}
			return row.take(a) / most
		}
		f.At, f.Ends = [2]float64{at(&t.Now), at(&t.Try)}, "0–"+row.end(most)
		if row.share {
			f.Ends = "100–0 %"
		}
		for i := range t.Kept {
			f.Kept, f.KeptAt = append(f.Kept, row.says(row.take(&t.Kept[i].LayoutSide))), append(f.KeptAt, at(&t.Kept[i].LayoutSide))
		}
		if f.Reckoning {
			f.Try = "…"
		}
		if f.NoNow = t.Now.Layout.Nucs() == 0; f.NoNow {
			f.Now = "–"
		}
		all = append(all, f)
	}
	return all
}

// roundUp is the next round figure.
func roundUp(v float64) float64 {
	step := math.Pow(10, math.Floor(math.Log10(v)+1e-9))
	for _, k := range []float64{1, 1.5, 2, 3, 4, 5, 6, 8} {
		if v <= k*step*(1+1e-9) {
			return k * step
		}
	}
	return 10 * step
}
