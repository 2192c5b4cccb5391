package yard_test

import (
	"fmt"
	"testing"

	"lidmark/domain/yard"
)

// Homing costs alike for each door, however many there are; the floor is the bare
// weights of four neighbours.
func BenchmarkHoming(b *testing.B) {
	for _, n := range []int{64, 640, 6400} {
		doors := make([]yard.Door, n)
		for i := range doors {
			doors[i].At.X, doors[i].At.Y = float64(i%40)*3, float64(i/40)*3
			doors[i].Bearing = float64(i % 360)
		}
		b.Run(fmt.Sprintf("doors=%d", n), func(b *testing.B) {
			for range b.N {
				yard.HomingOf(doors, virgins)
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*n), "ns/door")
		})
		b.Run(fmt.Sprintf("floor=%d", n), func(b *testing.B) {
			var sum float64
			for range b.N {
				for i := range doors {
					for k := 1; k <= 4; k++ {
						sum += virgins.Weight(&doors[i], &doors[(i+k)%n])
					}
				}
			}
			b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N*n), "ns/door")
		})
		h := yard.HomingOf(doors, virgins)
		b.Run(fmt.Sprintf("turn=%d", n), func(b *testing.B) {
			for i := range b.N {
				d := h.Doors()[i%n]
				d.Bearing += 45
				h.Set(i%n, d)
			}
		})
	}
}
