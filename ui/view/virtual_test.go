package view_test

import (
	"testing"

	"lidmark/ui/state"
)

// TestWhatIsOutOfSightCostsNothing draws 2,000 nucs and 10,000: the wall, the
// table and the lids make no more marks for those that do not show.
func TestWhatIsOutOfSightCostsNothing(t *testing.T) {
	few, many := big(t, 2_000), big(t, 10_000)
	for _, pane := range []state.Pane{state.Lids, state.Wall, state.Table} {
		for _, heads := range []state.Heads{state.StandHeads, state.ConditionHeads} {
			var allocs [2]float64
			for i, s := range []state.State{few, many} {
				s.Room, s.Pane, s.Heads = state.Yard, pane, heads
				s.Selection = state.Select(s.Reading().Nucs[0].Nuc.Nuc.Subject())
				window(s)
				allocs[i] = testing.AllocsPerRun(5, func() { window(s) })
			}
			if allocs[1] > allocs[0]*1.1+50 {
				t.Errorf("pane %d, heads %d: %.0f allocations for 2,000 nucs, %.0f for 10,000", pane, heads, allocs[0], allocs[1])
			}
		}
	}
}
