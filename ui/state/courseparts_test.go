package state_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"lidmark/ui/state"
)

// TestPartsAsDrawn: whatever a nuc may hold, a strip shows no part that is too narrow to
// be seen, loses nothing, and shows every part that is wide enough as it is, but for the
// greatest, which may hold what no other does.
func TestPartsAsDrawn(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		var parts state.CourseParts
		sum := 0.0
		for i := range parts {
			parts[i] = rapid.SampledFrom([]float64{0, 0.004, 0.01, 0.02, 0.05, 0.3, 1}).Draw(t, "part")
			sum += parts[i]
		}
		if sum == 0 {
			return
		}
		for i := range parts {
			parts[i] /= sum
		}
		least := rapid.Float64Range(0.005, 0.08).Draw(t, "least")
		drawn := parts.Drawn(least)
		all := 0.0
		for i, share := range drawn {
			all += share
			if share != 0 && share < least {
				t.Fatalf("%v is drawn as %v, less than %v", state.CoursePart(i), share, least)
			}
			if parts[i] >= least && share != parts[i] && state.CoursePart(i) != parts.Most() {
				t.Fatalf("%v of %v is drawn as %v", state.CoursePart(i), parts[i], share)
			}
		}
		if math.Abs(all-1) > 1e-9 {
			t.Fatalf("%v of %v is drawn", all, parts)
		}
	})
}
