package view_test

import (
	"strings"
	"testing"

	"lidmark/ui/state"
)

// TestARefusalIsReadWhole: whatever stands in the foot gives way to why a command was
// refused.
func TestARefusalIsReadWhole(t *testing.T) {
	s := open(t)
	s, _ = state.Update(s, state.Resized{Width: 1280, Height: 800})
	const why = "The whole batch fills the room once you select a batch, or a nuc that holds one: now nothing of that kind is chosen, so choose it on the map"
	s.Note = state.Note{Text: why, Bad: true}
	for _, w := range texts(t, window(s), s.Size()) {
		if w.Text.Text == why {
			return
		}
		if strings.HasPrefix(w.Text.Text, "The whole batch f") {
			t.Errorf("cut to %q", w.Text.Text)
		}
	}
	t.Error("the refusal is not in the foot")
}
