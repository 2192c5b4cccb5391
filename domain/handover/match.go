package handover

import "math"

// match deals goods of some kinds out to takers. Takers come in the order of
// their right: each gets as much as can be given to it without taking any from one
// before it, which no other dealing betters; of all such dealings this one has the
// least cost. A unit is added at a time along the cheapest way, on which units
// already dealt may change hands between kinds.
type match struct {
	have []int       // of each kind
	cost [][]float64 // of a unit, by taker and kind; +Inf where it will not do
	deal [][]int     // units by taker and kind
	left []int       // not dealt, by kind
}

func matched(want, have []int, cost [][]float64) *match {
	m := &match{have: have, cost: cost, deal: make([][]int, len(want)), left: append([]int(nil), have...)}
	for t := range want {
		m.deal[t] = make([]int, len(have))
	}
	for t, n := range want {
		for range n {
			if !m.add(t) {
				break
			}
		}
	}
	return m
}

// reach is the cheapest way found so far from a taker to each kind: the taker it
// came from, and to each taker: the kind it gives up.
type reach struct {
	kind, taker         []float64
	fromTaker, fromKind []int
}

// add gives a taker one unit more, if there is a way.
func (m *match) add(t int) bool {
	r := m.ways(t)
	best := -1
	for k := range m.have {
		if m.left[k] > 0 && !math.IsInf(r.kind[k], 1) && (best < 0 || r.kind[k] < r.kind[best]-1e-12) {
			best = k
		}
	}
	if best < 0 {
		return false
	}
	m.left[best]--
	for k := best; ; {
		taker := r.fromTaker[k]
		m.deal[taker][k]++
		if taker == t {
			return true
		}
		k = r.fromKind[taker]
		m.deal[taker][k]--
	}
}

// ways are the cheapest ways from a taker to all kinds, by relaxing until nothing
// changes: what was dealt at least cost has no circle that gains.
func (m *match) ways(t int) reach {
	r := reach{infinite(len(m.have)), infinite(len(m.deal)), make([]int, len(m.have)), make([]int, len(m.deal))}
	r.taker[t] = 0
	for changed := true; changed; {
		changed = false
		for taker := range m.deal {
			if math.IsInf(r.taker[taker], 1) {
				continue
			}
			for k, c := range m.cost[taker] {
				if to := r.taker[taker] + c; to < r.kind[k]-1e-9 {
					r.kind[k], r.fromTaker[k], changed = to, taker, true
				}
			}
		}
		for taker := range m.deal {
			for k, n := range m.deal[taker] {
				if to := r.kind[k] - m.cost[taker][k]; n > 0 && taker != t && to < r.taker[taker]-1e-9 {
					r.taker[taker], r.fromKind[taker], changed = to, k, true
				}
			}
		}
	}
	return r
}

func infinite(n int) []float64 {
	all := make([]float64, n)
	for i := range all {
		all[i] = math.Inf(1)
	}
	return all
}
