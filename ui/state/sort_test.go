package state_test

import (
	"slices"
	"testing"

	"lidmark/ui/state"

	"pgregory.net/rapid"
)

// TestEqualsStayInWalkingOrder sorts the demo season by any two columns: sorted
// again by the same ones nothing moves, and nucs of one condition stay as they
// are walked.
func TestEqualsStayInWalkingOrder(t *testing.T) {
	r := open(t).Reading()
	rapid.Check(t, func(t *rapid.T) {
		o := state.Sort{
			By: state.Column(rapid.IntRange(0, int(state.ByStores)).Draw(t, "by")), Within: state.ByPlace, Down: rapid.Bool().Draw(t, "down"),
		}
		sorted := o.Sorted(r, r.Nucs)
		if !slices.Equal(o.Sorted(r, sorted), sorted) {
			t.Fatalf("%v: sorted twice something moves", o)
		}
		last := map[any]int{}
		o.By = state.ByHolds
		for _, n := range o.Sorted(r, r.Nucs) {
			place := slices.Index(r.Nucs, n)
			if before, ok := last[n.Presumed.Condition]; ok && place < before {
				t.Fatalf("%v: %s stands behind a nuc that is walked later", o, n.Name)
			}
			last[n.Presumed.Condition] = place
		}
	})
}

// TestNamesCountOn: sorted by name N2 comes before N10.
func TestNamesCountOn(t *testing.T) {
	r := open(t).Reading()
	at := map[string]int{}
	for i, n := range (state.Sort{By: state.ByName}).Sorted(r, r.Nucs) {
		at[n.Name] = i
	}
	if at["A4"] > at["N2"] || at["N2"] > at["N10"] || at["N10"] > at["P1"] {
		t.Errorf("A4, N2, N10, P1 stand at %d, %d, %d, %d", at["A4"], at["N2"], at["N10"], at["P1"])
	}
}
