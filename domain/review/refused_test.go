package review_test

import (
	"math"
	"strings"
	"testing"

	"lidmark/domain/review"
)

// TestBeyondAllSenseIsSaid: more cells than any solver takes are a sentence, and
// nothing is done; a few are not.
func TestBeyondAllSenseIsSaid(t *testing.T) {
	j := judged(pen(t, signs("+", 30)), "2027-05-10 09:00")
	r := review.Of(j, handOf(math.MaxInt32+1), review.Usual(j.Course().View()))
	if why := r.This.Refused; !strings.HasPrefix(why, "The best use of what is in hand cannot be reckoned: 2147483648 ") || !strings.Contains(why, "cells") || strings.Contains(why, "supply") || !strings.HasSuffix(why, ".") {
		t.Errorf("refused: %q", why)
	}
	for i, j := range r.This.Chosen {
		if j != 0 {
			t.Errorf("nuc %d: way %d, want none", i, j)
		}
	}
	if r := review.Of(j, handOf(2), review.Usual(j.Course().View())); r.This.Refused != "" {
		t.Errorf("two cells are refused: %s", r.This.Refused)
	}
}
