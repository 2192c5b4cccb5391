package state_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/ui/state"
)

// TestOnlyTheFirstLineIsNarrow: what stands beside the first line of a task takes room from
// that one only, and no word is lost.
func TestOnlyTheFirstLineIsNarrow(t *testing.T) {
	const title = "Count the take first, then collect about 34 ripe cells of batch 6: into nucs or cages"
	for _, first := range []float64{60, 180, 300, 2000} {
		lines := state.BesideFirst(title, first, 440)
		if len(lines) > 3 || first == 2000 && len(lines) != 1 {
			t.Errorf("%v: %q", first, lines)
		}
		if !slices.Equal(strings.Fields(strings.Join(lines, " ")), strings.Fields(title)) {
			t.Errorf("%v: %q loses words", first, lines)
		}
	}
}
