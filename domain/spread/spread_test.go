package spread_test

import (
	"testing"

	"lidmark/domain/spread"
)

// TestOver: every index once, however many there are and however they are taken.
func TestOver(t *testing.T) {
	for _, pieces := range []int{spread.Heavy, 3, spread.Light} {
		for _, n := range []int{0, 1, 255, 256, 257, 512, 10_007} {
			times := make([]int, n)
			spread.Over(n, pieces, func(i int) { times[i]++ })
			for i, k := range times {
				if k != 1 {
					t.Fatalf("of %d by %d, index %d was done %d times", n, pieces, i, k)
				}
			}
		}
	}
}
