package main

import (
	"testing"

	"lidmark/ui/state"
)

// TestAReviewIsReckonedBesideTheWindow: it is asked for on entering the room, and
// again after an amount was changed.
func TestAReviewIsReckonedBesideTheWindow(t *testing.T) {
	w := newWorld(t, t.TempDir())
	w.do(state.OpenDemo{})
	w.settle()
	for _, command := range []string{"review", "review amounts", "as in book"} {
		w.send(state.Ran{Command: command})
		if command == "review amounts" {
			w.send(state.Keyed{Key: "Right"})
		}
		w.desk.reviews.wait(func() {})
		w.settle()
		if sheet, now := w.state.ReviewSheet(); sheet == nil || !now {
			t.Errorf("after %s the review is not that of what is in hand", command)
		}
	}
}
