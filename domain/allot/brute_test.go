package allot_test

import (
	"math"

	"lidmark/domain/allot"
)

// brute tries every choice there is and tells the most that any is worth.
func brute(p allot.Problem) float64 {
	b := trial{p: p, left: append([]int(nil), p.Supply...), united: make([]bool, len(p.Ways)), best: math.Inf(-1)}
	b.minutes = p.Minutes
	if p.Minutes == 0 {
		b.minutes = math.Inf(1)
	}
	b.unions(0, 0)
	return b.best
}

type trial struct {
	p       allot.Problem
	left    []int
	minutes float64
	united  []bool
	best    float64
}

func (b *trial) unions(i int, worth float64) {
	if i == len(b.p.Unions) {
		b.subjects(0, worth)
		return
	}
	b.unions(i+1, worth)
	u := b.p.Unions[i]
	if !b.united[u.A] && !b.united[u.B] {
		b.united[u.A], b.united[u.B] = true, true
		b.with(u.Way, func() { b.unions(i+1, worth+u.Worth) })
		b.united[u.A], b.united[u.B] = false, false
	}
}

func (b *trial) subjects(i int, worth float64) {
	switch {
	case i == len(b.p.Ways):
		b.best = max(b.best, worth)
	case b.united[i]:
		b.subjects(i+1, worth)
	default:
		for _, w := range b.p.Ways[i] {
			b.with(w, func() { b.subjects(i+1, worth+w.Worth) })
		}
	}
}

// with does something with what a way takes taken, if that is in hand.
func (b *trial) with(w allot.Way, do func()) {
	if w.Minutes > b.minutes+1e-9 || w.Takes > 0 && b.left[w.Takes-1] == 0 {
		return
	}
	b.minutes -= w.Minutes
	if w.Takes > 0 {
		b.left[w.Takes-1]--
		defer func() { b.left[w.Takes-1]++ }()
	}
	do()
	b.minutes += w.Minutes
}
