package plan_test

import (
	"testing"

	"lidmark/domain/plan"
)

// TestNothingIsCertain: a share in words is never none and never all.
func TestNothingIsCertain(t *testing.T) {
	for share, want := range map[float64]string{
		0: "under 1 of 100", 0.004: "under 1 of 100", 0.006: "1 of 100", 0.5: "50 of 100",
		0.994: "99 of 100", 0.996: "over 99 of 100", 1: "over 99 of 100",
	} {
		if got := plan.OfHundred(share); got != want {
			t.Errorf("%g: %q, want %q", share, got, want)
		}
	}
}
