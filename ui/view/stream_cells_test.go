package view

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/ui/state"
)

// TestCulledCellsDoNotEmerge reckons a batch of 28 capped cells by arithmetic: with
// 3 culled 25 are left to emerge, and only those that 16 nucs are ready for can lay.
func TestCulledCellsDoNotEmerge(t *testing.T) {
	today := calendar.Date(2027, time.May, 11)
	b := &state.Book{Season: book.NewSeason(time.LoadLocation, demo.Season(today, time.UTC))}
	r := b.On(today.At(7, 30, time.UTC), today)
	batch := r.View.BatchNumbered(5)
	if batch.Capped.N != 28 || batch.Culled != 3 || batch.Living() != 25 || r.WithoutNuc(batch.Batch) != 9 {
		t.Fatalf("batch 5 has %d capped, %d culled, %d living, %d without a nuc", batch.Capped.N, batch.Culled, batch.Living(), r.WithoutNuc(batch.Batch))
	}
	want := map[string]float64{
		"virgins":               25 * 0.95,
		"queens due for a look": 16 * 0.95 * 0.80,
		"laying queens":         16 * 0.95 * 0.80 * 0.875,
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
