package yard_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

func TestRoom(t *testing.T) {
	n := practice.Numbers{} // 8 m from dwellings, 3 m from tracks and the boundary
	g := yard.Ground{Features: []book.FeatureDrawn{
		{What: book.Boundary, Points: []book.Point{at(0, 0), at(60, 0), at(60, 40), at(0, 40)}},
		{What: book.Dwelling, Points: []book.Point{at(50, 30), at(60, 30), at(60, 40), at(50, 40)}},
		{What: book.Track, Width: 2, Points: []book.Point{at(0, 20), at(30, 20)}},
		{What: book.ColdHollow, Points: []book.Point{at(40, 5), at(50, 5), at(50, 12), at(40, 12)}},
		{What: book.Hedge, Points: []book.Point{at(10, 30), at(20, 30)}},
	}}
	room := g.Room(n)
	for _, tt := range []struct {
		x, y float64
		has  bool
		why  string
	}{
		{30, 10, true, "open ground"},
		{-1, 10, false, "outside"},
		{2, 10, false, "near the boundary"},
		{3.1, 10, true, "3 m from it"},
		{43, 32, false, "near the dwelling"},
		{41, 32, true, "further"},
		{20, 23, false, "near the track"},
		{20, 24.1, true, "further"},
		{45, 8, false, "in the hollow"},
		{15, 30, false, "in the hedge"},
		{15, 31, true, "beside it"},
	} {
		if got := room.Has(at(tt.x, tt.y)); got != tt.has {
			t.Errorf("%s: %v", tt.why, got)
		}
	}
	if low, high, ok := room.Bounds(); !ok || low != at(0, 0) || high != at(60, 40) {
		t.Errorf("bounds %v %v", low, high)
	}
	open := new(yard.Ground).Room(n)
	if _, _, ok := open.Bounds(); ok || !open.Has(at(1e6, -1e6)) {
		t.Error("an open ground has bounds")
	}
}
