package spread_test

import (
	"testing"

	"lidmark/domain/spread"
)

// TestOver: every index once, however many there are.
func TestOver(t *testing.T) {
	for _, n := range []int{0, 1, spread.Pieces - 1, spread.Pieces, spread.Pieces + 1, 2 * spread.Pieces, 10_007} {
		times := make([]int, n)
		spread.Over(n, func(i int) { times[i]++ })
		for i, k := range times {
			if k != 1 {
				t.Fatalf("of %d, index %d was done %d times", n, i, k)
			}
		}
	}
}
