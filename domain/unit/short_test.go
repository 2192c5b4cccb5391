package unit_test

import (
	"math"
	"strconv"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/unit"
)

// What is typed in US units and kept in metric ones is shown as it was typed.
func TestShortIsAsTyped(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		typed, _ := strconv.ParseFloat(strconv.FormatFloat(rapid.Float64Range(0.001, 1e5).Draw(t, "typed"), 'g', rapid.IntRange(1, 6).Draw(t, "figures"), 64), 64)
		u := rapid.SampledFrom(units).Draw(t, "unit")
		back, _ := unit.US.Of(unit.US.Back(typed, u), u)
		if got := unit.Short(back); got != typed {
			t.Fatalf("%v typed is %v, shown as %v", typed, back, got)
		}
	})
}

func TestShortIsThreeFigures(t *testing.T) {
	for metric, want := range map[float64]float64{6.7: 15, 3: 6.71, 0: 0} {
		v, _ := unit.US.Of(metric, "m/s")
		if got := unit.Short(v); got != want {
			t.Errorf("%v m/s is shown as %v mph, want %v", metric, got, want)
		}
	}
	for _, v := range []float64{math.MaxFloat64, -math.MaxFloat64, math.SmallestNonzeroFloat64, math.Inf(1)} {
		if got := unit.Short(v); math.IsNaN(got) {
			t.Errorf("%v is shown as NaN", v)
		}
	}
	for text, want := range map[string]string{"fed 347.287 g": "fed 12.25 oz", "14.9875 m/s": "33.53 mph", "1.234 l": "1.304 qt"} {
		if got := unit.US.Say(text); got != want {
			t.Errorf("Say(%q) = %q, want %q", text, got, want)
		}
	}
}
