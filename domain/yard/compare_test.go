package yard

import (
	"math"
	"testing"
)

// TestNineInTenLieBetween: of a hundred trials that come to 1, 2 … 100, in no order, the
// five least lie below 6 and the five most above 95; 40 are better by more than 60, and
// those of the other way round are the same with the sign turned.
func TestNineInTenLieBetween(t *testing.T) {
	var all, back []float64
	for i := range 100 {
		x := float64(i*37%100 + 1) // 37 and 100 have no common factor: each once
		all, back = append(all, x), append(back, -x)
	}
	d := differ(all, 60, 0.9)
	if d.Low != 6 || d.High != 95 || math.Abs(d.Mean-50.5) > 1e-9 || math.Abs(d.Better-0.4) > 1e-9 || d.Worse != 0 {
		t.Errorf("%+v", d)
	}
	b := differ(back, 60, 0.9)
	if b.Low != -95 || b.High != -6 || math.Abs(b.Worse-0.4) > 1e-9 || b.Better != 0 {
		t.Errorf("the other way round %+v", b)
	}
}

// TestWhatIsNoMoreThanCounts is no difference, on either side, and a share that is just
// enough is said.
func TestWhatIsNoMoreThanCounts(t *testing.T) {
	d := differ([]float64{-2, -2, 2, 2}, 2, 0.5)
	if d.Better != 0 || d.Worse != 0 || d.Said() != 0 {
		t.Errorf("no more than counts: %+v", d)
	}
	if d := differ([]float64{2, 2, 3, 3}, 2, 0.5); d.Said() != 1 {
		t.Errorf("half of the trials are enough, and half are better: %+v", d)
	}
	if d := differ([]float64{-3, -3, 2, 2}, 2, 0.5); d.Said() != -1 {
		t.Errorf("half of the trials are enough, and half are worse: %+v", d)
	}
}
