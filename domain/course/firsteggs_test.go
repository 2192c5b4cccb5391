package course

import (
	"math"
	"testing"

	"lidmark/domain/practice"
)

// TestFirstEggsAreCountedOnce: followed from the day after a cell emerged, those who lay their
// first egg are those of a nuc that is followed whole, and none of them is told twice.
func TestFirstEggsAreCountedOnce(t *testing.T) {
	m := NewModel(practice.Numbers{})
	day := m.Day(4, usualLoss)
	var cell Belief
	cell.p[given.cell] = 1
	if cell.After(day) != m.Emerged() {
		t.Error("a queen is another on the day after her cell emerged")
	}
	b, all := m.Emerged(), m.Emerged()
	var first float64
	for range 20 { // fewer days than a laying queen is followed by the day
		b, all = b.After(day), all.After(day)
		if lays, told := all.p[given.lays], b.FirstEggs(); math.Abs(lays-told) > 1e-12 {
			t.Fatalf("%v lay their first egg, %v are told", lays, told)
		} else {
			first += told
		}
		if left := b.sum(given.lays, layDays); left != 0 {
			t.Fatalf("%v are left to be told again", left)
		}
	}
	if first < 0.5 {
		t.Errorf("of fair days %v lay", first)
	}
}
