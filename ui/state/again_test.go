package state_test

import (
	"testing"

	"lidmark/ui/state"
)

// A command does the same however often it was done before: the map comes back on every
// second press, and a menu opens again.
func TestCommandsDoTheSameAgain(t *testing.T) {
	w := planner(t)
	for _, text := range []float64{1, 1.5} {
		w.send(state.Resized{Width: 1280, Height: 800})
		w.Text, w.Pane, w.Part = text, state.Split, state.MainPart
		for i, want := range []state.Pane{state.Map, state.Split, state.Map, state.Split, state.Map} {
			if w.press("1", state.Alt); w.Room != state.Yard || w.Pane != want {
				t.Errorf("text %v, press %d: pane %v, want %v", text, i+1, w.Pane, want)
			}
		}
		for _, key := range []string{"2", "3", "4"} {
			if w.press(key, state.Alt).press("1", state.Alt); w.Pane != state.Map {
				t.Errorf("text %v: after Alt+%s Alt+1 gives pane %v", text, key, w.Pane)
			}
		}
	}
	w.run("layers")
	open := w.Menu
	for range 2 {
		if w.run("layers"); w.Menu != state.NoMenu {
			t.Error("the menu stays open")
		}
		if w.run("layers"); w.Menu != open {
			t.Error("the menu does not open again")
		}
	}
}
