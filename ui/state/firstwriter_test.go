package state_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// TestWhoStandsFirstWrites in a new book of several people, as its step says, and is
// not asked for.
func TestWhoStandsFirstWrites(t *testing.T) {
	w := bookless(t)
	for _, f := range [][2]string{
		{state.StartYard, "Hill"},
		{state.StartZone, "Europe/Berlin"},
		{"start.row0.names", "A1-A12"},
		{"start.row0.per", "1"},
		{"start.row0.kind", "mini"},
		{"start.person0", "Wilma Sat and Sun 9-18"},
		{"start.person1", "Tom"},
		{state.StartBatch, "none"},
	} {
		w.typed(f[0], f[1])
	}
	for range state.StepCount + 1 {
		w.run("start on")
	}
	for _, e := range w.effects {
		f, ok := e.(state.Found)
		if !ok {
			continue
		}
		season := book.NewSeason(time.LoadLocation, f.Entries)
		w.send(state.Opened{Book: &state.Book{Season: season, Path: f.Path}, IDs: book.NewIDs(now, season, [32]byte{1})})
		if w.Pen.Writer != "Wilma" {
			t.Errorf("%q writes", w.Pen.Writer)
		}
		return
	}
	t.Fatalf("no book was begun: step %v, %q", w.Start.Step, w.Founding().Wrong(w.Founding().WrongIn(w.Start.Step)))
}
