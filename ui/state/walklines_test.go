package state

import (
	"testing"

	"pgregory.net/rapid"

	"lidmark/ui/scene"
)

// TestAPlanHasTheLinesItIsBrokenInto: counted without a list they are those of the text
// as it is drawn.
func TestAPlanHasTheLinesItIsBrokenInto(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		word := rapid.SampledFrom([]string{"cell", "from", "batch", "5", "break", "down", "own", "cells,", "entrance", "to", "1.7", "cm²,", "a"})
		plan := ""
		for range rapid.IntRange(1, 14).Draw(t, "words") {
			plan += " " + word.Draw(t, "word")
		}
		plan = plan[1:]
		room := rapid.Float64Range(90, 260).Draw(t, "room")
		want := len(scene.Wrap(Reckoner{}, plan, WalkSize, scene.Regular, room)) - 1
		if got := (State{}).moreLines(plan, room); got != want {
			t.Fatalf("%q in %.0f dp: %d more lines, drawn %d", plan, room, got, want)
		}
	})
}
