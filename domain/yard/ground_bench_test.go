package yard_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// BenchmarkFindings judges stands of one nuc 3 m apart on a ground of six features;
// its floor is what every finding rests on, where the sun stands on that day and
// which doors are near each other.
func BenchmarkFindings(b *testing.B) {
	var n practice.Numbers
	g := kind(feature(book.Hedge, 2, 1, -50, -9, 0, -10, 60, -9), feature(book.Wall, 1.5, 0.5, -9, -9, -9, 60),
		feature(book.Dwelling, 5, 0, -30, 0, -20, 0, -20, 10, -30, 10), feature(book.VehicleSpot, 0, 0, 0, 0), feature(book.Boundary, 0, 0, -60, -60, 300, -60, 300, 300, -60, 300))
	for _, count := range []int{64, 640} {
		var l yard.Layout
		for i := range count {
			l.Stands = append(l.Stands, single("A", float64(i%25)*3, float64(i/25)*3, float64(i)*90, yard.Mark{}))
		}
		b.Run(fmt.Sprint(count), func(b *testing.B) {
			for range b.N {
				yard.Findings(l, g, summer, n)
			}
		})
		b.Run(fmt.Sprint("floor ", count), func(b *testing.B) {
			for range b.N {
				g.LightOn(summer)
				yard.Alike(l, n)
			}
		})
	}
}
