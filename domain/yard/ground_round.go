package yard

import (
	"lidmark/domain/book"
	"lidmark/domain/tour"
)

// Round is a short walking round from a place past all stands and back: the stands
// of the layout in the order in which they are walked, and its length in metres.
func Round(l Layout, from book.Point) (stands []int, metres float64) {
	at := []tour.Point{{X: from.X, Y: from.Y}}
	for i := range l.Stands {
		at = append(at, tour.Point{X: l.Stands[i].At.X, Y: l.Stands[i].At.Y})
	}
	order, metres := tour.Round(at)
	for _, i := range order[1:] {
		stands = append(stands, i-1)
	}
	return stands, metres
}

// RoundOf is the walking round of a layout on a ground, from where the vehicle
// stands or, where none is drawn, from the first stand.
func RoundOf(l Layout, g Ground) (stands []int, metres float64) {
	from, ok := g.VehicleSpot()
	if !ok && len(l.Stands) > 0 {
		from = l.Stands[0].At
	}
	return Round(l, from)
}
