package review_test

import (
	"math"
	"testing"
)

// TestFewerLayingIsExplained: a way that is best with fewer laying queens than leaving it
// says what makes it worth more; no other way does.
func TestFewerLayingIsExplained(t *testing.T) {
	r, _ := morning(t)
	nucs, ways := said(r)
	for name, want := range map[string]string{
		"T1": "own queen counts 0.6", "C3": "own queen counts 0.6", "J4": "its bees and box are worth more", "Z1": "", "Q3": "", "N1": "", "H2": "",
	} {
		if got := r.Outweighs(nucs[name], ways[name]); got != want {
			t.Errorf("%s: %q, want %q", name, got, want)
		}
	}
	whole := func(p float64) int { return int(math.Round(100 * p)) }
	for i, n := range r.Nucs {
		w := n.Ways[r.This.Chosen[i]]
		if fewer := whole(w.Lays) < whole(n.Ways[0].Lays); fewer != (r.Outweighs(n, w) != "") {
			t.Errorf("%s: %s, %d laying, %d if left: said is %q", n.Name, r.Title(w), whole(w.Lays), whole(n.Ways[0].Lays), r.Outweighs(n, w))
		}
	}
}
