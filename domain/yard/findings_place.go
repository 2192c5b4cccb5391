package yard

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// places are where on the ground the boxes of a stand are: the stand's own point where
// none stands on it.
func (j *judge) places(s *Stand) (all []book.Point) {
	for i := range s.Nucs {
		all = append(all, s.On(s.Nucs[i].Place, SpacingOf(j.numbers)))
	}
	if len(all) == 0 {
		return []book.Point{s.At}
	}
	return all
}

// taken finds boxes where no box can stand: in one another, in a hedge, a wall or water,
// in a house.
func (j *judge) taken(i int, find finds) {
	s, wide := &j.layout.Stands[i], j.numbers.Get(practice.BoxWide)
	at := j.places(s)
	if other := j.lappedBy(i, at, wide); other != "" {
		find(OnAnother, other, 0, 0)
	}
	for _, k := range solid {
		if j.lies(at, k.what, j.touching()) {
			find(OnFeature, k.name, 0, 0)
		}
	}
}

// solid is in what no box can stand.
var solid = []struct {
	what book.FeatureKind
	name string
}{{book.Hedge, "a hedge"}, {book.Wall, "a wall"}, {book.Water, "water"}, {book.Dwelling, "a house"}}

// touching is how far in metres the middle of a box is from what it just touches, which
// it may.
func (j *judge) touching() float64 { return 0.9 * j.numbers.Get(practice.BoxWide) / 2 }

// lappedBy is the letter of a stand whose boxes stand in those of another; "" for none.
func (j *judge) lappedBy(stand int, at []book.Point, wide float64) (letter string) {
	for _, p := range at {
		j.near.within(p, wide, func(k int, d float64) {
			if b := &j.doors[k]; !b.Colony && b.Stand != stand && d < wide && letter == "" {
				letter = j.layout.Stands[b.Stand].Letter
			}
		})
	}
	return letter
}

// lies tells whether one of some points lies in a feature of a kind, or nearer to it
// than so many metres.
func (j *judge) lies(at []book.Point, k book.FeatureKind, metres float64) bool {
	for _, f := range j.ground.shapes(k) {
		for _, p := range at {
			if f.holds(of(p)) || f.away(of(p)) < metres {
				return true
			}
		}
	}
	return false
}

// outside is how far the box of a stand that is furthest beyond the boundary is from it,
// in metres, and whether any is.
func (j *judge) outside(s *Stand) (metres float64, is bool) {
	all := j.ground.shapes(book.Boundary)
	for _, p := range j.places(s) {
		inside, edge := len(all) == 0, -1.0
		for i := range all {
			inside = inside || !all[i].area || all[i].holds(of(p))
			if d := all[i].edge(of(p)); edge < 0 || d < edge {
				edge = d
			}
		}
		if !inside {
			metres, is = max(metres, edge), true
		}
	}
	return metres, is
}
