package siting

import (
	"math/rand/v2"

	"lidmark/domain/yard"
)

// turnedOn is a box turned on its place to a free side of its stand, or all boxes of the
// stand each to its own side, or as they were: one alone seldom gains what all do.
func (t *trial) turnedOn(r *rand.Rand, at [2]int, to []change) []change {
	s, was := &t.layout.Stands[at[0]], &t.was.Stands[at[0]]
	const all, together = 4, 2
	switch r.IntN(all * together) {
	case 0:
		return t.turnedAll(at[0], func(k int) float64 { return s.FreeSides(s.Nucs[k].Place)[0] }, to)
	case 1:
		return t.turnedAll(at[0], func(k int) float64 { return was.Nucs[k].Bearing }, to)
	}
	sides := s.FreeSides(s.Nucs[at[1]].Place)
	bearing := was.Nucs[at[1]].Bearing
	if k := r.IntN(len(sides) + 1); k < len(sides) {
		bearing = sides[k]
	}
	return append(to, t.faced(at[0], at[1], bearing))
}

// turnedAll are the boxes of a stand that may be turned on their places, so turned.
func (t *trial) turnedAll(stand int, bearing func(nuc int) float64, to []change) []change {
	for k := range t.layout.Stands[stand].Nucs {
		if !t.layout.Stands[stand].Nucs[k].Shared {
			to = append(to, t.faced(stand, k, bearing(k)))
		}
	}
	return to
}

// outwards is a layout with all boxes that may be turned on their places each facing its
// own side of its stand.
func (p *plot) outwards(l yard.Layout) yard.Layout {
	l = l.Clone()
	for _, f := range p.faces {
		n := &l.Stands[f[0]].Nucs[f[1]]
		n.Bearing = l.Stands[f[0]].FreeSides(n.Place)[0]
	}
	return l
}

// start is the layout from which a chain begins: the first from how the boxes stand, the
// others from the boxes turned outwards where that costs less.
func (p *plot) start(chain int) yard.Layout {
	if chain == 0 || len(p.faces) == 0 {
		return p.begun
	}
	out := p.outwards(p.begun)
	if p.bill(out, nil, p.numbers).Worth < p.bill(p.begun, nil, p.numbers).Worth {
		return out
	}
	return p.begun
}
