package tour

import (
	"cmp"
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"pgregory.net/rapid"
)

// The neighbours of each point are those that going through all pairs finds, on points
// strewn evenly, in heaps and along a line.
func TestNearestAreThoseOfAllPairs(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		chance := rand.New(rand.NewPCG(rapid.Uint64().Draw(t, "seed"), 1))
		at := make([]Point, rapid.IntRange(2, 200).Draw(t, "points"))
		heaps, flat := rapid.IntRange(1, 12).Draw(t, "heaps"), rapid.Float64Range(0, 1).Draw(t, "flat")
		for i := range at {
			heap := float64(chance.IntN(heaps))
			at[i] = Point{X: 7*heap + chance.Float64(), Y: flat * (math.Mod(heap*5, 3) + chance.Float64())}
		}
		k := rapid.IntRange(1, 12).Draw(t, "k")
		distance := func(i, j int) float64 { return math.Hypot(at[i].X-at[j].X, at[i].Y-at[j].Y) }
		for i, got := range nearest(at, k, distance) {
			if want := nearestOfAll(len(at), i, k, distance); !slices.Equal(got, want) {
				t.Fatalf("%d of %d points, %v: %v, of all pairs %v", k, len(at), at[i], got, want)
			}
		}
	})
}

// The nearest lies two squares away where one in the same square lies in its far corner.
func TestTheNearestTwoSquaresAway(t *testing.T) {
	at := []Point{{2.01, 0.05}, {2.95, 0.9}, {0.95, 0.05}, {0, 0}, {0, 1}, {4, 0}, {4, 1}, {0.1, 0.9}} // squares of a metre
	distance := func(i, j int) float64 { return math.Hypot(at[i].X-at[j].X, at[i].Y-at[j].Y) }
	if got := nearest(at, 1, distance)[0]; !slices.Equal(got, []int32{2}) {
		t.Errorf("nearest to the first is %v", got)
	}
}

func nearestOfAll(n, i, k int, distance func(i, j int) float64) (all []int32) {
	for j := range n {
		if j != i {
			all = append(all, int32(j))
		}
	}
	slices.SortFunc(all, func(a, b int32) int {
		return cmp.Or(cmp.Compare(distance(i, int(a)), distance(i, int(b))), cmp.Compare(a, b))
	})
	return all[:min(k, len(all))]
}
