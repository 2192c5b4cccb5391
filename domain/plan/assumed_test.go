package plan_test

import (
	"slices"
	"testing"

	"lidmark/domain/plan"
)

// What is short is assumed; what nobody counted, what is enough and what is short by less than
// anybody is told are not.
func TestWhatIsShortIsAssumed(t *testing.T) {
	needs := []plan.Need{
		{Good: plan.DroneColonies, Amount: 8, Have: 3, Known: true},
		{Good: plan.Starters, Amount: 2, Have: 2, Known: true},
		{Good: plan.StarterBees, Amount: 3.6, Have: 3.6 - 1e-9, Known: true},
		{Good: plan.Finishers, Amount: 4},
		{Good: plan.Nucs, Amount: 20, Have: 19, Known: true},
	}
	if got, want := plan.Assumed(needs), []string{plan.DroneColonies.String(), plan.Nucs.String()}; !slices.Equal(got, want) {
		t.Errorf("assumed: %q, want %q", got, want)
	}
	if got := plan.Assumed(nil); len(got) != 0 {
		t.Errorf("of no needs %q are assumed", got)
	}
}
