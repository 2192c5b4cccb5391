package yard_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/yard"
)

func TestParseRows(t *testing.T) {
	for text, want := range map[string]yard.Rows{
		"4 × 4, 6 m, 5 m": {4, 4, 6, 5},
		"4x4; 6; 5":       {4, 4, 6, 5},
		"2 x 8 3":         {2, 8, 3, 3},
		"1 × 12, 2,5 m":   {1, 12, 2.5, 2.5},
		"3*2, 1.5, 2.25":  {3, 2, 1.5, 2.25},
	} {
		if got, err := yard.ParseRows(text); got != want || err != nil {
			t.Errorf("%q is %+v, %v; want %+v", text, got, err, want)
		}
	}
	for _, text := range []string{"", "4", "4 × 4", "0 × 4, 6", "4 × 4, 0", "four by four"} {
		if got, err := yard.ParseRows(text); err == nil {
			t.Errorf("%q is %+v", text, got)
		}
	}
}

func TestStandsAreSetInRows(t *testing.T) {
	var l yard.Layout
	var pick yard.Pick
	for i := range 5 {
		id := booktest.Stand(fmt.Sprint("S", i))
		l.Stands, pick = append(l.Stands, yard.Stand{ID: id}), append(pick, id)
	}
	got, err := l.Rowed(pick, book.Point{X: 16, Y: 27}, yard.Rows{Rows: 2, InRow: 3, Along: 6, Down: 5})
	if err != nil || got.Stands[0].At != (book.Point{X: 16, Y: 27}) || got.Stands[2].At != (book.Point{X: 28, Y: 27}) || got.Stands[4].At != (book.Point{X: 22, Y: 22}) {
		t.Errorf("they stand so: %+v, %v", got.Stands, err)
	}
	if _, err := l.Rowed(pick, book.Point{}, yard.Rows{Rows: 2, InRow: 2, Along: 6, Down: 5}); err == nil {
		t.Error("five stands stand on four places")
	}
}
