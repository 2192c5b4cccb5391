package state_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// TestCellsThatWentIntoCages are told when the walk is closed, and counted.
func TestCellsThatWentIntoCages(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("A1-A12 c4 s4")
	missing := w.Walk.Closing[0].Missing()
	w.run("close walk")
	if w.Form == nil {
		t.Fatal("no form is open")
	}
	w.State = w.State.WithField("form.caged.0", state.FieldOf("1-9"))
	caged := 0
	for _, f := range w.FormSays().Facts {
		if c, ok := f.(book.VirginCaged); ok && c.Cell && c.Batch == booktest.Batch("4") {
			caged++
		}
	}
	if caged != 9 {
		t.Fatalf("%d cells went into cages, want 9: %v", caged, w.FormSays().Answers.Mistakes)
	}
	w.run("write").save()
	if w.run("type it in"); w.Walk.Closing[0].Missing() != missing-9 {
		t.Errorf("%d are missing, want %d", w.Walk.Closing[0].Missing(), missing-9)
	}
}
