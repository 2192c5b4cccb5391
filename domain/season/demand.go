package season

import (
	"fmt"
	"slices"
	"sort"

	"lidmark/domain/plan"
)

// due is so many queens in all by one of the days of a group, those of the days
// before it included, as surely as is wished.
type due struct {
	queens int
	late   lateness
	sure   float64
	had    *had // what there is of it already; nil: nothing
}

// least is how many nucs a graft has at least that keeps it.
func (d due) least() int {
	if d.had != nil {
		return 1
	}
	return d.queens
}

// demand is what the promises of a group want of a graft at a level: of the first day first.
func (s *search) demand(g group, laid plan.Laid, l level) []due {
	var all []due
	queens := 0
	for at, i := range g.promises {
		p := s.wanted.Promises[i]
		want, sure := l.of(p, at)
		queens += want
		all = append(all, due{queens, latenessOf(laid, p), sure, s.had[i]})
	}
	return all
}

// even is what a chance may fall short of a wish by rounding.
const even = 1e-9

// sizes are the grafts that keep a demand: of each number of larvae the fewest nucs,
// where more larvae need fewer.
func (s *search) sizes(demand []due) []size {
	key := fmt.Sprint(demand)
	if known, ok := s.sized[key]; ok {
		return known
	}
	all := []size{}
	fewest := slices.Max(s.wanted.Larvae) + 1
	if demand[0].had != nil {
		fewest = 1 + s.mostNucs()
	}
	for _, larvae := range s.wanted.Larvae {
		if nucs := s.fewestNucs(demand, larvae, min(larvae, fewest-1)); nucs > 0 {
			all, fewest = append(all, size{larvae, nucs}), nucs
		}
	}
	s.sized[key] = all
	return all
}

// fewestNucs is how many nucs a graft needs to keep a demand, of so many at most;
// 0: no number is enough.
func (s *search) fewestNucs(demand []due, larvae, most int) int {
	least := demand[len(demand)-1].least()
	if most < least || !s.keeps(demand, size{larvae, most}) {
		return 0
	}
	return least + sort.Search(most-least, func(i int) bool { return s.keeps(demand, size{larvae, least + i}) })
}

func (s *search) keeps(demand []due, z size) bool {
	for _, d := range slices.Backward(demand) {
		if d.had != nil {
			if s.odds.several(d.had, []plan.Graft{d.graft(z)}, d.late.laying, d.queens) < d.sure-even {
				return false
			}
		} else if s.odds.enough(z.larvae, z.nucs, d.late, d.queens) < d.sure-even {
			return false
		}
	}
	return true
}

// graft is a graft of a size, as late as it is for what is due.
func (d due) graft(z size) plan.Graft {
	return plan.Graft{Larvae: z.larvae, Nucs: z.nucs, Late: float64(d.late.late) / lateParts}
}

// twice is the smallest size of which two grafts keep a demand.
func (s *search) twice(demand []due) (size, bool) {
	var all []int
	for larvae := pairBars; larvae <= slices.Max(s.wanted.Larvae); larvae += pairBars {
		all = append(all, larvae)
	}
	i := sort.Search(len(all), func(i int) bool {
		for _, d := range slices.Backward(demand) {
			if d.had != nil {
				g := d.graft(size{all[i], s.odds.pairNucs(all[i])})
				return s.odds.several(d.had, []plan.Graft{g, g}, d.late.laying, d.queens) >= d.sure-even
			}
			if 2*s.odds.pairNucs(all[i]) < d.queens || s.odds.two(all[i], d.late).AtLeast(d.queens) < d.sure-even {
				return false
			}
		}
		return true
	})
	if i == len(all) {
		return size{}, false
	}
	return size{all[i], s.odds.pairNucs(all[i])}, true
}
