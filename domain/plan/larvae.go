package plan

import (
	"slices"
	"strconv"
	"strings"
)

// MostGrafts is how many grafts one promise has at most. A convention of the program.
const MostGrafts = 8

// The most of what a wish may have: beyond lies a fault of typing. Common practice, no
// source.
const (
	MostQueens = 1000 // queens of a wish
	MostNucs   = 1000 // nucs of a wish
	MostLarvae = 2000 // larvae of one graft
	MostAhead  = 400  // days from today to the last that a wish is for
	MostApart  = 60   // days between two grafts of a wish
)

// Later are the larvae of the grafts after the first one, up to the last of which the
// keeper says a number; the zero Later are as many as the first has.
type Later [MostGrafts - 1]int

// ReadLarvae reads how many larvae grafts have, one after the other, as in 48, in
// 80,60 and in 80 + 60; ok is false where a text is something else, or more than
// [MostGrafts]. How many are sense is not asked.
func ReadLarvae(text string) (all []int, ok bool) {
	for _, word := range strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(",;+ ", r) }) {
		n, err := strconv.Atoi(word)
		if err != nil {
			return nil, false
		}
		all = append(all, n)
	}
	return all, len(all) > 0 && len(all) <= MostGrafts
}

// LarvaeSaid are larvae by graft as they are read back: 80 + 60.
func LarvaeSaid(all []int) string {
	words := make([]string, len(all))
	for i, n := range all {
		words[i] = strconv.Itoa(n)
	}
	return strings.Join(words, " + ")
}

// WithLarvae is the wish with so many larvae: one number is that of each graft, several
// are of as many grafts, in their order.
func (w Wish) WithLarvae(all ...int) Wish {
	w.Larvae, w.Then = 0, Later{}
	if len(all) > 0 {
		w.Larvae = all[0]
		copy(w.Then[:], all[1:])
	}
	if len(all) > 1 {
		w.Grafts = len(all)
	}
	return w
}

// Said are the larvae as the keeper said them: none, one number for each graft, or one
// a graft.
func (w Wish) Said() (all []int) {
	if w.Larvae == 0 {
		return nil
	}
	for _, n := range w.Then {
		if n > 0 {
			all = append(all, n)
		}
	}
	return slices.Insert(all, 0, w.Larvae)
}

// OneByOne tells whether the keeper said the larvae graft by graft.
func (w Wish) OneByOne() bool { return w.Then != Later{} }

// larvaeOf is how many larvae a graft has, the first one being 0, where each has so many
// of which nobody said another number.
func (w Wish) larvaeOf(graft, each int) int {
	if graft > 0 && w.Then[graft-1] > 0 {
		return w.Then[graft-1]
	}
	return each
}

// Grafted are the larvae of its grafts, one number a graft.
func (a Answer) Grafted() []int {
	all := make([]int, len(a.Batches))
	for i, b := range a.Batches {
		all[i] = b.Graft.Larvae
	}
	return all
}
