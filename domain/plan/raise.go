package plan

import (
	"cmp"
	"fmt"
	"slices"
)

// Change is something that could make a promise surer.
type Change uint8

// The changes, in the order in which equals are told.
const (
	MoreLarvae Change = iota + 1
	MoreNucs
	OneMoreGraft
	VirginsForCells
	BetterTake
	BetterMating
)

// How much each change changes. They are examples to compare by, conventions of the
// program.
const (
	larvaeMore = 12 // a bar
	nucsMore   = 8
	pointsMore = 0.05
)

var changes = [...]string{
	MoreLarvae:      fmt.Sprintf("%d more larvae", larvaeMore),
	MoreNucs:        fmt.Sprintf("%d more nucs", nucsMore),
	OneMoreGraft:    "one more graft of half the size",
	VirginsForCells: "virgins for cells",
	BetterTake:      fmt.Sprintf("take up by %.0f points", 100*pointsMore),
	BetterMating:    fmt.Sprintf("mating up by %.0f points", 100*pointsMore),
}

// String is the change in the keeper's words.
func (c Change) String() string { return changes[c] }

// Raise is a change, what the rates and grafts are with it, and what the chance then
// is.
type Raise struct {
	Change
	Rates  Rates
	Grafts []Graft
	Chance float64 // of so many queens as are wanted
	Gain   float64 // over the chance without it; may be negative
}

// Raises are what each change would do to the chance of so many queens, the best
// first. Late is the share of one more graft's queens who come too late. Larvae and
// nucs are added to the first graft.
func (r Rates) Raises(want int, late float64, grafts ...Graft) []Raise {
	if len(grafts) == 0 {
		return nil
	}
	before := r.Queens(grafts...).AtLeast(want)
	var all []Raise
	for c := MoreLarvae; c <= BetterMating; c++ {
		if c == VirginsForCells && r.Virgins {
			continue
		}
		rates, after := r.with(c, late, grafts)
		chance := rates.Queens(after...).AtLeast(want)
		all = append(all, Raise{c, rates, after, chance, chance - before})
	}
	slices.SortStableFunc(all, func(a, b Raise) int { return cmp.Compare(b.Chance, a.Chance) })
	return all
}

func (r Rates) with(c Change, late float64, grafts []Graft) (Rates, []Graft) {
	grafts = slices.Clone(grafts)
	switch c {
	case MoreLarvae:
		grafts[0].Larvae += larvaeMore
	case MoreNucs:
		for g := range grafts {
			if g == 0 || grafts[g].Again {
				grafts[g].Nucs += nucsMore
			}
		}
	case OneMoreGraft:
		grafts = append(grafts, Graft{Larvae: (grafts[0].Larvae + 1) / 2, Late: late})
	case VirginsForCells:
		r.Virgins = true
	case BetterTake:
		r.Link[Taken] = r.Link[Taken].Raised(pointsMore)
	case BetterMating:
		r.Link[LayingOfAccepted] = r.Link[LayingOfAccepted].Raised(pointsMore)
	}
	return r, grafts
}
