package review

import (
	"maps"
	"slices"

	"lidmark/domain/allot"
	"lidmark/domain/book"
)

// Choice names a way with a nuc, whatever else is in hand. Ware is the name of
// what it gives; "": nothing.
type Choice struct {
	Kind Kind
	Ware string
	With book.NucID
}

// ChoiceOf names a way.
func (r *Review) ChoiceOf(w Way) Choice {
	c := Choice{Kind: w.Kind, With: w.With}
	if w.Gives() {
		c.Ware = r.Hand.Wares[w.Ware-1].Name
	}
	return c
}

// Taking is the review with ways that the keeper takes, whatever the best use
// says: what they need is taken off what is in hand, and the best use is that of
// the rest. Choices that the review does not know are left out.
func (r *Review) Taking(choices map[book.NucID]Choice) *Review {
	next := new(*r)
	next.taken = map[int]int{}
	for i, n := range r.Nucs {
		c, ok := choices[n.NucNamed.Nuc]
		if !ok || n.Decided {
			continue
		}
		if j := slices.IndexFunc(n.Ways, func(w Way) bool { return r.ChoiceOf(w) == c }); j >= 0 {
			next.taken[i] = j
		}
	}
	next.uses()
	return next
}

// Taken tells whether the way with a nuc, by its place, is one the keeper takes.
func (r *Review) Taken(i int) bool { _, is := r.taken[i]; return is }

// takeOff takes what the ways taken need off what a problem has in hand.
func (r *Review) takeOff(p *allot.Problem) {
	limited, left := p.Minutes > 0, p.Minutes
	for _, i := range slices.Sorted(maps.Keys(r.taken)) { // in one order: sums of floats depend on it
		w := r.Nucs[i].Ways[r.taken[i]]
		if s := r.takes(w); s > 0 {
			p.Supply[s-1] = max(0, p.Supply[s-1]-1)
		}
		left -= w.Minutes
	}
	if limited {
		p.Minutes = max(left, noMinutes)
	}
}

// noMinutes is a limit under which nothing can be done: 0 is no limit.
const noMinutes = 0.001

// locked are the nucs, by their place, that a union taken leaves as they are.
func (r *Review) locked(at map[book.NucID]int) map[int]bool {
	locked := map[int]bool{}
	for i, j := range r.taken {
		locked[i] = true
		if w := r.Nucs[i].Ways[j]; w.Kind == Unite {
			if with, ok := at[w.With]; ok {
				locked[with] = true
			}
		}
	}
	return locked
}
