package plan_test

import (
	"testing"

	"lidmark/domain/plan"
)

// A reader is told whole hundredths, so what both are told as is what is compared: 89.5 of 100
// are told as 90, and 90 are as sure as 90.
func TestUnsureAsFarAsIsTold(t *testing.T) {
	for _, c := range []struct {
		chance, wished float64
		unsure         bool
	}{
		{0.9, 0.9, false},
		{0.895, 0.9, false},
		{0.8949, 0.9, true},
		{0.91, 0.9, false},
		{0.89, 0.9, true},
		{0.904, 0.9049, false},
		{0.904, 0.906, true},
		{1, 1, false},
		{0, 0, false},
	} {
		if got := plan.Unsure(c.chance, c.wished); got != c.unsure {
			t.Errorf("%v of %v wished: unsure is %v", c.chance, c.wished, got)
		}
	}
}

func TestASentenceBeginsWithACapital(t *testing.T) {
	for s, want := range map[string]string{"": "", "batch 3": "Batch 3", "überall": "Überall", "éclosion": "Éclosion", "č 4": "Č 4", "30 larvae": "30 larvae", "Rook": "Rook"} {
		if got := plan.Sentence(s); got != want {
			t.Errorf("%q begins as %q, want %q", s, got, want)
		}
	}
}
