package plan_test

import (
	"math"
	"testing"

	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// The grafted and the planned grafts of one wish are joined as if their rates had nothing in
// common, see [plan.Planner.Wished]. Cells in nucs share with a planned graft only what becomes of
// those in nucs; here two halves share all their rates, and of a keeper of whom nothing is
// known yet, which is the most there can be: that moves a chance by 4 of 100 at most,
// and one at which a promise holds by 1.5.
func TestHalvesJoinedApart(t *testing.T) {
	r := plan.DefaultRates(practice.Numbers{})
	half := plan.Graft{Larvae: 40, Nucs: 24, Again: true}
	together, apart := r.Queens(half, half), r.Queens(half).With(r.Queens(half))
	most, kept := 0.0, 0.0
	for n := range together.Most() + 1 {
		off := math.Abs(together.AtLeast(n) - apart.AtLeast(n))
		most = max(most, off)
		if apart.AtLeast(n) >= 0.85 {
			kept = max(kept, off)
		}
	}
	if most > 0.04 || kept > 0.015 || most < 0.01 {
		t.Errorf("off by %.4f at most, by %.4f where a promise holds", most, kept)
	}
}
