package tour_test

import (
	"fmt"
	"math/rand/v2"
	"testing"

	"lidmark/domain/tour"
)

// BenchmarkRound finds rounds through points strewn over a square; BenchmarkLength,
// its floor, is the bare length of one. The metric tells how long they are for the
// law of long rounds, 0.7124·√(n·area) (Johnson & McGeoch 1997).
func BenchmarkRound(b *testing.B) {
	for _, n := range []int{64, 640, 6400} {
		at := strewn(n)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			var length float64
			for range b.N {
				_, length = tour.Round(at)
			}
			b.ReportMetric(length/(0.7124*float64(n)), "law")
		})
	}
}

func BenchmarkLength(b *testing.B) {
	for _, n := range []int{64, 640, 6400} {
		at := strewn(n)
		order, _ := tour.Round(at)
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			for range b.N {
				tour.Length(order, func(i, j int) float64 { return (at[i].X - at[j].X) + (at[i].Y - at[j].Y) })
			}
		})
	}
}

// strewn are n points on n square metres.
func strewn(n int) []tour.Point {
	chance := rand.New(rand.NewPCG(1, uint64(n)))
	side := 1.0
	for side*side < float64(n) {
		side++
	}
	at := make([]tour.Point, n)
	for i := range at {
		at[i] = tour.Point{X: side * chance.Float64(), Y: side * chance.Float64()}
	}
	return at
}
