package bee_test

import (
	"math"
	"testing"

	"lidmark/domain/bee"
)

// BenchmarkFirstOut is the clock of a batch and its hour of 1 %.
// BenchmarkFirstOutFloor is the least that can cost: the normal curves of one
// evaluation of the chance (31 nodes of the shift, two curves each).
func BenchmarkFirstOut(b *testing.B) {
	batch := bee.Batch{Graft: graft, Cells: 24}
	for b.Loop() {
		batch.Clock(defaults).FirstOut(0.01)
	}
}

func BenchmarkFirstOutFloor(b *testing.B) {
	sum := 0.0
	for b.Loop() {
		for i := range 62 {
			sum += math.Erfc(float64(i-31) / 8)
		}
	}
	if math.IsNaN(sum) {
		b.Fatal("no number")
	}
}

// BenchmarkWays values a late day; its floor is the three loss sums it needs.
func BenchmarkWays(b *testing.B) {
	late := bee.Late{Clock: lateBatch().Clock(defaults), Now: saturday, Next: monday18, Fit: 14, Takers: 6}
	for b.Loop() {
		late.Ways()
	}
}

func BenchmarkWaysFloor(b *testing.B) {
	c := lateBatch().Clock(defaults)
	for b.Loop() {
		c.Loose()
		c.Loose()
		c.Cooled(saturday, 32)
	}
}
