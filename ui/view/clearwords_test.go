package view_test

import (
	"strings"
	"testing"

	"lidmark/ui/state"
)

// TestReasonsSayNoMoreThanColumns: what the column beside says is no reason where there is
// another one.
func TestReasonsSayNoMoreThanColumns(t *testing.T) {
	s := open(t)
	s.Room, s.Pane, s.Width, s.Height, s.Day = state.Yard, state.Table, 1280, 4000, today+9
	for _, w := range texts(t, window(s), s.Size()) {
		if strings.Contains(w.Text.Text, "; due for a look") || strings.HasPrefix(w.Text.Text, "due for a look …") {
			t.Errorf("%q", w.Text.Text)
		}
	}
}
