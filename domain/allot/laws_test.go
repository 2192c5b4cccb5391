package allot_test

import (
	"math"
	"reflect"
	"slices"
	"testing"

	"lidmark/domain/allot"

	"pgregory.net/rapid"
)

// law checks something of problems of every kind.
func law(t *testing.T, kinds []kind, holds func(t *rapid.T, p allot.Problem, a allot.Answer)) {
	for _, k := range kinds {
		rapid.Check(t, func(t *rapid.T) {
			p := k.small(t)
			holds(t, p, solved(t, p))
		})
	}
}

func TestMoreIsNeverWorse(t *testing.T) {
	law(t, kinds, func(t *rapid.T, p allot.Problem, a allot.Answer) {
		for i := range p.Supply {
			q := p
			q.Supply = slices.Clone(p.Supply)
			q.Supply[i]++
			if b := solved(t, q); b.Worth < a.Worth-1e-9 {
				t.Fatalf("one more of supply %d: %v after %v", i+1, b.Worth, a.Worth)
			}
		}
		if p.Minutes > 0 {
			q := p
			q.Minutes++
			if b := solved(t, q); b.Worth < a.Worth-1e-9 {
				t.Fatalf("a minute more: %v after %v", b.Worth, a.Worth)
			}
		}
	})
}

// TestMoreAsSolvedAgain: without limit and unions what one more is said to be
// worth is the difference of two answers; with them that of OneMore is.
func TestMoreAsSolvedAgain(t *testing.T) {
	law(t, kinds, func(t *rapid.T, p allot.Problem, a allot.Answer) {
		for i := range p.Supply {
			q := p
			q.Supply = slices.Clone(p.Supply)
			q.Supply[i]++
			want := brute(q) - brute(p)
			if got, exact, err := allot.OneMore(p, a, i+1); !near(got, want) || !exact || err != nil {
				t.Fatalf("OneMore(%d) = %v, %v, %v, want %v", i+1, got, exact, err, want)
			}
			if p.Minutes == 0 && len(p.Unions) == 0 && !near(a.More[i], want) {
				t.Fatalf("More[%d] = %v, want %v", i, a.More[i], want)
			}
		}
		if q := p; p.Minutes > 0 {
			q.Minutes += 3
			want := brute(q) - brute(p)
			if got, exact, err := allot.MoreMinutes(p, a, 3); !near(got, want) || !exact || err != nil {
				t.Fatalf("MoreMinutes = %v, %v, %v, want %v", got, exact, err, want)
			}
		}
	})
}

// TestMoreIsNeverToldTooLow: of an answer that is not proven best, what more is worth is
// told as a bound, not less than what it brings.
func TestMoreIsNeverToldTooLow(t *testing.T) {
	law(t, kinds, func(t *rapid.T, p allot.Problem, a allot.Answer) {
		a.Exact = false
		for i := range p.Supply {
			q := p
			q.Supply = slices.Clone(p.Supply)
			q.Supply[i]++
			want := brute(q) - a.Worth
			if got, exact, _ := allot.OneMore(p, a, i+1); exact || got < want-1e-6 {
				t.Fatalf("OneMore(%d) = %v, %v, it brings %v", i+1, got, exact, want)
			}
		}
	})
}

// TestPriceOfMinutes: ten nucs alike, five minutes and a gain of 8 each.
func TestPriceOfMinutes(t *testing.T) {
	p := allot.Problem{Minutes: 30}
	for range 10 {
		p.Ways = append(p.Ways, []allot.Way{{}, {Worth: 8, Minutes: 5}})
	}
	if a := solved(t, p); a.MinuteWorth != 8.0/5 || a.Worth != 48 {
		t.Errorf("a minute is worth %v of %v, want 1.6 of 48", a.MinuteWorth, a.Worth)
	}
	p.Minutes = 50
	if a := solved(t, p); a.MinuteWorth != 0 || a.Worth != 80 {
		t.Errorf("with minutes for all one more is worth %v of %v, want 0 of 80", a.MinuteWorth, a.Worth)
	}
}

func TestScaleOfWorthDoesNotMatter(t *testing.T) {
	law(t, kinds, func(t *rapid.T, p allot.Problem, a allot.Answer) {
		factor := math.Ldexp(1, rapid.IntRange(-300, 40).Draw(t, "factor"))
		q := allot.Problem{Supply: p.Supply, Minutes: p.Minutes}
		for _, ways := range p.Ways {
			ways = slices.Clone(ways)
			for j := range ways {
				ways[j].Worth *= factor
			}
			q.Ways = append(q.Ways, ways)
		}
		for _, u := range p.Unions {
			u.Worth *= factor
			q.Unions = append(q.Unions, u)
		}
		b := solved(t, q)
		if b.Worth != a.Worth*factor || !slices.Equal(a.Chosen, b.Chosen) || !slices.Equal(a.United, b.United) {
			t.Fatalf("times %v: %+v after %+v", factor, b, a)
		}
	})
}

func TestOrderOfSubjectsDoesNotMatter(t *testing.T) {
	law(t, kinds, func(t *rapid.T, p allot.Problem, a allot.Answer) {
		q := allot.Problem{Supply: p.Supply, Minutes: p.Minutes, Ways: slices.Clone(p.Ways), Unions: slices.Clone(p.Unions)}
		slices.Reverse(q.Ways)
		for i := range q.Unions {
			u := &q.Unions[i]
			u.A, u.B = len(q.Ways)-1-u.A, len(q.Ways)-1-u.B
		}
		if b := solved(t, q); !near(b.Worth, a.Worth) {
			t.Fatalf("the other way round %v, before %v", b.Worth, a.Worth)
		}
	})
}

// TestUselessWaysChangeNothing: a way that is no better than leaving, or than
// one before it at like cost, leaves the answer as it was.
func TestUselessWaysChangeNothing(t *testing.T) {
	law(t, kinds, func(t *rapid.T, p allot.Problem, a allot.Answer) {
		q := p
		q.Ways = slices.Clone(p.Ways)
		for i, ways := range q.Ways {
			worse := ways[rapid.IntRange(0, len(ways)-1).Draw(t, "like")]
			worse.Worth -= float64(rapid.IntRange(0, 2).Draw(t, "less"))
			worse.Minutes += float64(rapid.IntRange(0, 40).Draw(t, "tenths longer")) / 10
			q.Ways[i] = append(slices.Clone(ways), worse)
		}
		if b := solved(t, q); !reflect.DeepEqual(a, b) {
			t.Fatalf("%+v after %+v", b, a)
		}
	})
}

func TestSameProblemSameAnswer(t *testing.T) {
	for name, p := range drawn(t) {
		if len(p.Ways) <= 2000 && name != "many unions" {
			if a, b := solved(t, p), solved(t, p); !reflect.DeepEqual(a, b) {
				t.Errorf("%s: another answer at the second time", name)
			}
		}
	}
}

// TestEarlierIsServedFirst: of nucs that are alike the first get what is
// scarce, in all kinds of problem.
func TestEarlierIsServedFirst(t *testing.T) {
	same := []allot.Way{{}, {Worth: 3, Takes: 1, Minutes: 4}, {Worth: 5, Takes: 2, Minutes: 4}}
	other := []allot.Way{{}, {Worth: 1, Minutes: 1}}
	p := allot.Problem{Ways: [][]allot.Way{same, other, same, same, same}, Supply: []int{1, 2}}
	want := []int{2, 1, 2, 1, 0}
	for _, p.Minutes = range []float64{0, 15, 100} {
		if a := solved(t, p); !slices.Equal(a.Chosen, want) {
			t.Errorf("of %v minutes: chosen = %v, want %v", p.Minutes, a.Chosen, want)
		}
	}
}

// TestMemoryIsSpared: a nuc like others costs no allocation of its own, any
// other three at most.
func TestMemoryIsSpared(t *testing.T) {
	cases := drawn(t)
	for name, most := range map[string]float64{"alike": 0.6, "scarce": 3, "ten thousand": 3} {
		p := cases[name]
		got := testing.AllocsPerRun(2, func() { _, _ = allot.Best(p) }) / float64(len(p.Ways))
		if got > most {
			t.Errorf("%s: %.2f allocations a nuc, want %v at most", name, got, most)
		}
	}
}
