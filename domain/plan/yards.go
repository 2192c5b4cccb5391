package plan

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
)

// YardOfMostNucs is the yard in which most nucs stand: where queens are mated unless a yard
// is named. A book without one has none.
func (p *Planner) YardOfMostNucs() book.YardID { return p.yardsByNucs()[0] }

// yardsByNucs are the yards that have nucs, the most first; at least one, if there are yards, and
// a yard without a name if there are none.
func (p *Planner) yardsByNucs() []book.YardID {
	nucs := map[book.YardID]int{}
	for n := range p.view.Nucs() {
		nucs[n.Yard]++
	}
	var all []book.YardID
	for y := range p.view.Yards() {
		all = append(all, y.Yard)
	}
	if len(all) == 0 {
		return []book.YardID{{}}
	}
	slices.SortStableFunc(all, func(a, b book.YardID) int { return cmp.Compare(nucs[b], nucs[a]) })
	if without := slices.IndexFunc(all, func(y book.YardID) bool { return nucs[y] == 0 }); without >= 0 {
		return all[:max(1, without)]
	}
	return all
}

// yardsFor are the yards in which the queens of a wish may be mated: the one that is named, else
// those of [Planner.yardsByNucs].
func (p *Planner) yardsFor(w Wish) []book.YardID {
	if w.Yard.IsZero() {
		return p.yardsByNucs()
	}
	return []book.YardID{w.Yard}
}
