package bee_test

import (
	"fmt"
	"testing"

	"lidmark/domain/bee"
)

// TestEveryValueHasItsWord walks the closed sets: each value is called
// something, no two the same, and what lies beyond them has no word.
func TestEveryValueHasItsWord(t *testing.T) {
	for _, set := range []struct {
		name   string
		values []fmt.Stringer
		beyond fmt.Stringer
	}{
		{"colours", []fmt.Stringer{bee.White, bee.Yellow, bee.Red, bee.Green, bee.Blue}, bee.NoColour},
		{"signs", []fmt.Stringer{bee.SeenOpen, bee.SeenCapped, bee.TipBare, bee.NoneOut, bee.OneOut}, bee.OneOut + 1},
		{"steps", []fmt.Stringer{bee.ToFinisher, bee.CountTake, bee.CellsCapped, bee.HandsOff, bee.CellsIn, bee.Emergence}, bee.Emergence + 1},
		{"ways", []fmt.Stringer{bee.Wait, bee.Cool, bee.Place, bee.PlaceAndCage, bee.Cage, bee.HandOn}, bee.HandOn + 1},
	} {
		words := map[string]bool{}
		for _, v := range set.values {
			if w := v.String(); w == "" || words[w] {
				t.Errorf("%s: %#v is called %q, empty or twice", set.name, v, w)
			} else {
				words[w] = true
			}
		}
		if set.beyond != nil && set.beyond.String() != "" {
			t.Errorf("%s: %#v is called %q, want nothing", set.name, set.beyond, set.beyond)
		}
	}
}
