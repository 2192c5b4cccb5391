package bee_test

import (
	"math"
	"testing"

	"lidmark/domain/bee"
)

// TestWholeCappedPhaseAt32 is the one published pair (Chuda-Mickiewicz &
// Samborski 2015, Acta Sci Pol Zootechnica 14(4):25-32): cells kept at 32 °C
// from capping on emerged 27 h later than at 34.5 °C, 16 d 1 h from the egg.
func TestWholeCappedPhaseAt32(t *testing.T) {
	middle := func(celsius, from, to float64) float64 {
		b := bee.Batch{Graft: graft, Cells: 1, Log: []bee.Reading{{At: at(from), Celsius: celsius}, {At: at(to), Celsius: celsius}}}
		return b.Clock(defaults).Middle().Sub(graft).Hours()
	}
	warm := middle(34.5, 0, 400)
	for _, c := range []struct {
		what              string
		celsius, from, to float64
		want              float64
	}{
		{"the whole capped phase", 32, 0, 400, 27},
		{"logged from the capping on only", 32, 102, 400, 27},
		{"half a phase of 220 h", 32, 102, 212, 13.5},
		{"before the capping", 32, 0, 102, 0},
		{"colder than was ever tried", 25, 0, 400, 27},
		{"half a degree too warm", 35, 0, 400, -5.4},
		{"hotter still", 39, 0, 400, -5.4},
	} {
		if got := middle(c.celsius, c.from, c.to) - warm; math.Abs(got-c.want) > 0.01 {
			t.Errorf("%s at %v °C: %.3f h later, want %v", c.what, c.celsius, got, c.want)
		}
	}
}

func TestLogWithOneReadingCoversNothing(t *testing.T) {
	b := bee.Batch{Graft: graft, Cells: 24}
	plain := b.Clock(defaults).Middle()
	b.Log = []bee.Reading{{At: at(120), Celsius: 32}}
	if got := b.Clock(defaults).Middle(); !got.Equal(plain) {
		t.Errorf("one reading moved the middle from %v to %v", plain, got)
	}
}
