package state_test

import (
	"testing"

	"lidmark/domain/calendar"
)

// TestPartKeysOnlySet: the key of a part of the day sets it, and sets it still when
// it is pressed again.
func TestPartKeysOnlySet(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening())
	for _, c := range []struct {
		command string
		want    calendar.Part
	}{{"afternoon", calendar.Afternoon}, {"afternoon", calendar.Afternoon}, {"morning", calendar.Morning}, {"morning", calendar.Morning}} {
		if w.run(c.command); w.Walk.Part != c.want {
			t.Errorf("after %q the walk was in the %v, want the %v", c.command, w.Walk.Part, c.want)
		}
	}
}
