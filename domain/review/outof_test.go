package review

import (
	"math"
	"testing"

	"pgregory.net/rapid"
)

// TestOutOf: of two nucs at one half, none, one or two lay with a quarter, a
// half and a quarter; so four in five lie between 0 and 2.
func TestOutOf(t *testing.T) {
	if mean, low, high := outOf([]float64{0.5, 0.5}); mean != 1 || low != 0 || high != 2 {
		t.Errorf("%v, %v to %v", mean, low, high)
	}
	if mean, low, high := outOf([]float64{1, 1, 0}); mean != 2 || low != 2 || high != 2 {
		t.Errorf("%v, %v to %v", mean, low, high)
	}
	if mean, low, high := outOf(nil); mean != 0 || low != 0 || high != 0 {
		t.Errorf("%v, %v to %v", mean, low, high)
	}
}

// TestOutOfMany: the normal that stands for many is as the exact count, within one.
func TestOutOfMany(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(0.05, 0.95).Draw(t, "chance")
		chances := make([]float64, exactUpTo+1)
		for i := range chances {
			chances[i] = p
		}
		_, low, high := outOf(chances)
		many := counts(chances)
		if math.Abs(low-quantile(many, 0.1)) > 1 || math.Abs(high-quantile(many, 0.9)) > 1 {
			t.Fatalf("%v to %v, exactly %v to %v", low, high, quantile(many, 0.1), quantile(many, 0.9))
		}
	})
}
