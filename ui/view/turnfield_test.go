package view_test

import (
	"slices"
	"testing"

	"lidmark/ui/state"
)

// An empty field shows what it goes by while it has the keys too.
func TestAnEmptyFieldShowsWhatItGoesBy(t *testing.T) {
	s := planning(inPlan(t, "season", "turn of a nuc"), state.Resized{Width: 1280, Height: 1000})
	if s.InField() != state.TurnGap {
		t.Fatalf("the keys are in %q", s.InField())
	}
	for _, want := range []string{"0", s.SeasonSheet().Turn.Last.ShortFrom(s.Today())} {
		if !slices.ContainsFunc(texts(t, window(s), s.Size()), func(w written) bool { return w.Text.Text == want }) {
			t.Errorf("%q is not in sight", want)
		}
	}
}
