package state_test

import (
	"math"
	"testing"

	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// The walk from west to east finds what comparing every pair finds.
func TestApartIsTheNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		places := make([]scene.Point, rapid.IntRange(0, 40).Draw(t, "places"))
		for i := range places {
			places[i] = scene.Point{X: rapid.Float64Range(0, 9).Draw(t, "x"), Y: rapid.Float64Range(0, 9).Draw(t, "y")}
		}
		for i, got := range state.Apart(places) {
			want := math.Inf(1)
			for j := range places {
				if d := places[i].Sub(places[j]); i != j {
					want = min(want, max(math.Abs(d.X), math.Abs(d.Y)))
				}
			}
			if got != want {
				t.Fatalf("place %d: %v, want %v", i, got, want)
			}
		}
	})
}
