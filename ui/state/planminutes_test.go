package state_test

import (
	"math"
	"testing"

	"lidmark/ui/state"
)

// A wish that is made the plan takes the same minutes as before: its steps in the book are
// not counted beside it.
func TestAPlannedBatchIsNotCountedTwice(t *testing.T) {
	w := planner(t)
	before := w.answer()
	after := w.run("plan it").settled().answer()
	if after == before || w.Planning.Batch.IsZero() {
		t.Fatal("nothing was planned, or nothing reckoned anew")
	}
	if len(before.Days) == 0 || len(after.Days) != len(before.Days) {
		t.Fatalf("%d days, %d before", len(after.Days), len(before.Days))
	}
	for i, d := range after.Days {
		if was := before.Days[i]; d.Day != was.Day || d.Wish != was.Wish || math.Abs(d.Book-was.Book) > 0.5 {
			t.Errorf("%v: %.0f min of the plan and %.0f in the book; before it was planned %.0f and %.0f", d.Day, d.Wish, d.Book, was.Wish, was.Book)
		}
	}
	if book := minutesInBook(w.run("new plan").settled().answer()); book <= minutesInBook(before) {
		t.Errorf("a batch beside it: %.0f min in the book, as if nothing were planned", book)
	}
}

func minutesInBook(p *state.PlanSheet) (sum float64) {
	for _, d := range p.Days {
		sum += d.Book
	}
	return sum
}
