package state_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// TestTheBatchRoomNamesTheWorkThatIsDue: its main button begins the record of it, with
// what it is to be done at selected; where nothing is due it takes the nucs.
func TestTheBatchRoomNamesTheWorkThatIsDue(t *testing.T) {
	said := map[string]bool{}
	base := keeper(t)
	for _, b := range base.Reading().Batches() {
		w := keeper(t)
		w.Selection = state.Select(b.Batch.Subject())
		w.run("batch room")
		work := w.BatchWork()
		said[work.Command] = true
		if work.Command != "batch work" {
			continue
		}
		w.run(work.Command)
		if w.Form == nil || w.Fill != state.BatchFill {
			t.Fatalf("batch %d, %s: form %+v, fill %v", b.Number, work.Word, w.Form, w.Fill)
		}
		for sub := range w.Selection.All() {
			id, nuc := sub.Nuc()
			if sub != b.Batch.Subject() && (!nuc || w.Reading().Nuc(book.NucID(id)).Holds.Batch != b.Batch) {
				t.Errorf("batch %d, %s: %v is none of its nucs", b.Number, work.Word, sub)
			}
		}
	}
	if !said["batch work"] || !said["late day"] {
		t.Errorf("the demo season has no batch of each kind: %v", said)
	}
}

// TestTheClockOfABatchIsInOrderOfTime whatever the numbers are.
func TestTheClockOfABatchIsInOrderOfTime(t *testing.T) {
	w := keeper(t)
	for day := calendar.Day(-20); day < 30; day += 5 {
		w.Day = w.Today() + day
		for _, b := range w.Reading().Batches() {
			steps := w.Reading().ClockOf(b)
			if !slices.IsSortedFunc(steps, func(a, b state.ClockStep) int { return a.At.Compare(b.At) }) {
				t.Errorf("batch %d: %+v", b.Number, steps)
			}
		}
	}
}

// TestCellsNowAddUp: before a batch emerges its room counts the cells that live, and
// says where each of them is; once it is out it counts none.
func TestCellsNowAddUp(t *testing.T) {
	w := keeper(t)
	said := 0
	for day := calendar.Day(-20); day <= 0; day++ {
		w.Day = w.Today() + day
		r := w.Reading()
		for _, b := range r.Batches() {
			now := r.CellsNow(b)
			if now == "" {
				continue
			}
			said++
			if r.Course.Emerges(b.Batch).Before(r.View.On()) {
				t.Errorf("%v, batch %d is out: %q", w.Day, b.Number, now)
			}
			var all, sum int
			head, parts, _ := strings.Cut(now, ": ")
			fmt.Sscanf(head, "%d", &all)
			for part := range strings.SplitSeq(parts, ", ") {
				n := 0
				fmt.Sscanf(part, "%d", &n)
				sum += n
			}
			if all != b.Living() || sum != all {
				t.Errorf("%v, batch %d: %q, %d live", w.Day, b.Number, now, b.Living())
			}
		}
	}
	if said < 5 {
		t.Fatalf("only %d batches have capped cells", said)
	}
}
