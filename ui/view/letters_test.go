package view_test

import (
	"testing"

	"pgregory.net/rapid"

	"lidmark/ui/paint"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestRoomIsKeptForEveryLetter: what is reckoned for a text is never less than what the
// painter measures, and hardly more, in every weight.
func TestRoomIsKeptForEveryLetter(t *testing.T) {
	p, err := paint.New()
	if err != nil {
		t.Fatal(err)
	}
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringOfN(rapid.RuneFrom([]rune("abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ0123456789 ,.:;-–()%/°²·×äöüéßÅ→…’“”")), 1, 60, -1).Draw(t, "text")
		weight := rapid.SampledFrom([]scene.Weight{scene.Regular, scene.Medium, scene.SemiBold, scene.Bold}).Draw(t, "weight")
		is, reckoned := p.Width(text, 14, weight), state.Reckoner{}.Width(text, 14, weight)
		if reckoned < is-0.2 || reckoned > is*1.08+3.5 {
			t.Fatalf("%q: %.1f reckoned, %.1f wide", text, reckoned, is)
		}
	})
}
