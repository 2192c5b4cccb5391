package review

import (
	"errors"
	"fmt"
	"slices"

	"lidmark/domain/allot"
	"lidmark/domain/book"
)

// Use is a use of what is in hand over all nucs.
type Use struct {
	Chosen  []int // by nuc as [Review.Nucs] has them, the place in its ways
	Minutes float64
	Worth   float64 // in queens

	Over                int     // of how many nucs the figures below are: those in which something may gain, and the empty ones
	Caught              int     // nucs whose queen is caught
	Expected, Low, High float64 // queens by the day, laying in these nucs or caught from them: mean, and the range of four in five

	More  []More  // by ware, then of a cup of bees: what one more would be worth
	Hour  More    // what one more hour would be worth; nothing where minutes are not limited
	Bound float64 // no use is worth more
	Exact bool    // none is better, proven

	Refused string // why no best use was reckoned, a sentence; then nothing is done
}

// More is what more of a thing would be worth beyond the best use, in queens.
type More struct {
	Worth float64
	Exact bool // else it is worth no more than that
}

// uses finds the best use, and those it is measured by.
func (r *Review) uses() {
	r.This = r.best()
	r.Order = r.inOrder()
	r.None = Use{Chosen: make([]int, len(r.Nucs))}
	for _, u := range []*Use{&r.This, &r.Order, &r.None} {
		r.sum(u)
	}
	r.left = r.leaves()
}

// problem is the review as the solver takes it. Supplies are the wares, then
// cups of bees.
func (r *Review) problem() (p allot.Problem, ways [][]int, unions []int) {
	for _, w := range r.Hand.Wares {
		p.Supply = append(p.Supply, max(0, w.Many))
	}
	p.Supply, p.Minutes = append(p.Supply, max(0, r.Hand.Cups)), max(0, r.Hand.Minutes)
	r.takeOff(&p)
	p.Ways, ways = make([][]allot.Way, len(r.Nucs)), make([][]int, len(r.Nucs))
	at := make(map[book.NucID]int, len(r.Nucs))
	for i, n := range r.Nucs {
		at[n.NucNamed.Nuc] = i
	}
	locked := r.locked(at)
	for i, n := range r.Nucs {
		if j, is := r.taken[i]; is {
			p.Ways[i], ways[i] = []allot.Way{{Worth: n.Ways[j].Worth}}, []int{j}
			continue
		}
		for j, w := range n.Ways {
			if (n.Decided || locked[i]) && j > 0 || w.Barred {
				break
			}
			if w.Kind != Unite {
				p.Ways[i] = append(p.Ways[i], allot.Way{Worth: w.Worth, Takes: r.takes(w), Minutes: w.Minutes})
				ways[i] = append(ways[i], j)
				continue
			}
			if with, ok := at[w.With]; ok && w.Worth > n.Ways[0].Worth && !locked[with] {
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

// refused is why the solver takes no problem, in the words of what is in hand.
func (r *Review) refused(err error) string {
	var held allot.SupplyError
	switch {
	case !errors.As(err, &held):
		return err.Error()
	case held.Supply <= len(r.Hand.Wares):
		return fmt.Sprintf("%s in hand, write %d at most", r.Hand.Wares[held.Supply-1].counted(held.Holds), allot.MostHeld)
	default:
		return fmt.Sprintf("%d cups of bees in hand, write %d at most", held.Holds, allot.MostHeld)
	}
}

// best is the best use of what is in hand. What the solver refuses, an amount
// beyond all sense, is said, and then nothing is done.
func (r *Review) best() Use {
	p, ways, unions := r.problem()
	u := Use{Chosen: make([]int, len(r.Nucs))}
	a, err := allot.Best(p)
	if err != nil {
		u.Refused = fmt.Sprintf("The best use of what is in hand cannot be reckoned: %s.", r.refused(err))
		return u
	}
	for i, j := range a.Chosen {
		if j >= 0 {
			u.Chosen[i] = ways[i][j]
		}
	}
	for _, i := range a.United {
		u.Chosen[p.Unions[i].A] = unions[i]
	}
	u.Bound, u.Exact = a.Bound, a.Exact
	u.More, u.Hour = more(p, a)
	return u
}

// more is what one more of each supply would be worth, and one more hour: where
// minutes are limited or nucs may be united, by solving again. The solver took the
// problem already, so it refuses none of these.
func more(p allot.Problem, a allot.Answer) (each []More, hour More) {
	for i, worth := range a.More {
		m := More{worth, true}
		if p.Minutes > 0 || len(p.Unions) > 0 {
			m.Worth, m.Exact, _ = allot.OneMore(p, a, i+1)
		}
		each = append(each, m)
	}
	if p.Minutes > 0 {
		hour.Worth, hour.Exact, _ = allot.MoreMinutes(p, a, 60)
	}
	return each, hour
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

// sum adds up what a use comes to. A queen caught is had, and her nuc may have
// another by the day.
func (r *Review) sum(u *Use) {
	var chances []float64
	for i, n := range r.Nucs {
		w := n.Ways[u.Chosen[i]]
		u.Worth += w.Worth
		u.Minutes += w.Minutes
		if !n.open && !n.empty {
			continue
		}
		chances = append(chances, w.Lays)
		if w.Kind == Catch {
			u.Caught++
			chances = append(chances, w.Caught)
		}
	}
	u.Over = r.Open + r.Empty
	u.Expected, u.Low, u.High = outOf(chances)
}

// More is what one more of a ware would be worth beyond the best use.
func (r *Review) More(ware int) More {
	if ware < len(r.This.More) {
		return r.This.More[ware]
	}
	return More{}
}

// MoreBees is what one more cup of bees would be worth beyond the best use.
func (r *Review) MoreBees() More { return r.More(len(r.Hand.Wares)) }
