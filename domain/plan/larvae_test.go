package plan_test

import (
	"slices"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/plan"
)

// Larvae are read as they are said, one number or one a graft.
func TestLarvaeAreReadAsTheyAreSaid(t *testing.T) {
	for text, want := range map[string][]int{"48": {48}, "80,60": {80, 60}, "80 + 60": {80, 60}, " 80, 60; 40 ": {80, 60, 40}} {
		if got, ok := plan.ReadLarvae(text); !ok || !slices.Equal(got, want) {
			t.Errorf("%q is read as %v (%v), want %v", text, got, ok, want)
		}
	}
	for _, text := range []string{"", " + ", "eighty", "80-60", "8.5", "1,2,3,4,5,6,7,8,9"} {
		if got, ok := plan.ReadLarvae(text); ok {
			t.Errorf("%q is read as %v", text, got)
		}
	}
	rapid.Check(t, func(t *rapid.T) {
		all := rapid.SliceOfN(rapid.IntRange(1, 2000), 1, plan.MostGrafts).Draw(t, "larvae")
		w := plan.Wish{Larvae: 7, Then: plan.Later{7, 7}}.WithLarvae(all...)
		if got := w.Said(); !slices.Equal(got, all) {
			t.Fatalf("%v said, kept as %v", all, got)
		}
		if got, ok := plan.ReadLarvae(plan.LarvaeSaid(all)); !ok || !slices.Equal(got, all) {
			t.Fatalf("%v read back as %v", all, got)
		}
		if len(all) > 1 && w.Grafts != len(all) || len(all) == 1 && w.Grafts != 0 {
			t.Fatalf("%v: %d grafts", all, w.Grafts)
		}
	})
	if w := (plan.Wish{Larvae: 7}).WithLarvae(); w.Said() != nil {
		t.Errorf("nobody said how many: %v", w.Said())
	}
}
