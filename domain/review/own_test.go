package review_test

import (
	"math"
	"testing"
)

// TestWhatIsNotDrawnIsTold: a way that is best with fewer laying queens than leaving it, or
// that gains a tenth of a queen besides, says what makes it worth more; no other way does.
func TestWhatIsNotDrawnIsTold(t *testing.T) {
	r, _ := morning(t)
	nucs, ways := said(r)
	for name, want := range map[string]string{
		"T1": "own queen counts 0.6: 79 as 47", "C3": "own queen counts 0.6: 79 as 47", "Q3": "own queen counts 0.6: 56 as 34",
		"J4": "its bees and box count 0.07 more", "X2": "its bees count 0.15 more", "Z1": "its bees count 0.21 more", "N1": "", "H2": "", "L2": "",
	} {
		if got := r.Outweighs(nucs[name], ways[name]); got != want {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
	whole := func(p float64) int { return int(math.Round(100 * p)) }
	for i, n := range r.Nucs {
		w, left := n.Ways[r.This.Chosen[i]], n.Ways[0]
		told := w.Worth > left.Worth && (whole(w.Lays) < whole(left.Lays) || w.Worth-left.Worth-(w.Lays-left.Lays) >= 0.1)
		if told != (r.Outweighs(n, w) != "") {
			t.Errorf("%s: %s, %d laying and worth %.2f, %d and %.2f if left: said is %q", n.Name, r.Title(w), whole(w.Lays), w.Worth, whole(left.Lays), left.Worth, r.Outweighs(n, w))
		}
	}
}
