package yard_test

import (
	"math"
	"testing"

	"lidmark/domain/practice"
	"lidmark/domain/yard"
)

// Four points more at a wrong door raise a loss of a tenth by four points, which is
// a factor of 1.4: worked by hand.
func TestFactor(t *testing.T) {
	for wrong, want := range map[float64]float64{0.04: 1, 0.08: 1.4, 0.19: 2.5, 0.01: 0.7, 0: 0.6} {
		if got := yard.Factor(wrong, practice.Numbers{}); math.Abs(got-want) > 1e-12 {
			t.Errorf("wrong door %v: factor %v, want %v", wrong, got, want)
		}
	}
}
