package state_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// TestEveryBatchIsReached: with keys and with the wheel every batch comes into
// sight, whatever is chosen, and where there is no more that is said.
func TestEveryBatchIsReached(t *testing.T) {
	for name, down := range map[string]state.Msg{"keys": state.Keyed{Mods: state.Alt, Key: "PageDown"}, "wheel": state.Wheeled{DY: state.LaneHeight}} {
		s := open(t)
		s.Room, s.Width, s.Height = state.Yard, 1280, 800
		l := s.Layout()
		s.Selection = state.Select(s.Lanes(l)[0].Batch.Subject())
		all := s.Present().Batches()
		if n := len(s.Lanes(l)); n < 2 || n >= len(all) {
			t.Fatalf("%d of %d batches have a lane", n, len(all))
		}
		if m, ok := down.(state.Wheeled); ok {
			m.At = l.Lanes.Centre()
			down = m
		}
		for range all {
			s, _ = state.Update(s, state.Ran{Command: "lanes up"})
		}
		seen := map[book.BatchID]bool{}
		for range all {
			above, below := s.LanesHidden(l)
			if got := above + below + len(s.Lanes(l)); got != len(all) {
				t.Fatalf("%s: %d batches above, %d below and %d in sight, want %d", name, above, below, len(s.Lanes(l)), len(all))
			}
			for _, b := range s.Lanes(l) {
				seen[b.Batch] = true
			}
			s, _ = state.Update(s, down)
		}
		if len(seen) != len(all) {
			t.Errorf("%s: %d of %d batches come into sight", name, len(seen), len(all))
		}
		if c, _ := state.CommandNamed("lanes down"); c.Reason(s) == "" {
			t.Errorf("%s: below the last batch there are more", name)
		}
	}
}
