package state_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// toLate is a window with the late day of the demo season.
func toLate(t *testing.T) *window {
	w := keeper(t).press("L", state.Alt)
	if w.Fill != state.LateFill {
		t.Fatalf("Alt+L: fill %v", w.Fill)
	}
	return w
}

// TestCellsAreGivenOnALateDay: the main button gives cells to the nucs that are
// ready, as many as there are, and they are gone from the box.
func TestCellsAreGivenOnALateDay(t *testing.T) {
	w := toLate(t)
	before, _ := w.FilledLate()
	n := min(before.Cells, len(before.Ready))
	w.run("give ready")
	if w.Form == nil || w.Selection.Len() != n {
		t.Fatalf("form %+v about %d of %d", w.Form, w.Selection.Len(), n)
	}
	w.run("write").settle()
	for w.Asked != nil {
		w.press("Enter").settle()
	}
	after, ok := w.FilledLate()
	if !ok || after.Cells != before.Cells-n || w.Fill != state.LateFill {
		t.Errorf("%d cells are left of %d, %d were given", after.Cells, before.Cells, n)
	}
}

// TestAVirginWalks: the hour is asked, the sign is chosen already, and the late day
// says that she has walked.
func TestAVirginWalks(t *testing.T) {
	w := toLate(t)
	w.run("virgin walked")
	if w.Form == nil || w.Typed("form.sign") != book.SeenWalking.String() {
		t.Fatalf("form %+v says %q", w.Form, w.Typed("form.sign"))
	}
	w.run("write").settle()
	if l, ok := w.FilledLate(); !ok || !l.Walking {
		t.Errorf("the late day knows of no virgin: %+v", l.LateCard)
	}
}

// TestCellsAreCagedOnALateDay: they are cells, not virgins, and count as caged.
func TestCellsAreCagedOnALateDay(t *testing.T) {
	w := toLate(t)
	before, _ := w.FilledLate()
	w.run("cage cells").run("write").settle()
	fates := state.FateOf(w.Reading().View.Batch(before.Batch))
	if w.Form != nil || fates[1].N != before.Cells {
		t.Errorf("form %+v; %+v of %d cells", w.Form, fates, before.Cells)
	}
	if l, ok := w.FilledLate(); ok && l.Cells > 0 {
		t.Errorf("%d cells are still together", l.Cells)
	}
}

// TestTheIncubatorIsReadInTheBatchRoom: a reading is added without leaving it.
func TestTheIncubatorIsReadInTheBatchRoom(t *testing.T) {
	w := toLate(t)
	batch := w.FillOf
	w.press("Enter", state.Alt)
	id, _ := batch.Batch()
	before := len(w.Reading().View.Batch(id).Log)
	w.run("read incubator")
	if w.Fill != state.BatchFill || w.Form == nil || w.Layout().Card.Empty() {
		t.Fatalf("fill %v, form %+v", w.Fill, w.Form)
	}
	w.run("write").settle()
	if got := len(w.Reading().View.Batch(id).Log); got != before+1 || w.Fill != state.BatchFill {
		t.Errorf("%d readings, there were %d; fill %v", got, before, w.Fill)
	}
}

// TestTheFatesOfABatchAreAllItsCells: dead and lost ones as well.
func TestTheFatesOfABatchAreAllItsCells(t *testing.T) {
	b := &book.Batch{Culled: 1, Dead: 2, Lost: 4, Out: 8}
	for _, f := range state.FateOf(b) {
		if want := map[string]int{"lost": 7, "out": 8}[f.Word]; want != 0 && f.N != want {
			t.Errorf("%s: %d, want %d", f.Word, f.N, want)
		}
	}
}
