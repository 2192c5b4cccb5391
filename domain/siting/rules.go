package siting

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// fits tells whether a stand may stand as it does: where it was put there is room, and
// no box of it is nearer to one of another stand than may be, or than it was.
func (t *trial) fits(stand int) bool {
	s := &t.layout.Stands[stand]
	if !t.stayed(stand, s.At) && (t.faults[stand].NoRoom > 0 || !t.open(s)) {
		return false
	}
	ok := true
	doors := t.virgins.Doors()
	for k := range s.Nucs {
		i := t.first[stand] + k
		t.virgins.Near(doors[i].At, t.task.Apart, func(j int) {
			if o := &doors[j]; o.Colony || o.Stand != stand {
				ok = ok && far(doors[i].At, o.At) >= t.least(i, j)
			}
		})
	}
	return ok
}

// open tells whether all boxes of a stand may be put where they are.
func (t *trial) open(s *yard.Stand) bool {
	return t.task.Open == nil || !slices.ContainsFunc(s.Nucs, func(n yard.Nuc) bool { return !t.task.Open(s.On(n.Place, t.apart)) })
}

// roomy tells whether a stand may be put at a point; where it was it may stay.
func (t *trial) roomy(stand int, at book.Point) bool {
	return t.stayed(stand, at) || t.has(at)
}

// stayed tells whether a point is where a stand was.
func (t *trial) stayed(stand int, at book.Point) bool {
	return !t.fresh(stand) && at == t.was.Stands[stand].At
}

// least is how near two doors may be.
func (t *trial) least(i, j int) float64 {
	for _, k := range [2]int{i, j} {
		if d := &t.stood[k]; !d.Colony && t.fresh(d.Stand) {
			return t.task.Apart
		}
	}
	return min(t.task.Apart, far(t.stood[i].At, t.stood[j].At))
}

// stocked tells whether the marks to hand suffice.
func (t *trial) stocked() bool {
	for i, m := range t.task.Marks {
		if t.used[i] > m.Count {
			return false
		}
	}
	return true
}
