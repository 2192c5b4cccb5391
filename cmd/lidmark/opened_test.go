package main

import (
	"testing"

	"lidmark/ui/state"
)

// A demo begun anew is another book: what was sent from the window of the one
// before is not written in it.
func TestADeedOfTheDemoBeforeIsNotOfThisOne(t *testing.T) {
	w := newWorld(t, t.TempDir())
	w.do(state.OpenDemo{})
	w.settle()
	before := w.state
	w.do(state.OpenDemo{})
	w.settle()
	all := w.entries()
	late, effects := before, []state.Effect(nil)
	for _, r := range "A1e" {
		late, _ = state.Update(late, state.Wrote{Rune: r})
		late, _ = state.Update(late, state.Keyed{Key: string(r)})
	}
	late, effects = state.Update(late, state.Keyed{Key: "Enter"})
	sent := 0
	for _, e := range effects {
		if deed, ok := e.(state.Write); ok {
			sent++
			w.desk.Do(late, deed, w.tell)
		}
	}
	w.settle()
	if sent != 1 {
		t.Fatalf("%d deeds were sent, want 1", sent)
	}
	if got := w.desk.opened().now().Season.Len(); got != all {
		t.Errorf("the new demo has %d entries, want %d", got, all)
	}
	w.types("A1e⏎")
	w.settle()
	if got := w.desk.opened().now().Season.Len(); got == all {
		t.Error("what is sent from its own window is not written")
	}
}
