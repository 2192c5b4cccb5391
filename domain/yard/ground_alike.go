package yard

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Alike is how many entrances of nucs have another within [practice.AlikeApart] that
// looks alike: their marks cannot be told apart, and they face less than a right
// angle apart.
func Alike(l Layout, n practice.Numbers) (count int) {
	doors := l.Doors(SpacingOf(n))
	near := gridOf(doors)
	for i := range doors {
		if _, d := nearestAlike(doors, near, i, n.Get(practice.AlikeApart)); d >= 0 {
			count++
		}
	}
	return count
}

func gridOf(doors []Door) *grid {
	at := make([]book.Point, len(doors))
	for i := range doors {
		at[i] = doors[i].At
	}
	return newGrid(at)
}

// nearestAlike is the nearest door that looks like one, nearer than so many metres,
// and how far it is; -1 where there is none.
func nearestAlike(doors []Door, near *grid, i int, within float64) (other int, metres float64) {
	other, metres = -1, -1
	near.within(doors[i].At, within, func(j int, d float64) {
		closer := other < 0 || d < metres || d == metres && j < other
		if j != i && d < within && closer && alike(&doors[i], &doors[j]) {
			other, metres = j, d
		}
	})
	return other, metres
}

func alike(a, b *Door) bool { return facesAlike(a, b) && a.Mark.Apart(b.Mark) == 0 }

// facesAlike tells whether two nucs' doors face less than a right angle apart.
func facesAlike(a, b *Door) bool {
	return !a.Colony && !b.Colony && between(a.Bearing, b.Bearing) < rightAngle-tie
}
