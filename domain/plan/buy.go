package plan

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Buy is a good that is bought or made ahead, with what each planned batch needs of
// it, in the order of the last days to order.
type Buy struct {
	Good
	Amount  float64      // of all batches together
	OrderBy calendar.Day // the first of the last days to order
	For     []BuyFor
}

// BuyFor is what one planned batch needs of a good.
type BuyFor struct {
	Batch book.BatchPlan
	Need
}

// Buys are what is to be bought for all planned batches that can be kept, see [Planner.Lapsed],
// what has to be ordered first before the rest.
func (p *Planner) Buys() (all []Buy) {
	at := map[Good]int{}
	for b := range p.view.Plans() {
		if moved, _ := p.Lapsed(b); !moved.IsZero() {
			continue
		}
		for _, n := range p.Needs(p.LadderOf(b), p.SizeOf(b)) {
			if !n.Bought() {
				continue
			}
			i, known := at[n.Good]
			if !known {
				i = len(all)
				at[n.Good], all = i, append(all, Buy{Good: n.Good})
			}
			all[i].Amount += n.Amount
			all[i].For = append(all[i].For, BuyFor{b, n})
		}
	}
	for i := range all {
		slices.SortStableFunc(all[i].For, func(a, b BuyFor) int { return cmp.Compare(a.OrderBy, b.OrderBy) })
		all[i].OrderBy = all[i].For[0].OrderBy
	}
	slices.SortStableFunc(all, func(a, b Buy) int {
		return cmp.Or(cmp.Compare(a.OrderBy, b.OrderBy), cmp.Compare(a.Good, b.Good))
	})
	return all
}
