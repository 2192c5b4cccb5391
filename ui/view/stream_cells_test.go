package view

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
	"lidmark/ui/state"
)

// TestCulledCellsDoNotEmerge reckons a batch of 28 capped cells by arithmetic: with
// 3 culled 25 are left to emerge, by the rates that the demo's book tells, and only those that 16 nucs are ready for can lay.
func TestCulledCellsDoNotEmerge(t *testing.T) {
	today := calendar.Date(2027, time.May, 11)
	b := &state.Book{Season: book.NewSeason(time.LoadLocation, demo.Season(today, time.UTC))}
	r := b.On(today.At(7, 30, time.UTC), today)
	batch := r.View.BatchNumbered(5)
	if batch.Capped.N != 28 || batch.Culled != 3 || batch.Living() != 25 || r.WithoutNuc(batch.Batch) != 9 {
		t.Fatalf("batch 5 has %d capped, %d culled, %d living, %d without a nuc", batch.Capped.N, batch.Culled, batch.Living(), r.WithoutNuc(batch.Batch))
	}
	own := plan.RatesOf(r.View).In(r.Numbers())
	emerged, accepted, lay := own.Get(practice.EmergedOfCells), own.Get(practice.AcceptCell), own.Get(practice.LayingOfAccepted)
	if math.Abs(emerged-0.95) < 0.01 || math.Abs(accepted-0.80) > 0.1 || math.Abs(lay-0.875) > 0.1 {
		t.Errorf("of the demo's own cells %.3f emerge, %.3f are accepted and %.3f of those lay", emerged, accepted, lay)
	}
	want := map[string]float64{
		"virgins":               25 * emerged,
		"queens due for a look": 16 * emerged * accepted,
		"laying queens":         16 * emerged * accepted * lay,
	}
	for _, s := range streamOf(r, batch).stages {
		if n, said := want[s.word]; said && math.Abs(s.n-n) > 1e-9 {
			t.Errorf("%v %s, want %v", s.n, s.word, n)
		}
		delete(want, s.word)
	}
	if len(want) > 0 {
		t.Errorf("there is no stage of %v", want)
	}
}
