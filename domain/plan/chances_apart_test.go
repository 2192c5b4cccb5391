package plan

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/practice"
)

// Grafts that are reckoned one by one and put together give what they give in one reckoning, in
// which each has nucs of its own.
func TestGraftsPutTogether(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r := DefaultRates(practice.Numbers{})
		r.Laying, r.Virgins = rapid.Bool().Draw(t, "laying"), rapid.Bool().Draw(t, "virgins")
		var grafts []Graft
		var apart []Apart
		for range rapid.IntRange(2, 3).Draw(t, "grafts") {
			g := Graft{Larvae: rapid.IntRange(1, 30).Draw(t, "larvae"), Nucs: rapid.IntRange(0, 24).Draw(t, "nucs"), Late: rapid.SampledFrom([]float64{0, 0.1, 0.4}).Draw(t, "late"), Again: true}
			grafts, apart = append(grafts, g), append(apart, r.Apart(g))
		}
		got, want := r.Together(apart...), r.Queens(grafts...)
		for n := range 91 {
			if d := math.Abs(got.AtLeast(n) - want.AtLeast(n)); d > 1e-6 {
				t.Fatalf("%+v: %d or more differ by %.1e", grafts, n, d)
			}
		}
	})
}
