package view

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"lidmark/ui/scene"
)

// The walk from west to east finds what comparing every pair finds.
func TestNearestIsTheNearest(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		spots := make([]spot, rapid.IntRange(0, 40).Draw(t, "spots"))
		for i := range spots {
			spots[i].at = scene.Point{X: rapid.Float64Range(0, 9).Draw(t, "x"), Y: rapid.Float64Range(0, 9).Draw(t, "y")}
		}
		for i, got := range nearest(spots) {
			want := math.Inf(1)
			for j := range spots {
				if d := spots[i].at.Sub(spots[j].at); i != j {
					want = min(want, max(math.Abs(d.X), math.Abs(d.Y)))
				}
			}
			if got != want {
				t.Fatalf("spot %d: %v, want %v", i, got, want)
			}
		}
	})
}
