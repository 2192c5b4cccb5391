package state

import (
	"fmt"
	"math"

	"lidmark/domain/practice"
)

// LayoutFigure is one figure by which layouts are compared: in words, and where it
// lies between the best and the worst that its line shows.
type LayoutFigure struct {
	Word      string
	Now, Try  string
	At        [2]float64 // of today's layout and the try-out, 0 the best end, 1 the worst
	Ends      string
	Kept      []string  // of the try-outs that were kept
	KeptAt    []float64 // where they lie
	Reckoning bool      // it waits until a stand is let go
}

// figured is a row of the figures: what it takes of a layout and how that is said.
type figured struct {
	word  string
	of    func(*LayoutSheet, practice.Numbers) float64 // the figure in the word
	take  func(*LayoutSide) float64
	say   string
	times float64 // what is said is so many times as much; 0: it is not
	whole bool    // it is reckoned only once nothing is dragged
	least float64
	share bool // the more the better, and 1 is all
}

var figuredRows = []figured{
	{word: "Bees that drift to another nuc", take: func(a *LayoutSide) float64 { return a.Cost.Drift }, say: "%.1f %%", times: 100, least: 0.05},
	{word: "Virgins lost on return, of %.0f", of: flying, take: func(a *LayoutSide) float64 { return a.Cost.Lost }, say: "%.1f", least: 1},
	{word: "Entrances alike within %g m", of: byNumber(practice.AlikeApart), take: func(a *LayoutSide) float64 { return float64(a.Cost.Alike) }, say: "%.0f", least: 10},
	{word: "Sun on the entrance by %02.0f:00", of: byNumber(practice.SunOnFrontBy), take: sunShare, say: "%.0f %%", times: 100, whole: true, share: true},
	{word: "Walk past all stands and back", take: func(a *LayoutSide) float64 { return a.Round }, say: "%.0f m", whole: true, least: 50},
	{word: "Robbers drawn by strong colonies", take: func(a *LayoutSide) float64 { return a.Cost.Pull }, say: "%.2f", least: 0.1},
}

func flying(t *LayoutSheet, _ practice.Numbers) float64 { return t.Try.Cost.Virgins }

func byNumber(k practice.Key) func(*LayoutSheet, practice.Numbers) float64 {
	return func(_ *LayoutSheet, n practice.Numbers) float64 { return n.Get(k) }
}

func sunShare(a *LayoutSide) float64 { return float64(a.Sunny) / float64(max(1, a.Cost.Nucs)) }

// name is what the row says of a sheet.
func (f figured) name(t *LayoutSheet, n practice.Numbers) string {
	if f.of == nil {
		return f.word
	}
	return fmt.Sprintf(f.word, f.of(t, n))
}

func (f figured) says(v float64) string {
	if f.times > 0 {
		v *= f.times
	}
	return fmt.Sprintf(f.say, v)
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
		f := LayoutFigure{Word: row.name(t, n), Now: row.says(row.take(&t.Now)), Try: row.says(row.take(&t.Try)), Reckoning: row.whole && !t.Whole}
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
		f.At, f.Ends = [2]float64{at(&t.Now), at(&t.Try)}, "0–"+row.says(most)
		if row.share {
			f.Ends = "100–0 %"
		}
		for i := range t.Kept {
			f.Kept, f.KeptAt = append(f.Kept, row.says(row.take(&t.Kept[i].LayoutSide))), append(f.KeptAt, at(&t.Kept[i].LayoutSide))
		}
		if f.Reckoning {
			f.Try = "…"
		}
		all = append(all, f)
	}
	return all
}

// roundUp is the next figure of one or two digits that ends in 0 or 5.
func roundUp(v float64) float64 {
	step := math.Pow(10, math.Floor(math.Log10(v))) / 2
	return math.Ceil(v/step-1e-9) * step
}
