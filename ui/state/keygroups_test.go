package state_test

import (
	"testing"

	"lidmark/ui/state"
)

// TestEveryKeyStandsOnceUnderItsHead: no two rows below one head have the same
// key, and each command with a key and words stands on the sheet once.
func TestEveryKeyStandsOnceUnderItsHead(t *testing.T) {
	head, taken, times := "", map[string]string{}, map[string]int{}
	for _, c := range (state.State{Width: 1280, Height: 800}).KeySheet().Rows {
		if c.Keys == "" {
			if head = c.Does; head == "" {
				t.Error("a row has neither key nor head")
			}
			clear(taken)
			continue
		}
		if other := taken[c.Keys]; other != "" || head == "" {
			t.Errorf("below %q, %q stands for %q and %q", head, c.Keys, other, c.Does)
		}
		taken[c.Keys] = c.Does
		times[c.Name]++
	}
	for _, c := range state.Commands() {
		if want := c.Keys != "" && c.Does != ""; want && times[c.Name] != 1 {
			t.Errorf("%q stands on the sheet %d times", c.Name, times[c.Name])
		}
	}
}
