package view

import (
	"slices"

	"lidmark/ui/state"
)

// settleSizes makes all lids of a kind alike in both maps, as large as the yard as it
// stands leaves room for. Where stands come closer than that their lids are smaller.
func (m *layoutMap) settleSizes() {
	now, least := m.s.LayoutSheet().Now.Standing, m.most
	var sizes [kindsOfStand]float64
	for k := range sizes {
		if sizes[k] = alikeLids(now, k, m.room); sizes[k] == 0 {
			sizes[k] = alikeLids(m.stand, k, m.room)
		}
		if sizes[k] > 0 {
			least = min(least, sizes[k])
		}
	}
	if least < mapLidFull {
		m.most, m.hollow = min(m.most, mapLidFull-0.5), true
	}
	m.sized = func(s *state.Standing) float64 { return min(sizes[kindOf(s)], m.room(s)) }
}

// kindsOfStand are single boxes, stands of four and rows.
const (
	kindOfOne = iota
	kindOfFour
	kindOfRow
	kindsOfStand
)

func kindOf(s *state.Standing) int {
	switch {
	case s.Places <= 1:
		return kindOfOne
	case s.Row():
		return kindOfRow
	}
	return kindOfFour
}

// alikeLids is how large the lids of a kind are: as the closest leave room for, but no
// few that stand very close make all others small.
func alikeLids(all []state.Standing, kind int, room func(*state.Standing) float64) float64 {
	const few = 0.75 // of the usual
	var rooms []float64
	for i := range all {
		if kindOf(&all[i]) == kind {
			rooms = append(rooms, room(&all[i]))
		}
	}
	if len(rooms) == 0 {
		return 0
	}
	slices.Sort(rooms)
	return max(rooms[0], few*rooms[len(rooms)/2])
}

// room is how large the lids of a stand may be that reach no neighbour. Stands may be
// turned, and single boxes are not to lap over one another, but for a little where they
// would have no letter otherwise.
func (m *layoutMap) room(s *state.Standing) float64 {
	apart := m.camera.Length(s.Apart) * 0.97
	lid := lidSize(s, m.camera.Length(s.Apart), m.camera.Length(state.PlaceApart), m.most)
	switch {
	case s.Places <= 1 && apart >= mapLidClose:
		lid = min(lid, max(apart, mapLidLeast))
	case s.Places <= 1:
		lid = min(lid, apart)
	case !s.Row() && lid <= mapLidLeast && apart/standWide < mapLidClose:
		lid = min(lid, apart/standWide)
	}
	return max(lid, mapCell)
}
