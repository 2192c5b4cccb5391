package review

import (
	"slices"

	"lidmark/domain/allot"
)

// Use is a use of what is in hand over all nucs.
type Use struct {
	Chosen  []int // by nuc as [Review.Nucs] has them, the place in its ways
	Minutes float64
	Worth   float64 // in queens

	Over                int     // of how many nucs the figures below are: those that some use does something with
	Expected, Low, High float64 // laying queens by the day: mean, and the range of four in five

	More        []float64 // by ware, what one more would be worth, in queens
	MinuteWorth float64   // what one more minute would be worth, in queens
	Bound       float64   // no use is worth more
	Exact       bool      // none is better, proven
}

// uses finds the best use, and those it is measured by.
func (r *Review) uses() {
	r.This = r.best()
	r.Order = r.inOrder()
	r.None = Use{Chosen: make([]int, len(r.Nucs))}
	for _, u := range []*Use{&r.This, &r.Order, &r.None} {
		r.sum(u)
	}
}

// problem is the review as the solver takes it. Supplies are the wares, then
// cups of bees.
func (r *Review) problem() (p allot.Problem, ways [][]int, unions []int) {
	for _, w := range r.Hand.Wares {
		p.Supply = append(p.Supply, max(0, w.Many))
	}
	p.Supply, p.Minutes = append(p.Supply, max(0, r.Hand.Cups)), max(0, r.Hand.Minutes)
	p.Ways, ways = make([][]allot.Way, len(r.Nucs)), make([][]int, len(r.Nucs))
	at := make(map[any]int, len(r.Nucs))
	for i, n := range r.Nucs {
		at[n.Nuc.Nuc] = i
	}
	for i, n := range r.Nucs {
		for j, w := range n.Ways {
			if n.Decided && j > 0 || w.Barred {
				break
			}
			if w.Kind != Unite {
				p.Ways[i] = append(p.Ways[i], allot.Way{Worth: w.Worth, Takes: r.takes(w), Minutes: w.Minutes})
				ways[i] = append(ways[i], j)
				continue
			}
			if with := at[w.With]; w.Worth > n.Ways[0].Worth {
				p.Unions = append(p.Unions, allot.Union{A: i, B: with, Way: allot.Way{Worth: w.Worth + r.Nucs[with].Ways[0].Worth, Minutes: w.Minutes}})
				unions = append(unions, j)
			}
		}
	}
	return p, ways, unions
}

// takes is the supply a way takes one of; 0: none.
func (r *Review) takes(w Way) int {
	switch {
	case w.Gives():
		return w.Ware
	case w.Kind == AddBees:
		return len(r.Hand.Wares) + 1
	default:
		return 0
	}
}

// best is the best use of what is in hand. The solver refuses only what is not
// a number, and then nothing is done.
func (r *Review) best() Use {
	p, ways, unions := r.problem()
	u := Use{Chosen: make([]int, len(r.Nucs))}
	a, err := allot.Best(p)
	if err != nil {
		return u
	}
	for i, j := range a.Chosen {
		if j > 0 {
			u.Chosen[i] = ways[i][j]
		}
	}
	for _, i := range a.United {
		u.Chosen[p.Unions[i].A] = unions[i]
	}
	u.MinuteWorth, u.Bound, u.Exact = a.MinuteWorth, a.Bound, a.Exact
	u.More = more(p, a, len(r.Hand.Wares))
	return u
}

// more is what one more of each ware would be worth: where minutes are limited
// or nucs may be united, by solving again.
func more(p allot.Problem, a allot.Answer, wares int) []float64 {
	one := a.More[:wares]
	if p.Minutes == 0 && len(p.Unions) == 0 {
		return one
	}
	for i := range one {
		if worth, _, err := allot.OneMore(p, a, i+1); err == nil {
			one[i] = worth
		}
	}
	return one
}

// inOrder gives what is in hand to those who need it as they stand, whatever
// comes of it, while minutes last.
func (r *Review) inOrder() Use {
	u := Use{Chosen: make([]int, len(r.Nucs))}
	left := make([]int, len(r.Hand.Wares))
	for i, w := range r.Hand.Wares {
		left[i] = w.Many
	}
	walk := make([]int, len(r.Nucs))
	for i := range walk {
		walk[i] = i
	}
	slices.SortFunc(walk, func(a, b int) int { return r.Nucs[a].place - r.Nucs[b].place })
	spent := 0.0
	for _, i := range walk {
		n := r.Nucs[i]
		if !n.Decide {
			continue
		}
		j := slices.IndexFunc(n.Ways, func(w Way) bool {
			return w.Gives() && !w.Barred && w.Kind != LookFirst && left[w.Ware-1] > 0 && (r.Hand.Minutes <= 0 || spent+w.Minutes <= r.Hand.Minutes)
		})
		if j > 0 {
			u.Chosen[i] = j
			left[n.Ways[j].Ware-1]--
			spent += n.Ways[j].Minutes
		}
	}
	return u
}

// sum adds up what a use comes to.
func (r *Review) sum(u *Use) {
	var chances []float64
	for i, n := range r.Nucs {
		w := n.Ways[u.Chosen[i]]
		u.Worth += w.Worth
		u.Minutes += w.Minutes
		if r.This.Chosen[i] > 0 || r.Order.Chosen[i] > 0 {
			u.Over++
			chances = append(chances, w.Lays)
		}
	}
	u.Expected, u.Low, u.High = outOf(chances)
}

// More is what one more of a ware would be worth beyond the best use.
func (r *Review) More(ware int) float64 {
	if ware < len(r.This.More) {
		return r.This.More[ware]
	}
	return 0
}
