package state_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// TestPartKeysOnlySet: the key of a part of the day sets it, and sets it still when
// it is pressed again.
func TestPartKeysOnlySet(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening())
	for _, c := range []struct {
		command string
		want    calendar.Part
	}{{"afternoon", calendar.Afternoon}, {"afternoon", calendar.Afternoon}, {"morning", calendar.Morning}, {"morning", calendar.Morning}, {"evening", calendar.Evening}} {
		if w.run(c.command); w.Walk.Part != c.want {
			t.Errorf("after %q the walk was in the %v, want the %v", c.command, w.Walk.Part, c.want)
		}
	}
}

// TestTheEveningIsAPartOfTheDay: its key is the one that on the route ticks all
// but some, and what is typed before the hour that stands for it is in its row
// at once.
func TestTheEveningIsAPartOfTheDay(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening())
	w.Now = saturday.At(18, 10, zone)
	w.press("E", state.Alt).types("n s5")
	if row := w.row("A1"); row.Open() || w.at() != "A2" {
		t.Errorf("A1 is open %v, the walk stands at %s", row.Open(), w.at())
	}
	for e := range w.Book.Season.Entries() {
		if f, ok := e.Fact.(book.Looked); ok && f.Nuc == booktest.Nuc("A1") && e.At.Part != calendar.Evening {
			t.Errorf("A1 was looked at in the %v", e.At.Part)
		}
	}
}
