package allot_test

import (
	"math"
	"slices"
	"testing"

	"lidmark/domain/allot"

	"pgregory.net/rapid"
)

// TestBestAsTried: of small problems the answer is that of trying every
// choice, and it is proven.
func TestBestAsTried(t *testing.T) {
	for _, k := range kinds {
		rapid.Check(t, func(t *rapid.T) {
			p := k.small(t)
			a := solved(t, p)
			if want := brute(p); !near(a.Worth, want) {
				t.Fatalf("%+v: worth = %v, want %v by trying (%+v)", k, a.Worth, want, a)
			}
			if !a.Exact || a.Bound != a.Worth {
				t.Fatalf("%+v: not proven: %+v", k, a)
			}
		})
	}
}

// solved is the answer, which is held to keep every limit and to count right.
func solved(t interface{ Fatalf(string, ...any) }, p allot.Problem) allot.Answer {
	a, err := allot.Best(p)
	if err != nil {
		t.Fatalf("Best: %v", err)
	}
	var done []allot.Way
	united := map[int]bool{}
	for _, i := range a.United {
		u := p.Unions[i]
		if united[u.A] || united[u.B] || a.Chosen[u.A] != -1 || a.Chosen[u.B] != -1 {
			t.Fatalf("union %d takes what another takes: %+v", i, a)
		}
		united[u.A], united[u.B] = true, true
		done = append(done, u.Way)
	}
	for i, j := range a.Chosen {
		if (j < 0) != united[i] {
			t.Fatalf("subject %d has way %d, united: %v", i, j, united[i])
		}
		if j >= 0 {
			done = append(done, p.Ways[i][j])
		}
	}
	left, worth, minutes := append([]int{0}, p.Supply...), 0.0, 0.0
	for _, w := range done {
		worth, minutes = worth+w.Worth, minutes+w.Minutes
		if left[w.Takes]--; w.Takes > 0 && left[w.Takes] < 0 {
			t.Fatalf("more than there is of supply %d: %+v", w.Takes, a)
		}
	}
	if p.Minutes > 0 && minutes > p.Minutes+1e-3 {
		t.Fatalf("%v minutes of %v: %+v", minutes, p.Minutes, a)
	}
	if !near(worth, a.Worth) || !near(minutes, a.Minutes) {
		t.Fatalf("worth %v and minutes %v are told as %v and %v", worth, minutes, a.Worth, a.Minutes)
	}
	if a.Bound < a.Worth || slices.Min(append(a.More, a.MinuteWorth)) < 0 {
		t.Fatalf("bound %v below worth %v, or a price below 0: %+v", a.Bound, a.Worth, a)
	}
	return a
}

func near(a, b float64) bool { return math.Abs(a-b) <= 1e-7*max(1, math.Abs(a), math.Abs(b)) }
