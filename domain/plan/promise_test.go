package plan_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// The promise of 40 queens, by figures that were simulated independently: with the
// means of the rules taken as the keeper's own, one graft in twelve failing and 11
// points of luck at take and mating, 96 larvae and 64 nucs bring 40 laying with 0.60
// to 0.70, about 0.91 were there no luck; two grafts of 80 and 60 with 72 nucs 0.82 to
// 0.90; and 23 to 26 may be promised at 90 %.
//
// These figures count a cell's acceptance of 0.80 from the cell on, her emergence in
// it: with another 0.95 before it there would be 0.79 without luck, and 0.80 of two
// grafts. Of a keeper whose book tells nothing the rates are not known, only guessed;
// his chances are lower, and he may promise less.
func TestAPromiseOf40(t *testing.T) {
	r := laying()
	known := r.Known()
	without := known
	without.Link[plan.GraftWorks] = fixed(1)
	for l := range without.Link {
		without.Link[l].Luck = 0
	}
	one, two := plan.Graft{Larvae: 96, Nucs: 64}, []plan.Graft{{Larvae: 80, Nucs: 72}, {Larvae: 60}}
	near(t, "no luck", without.Queens(one).AtLeast(40), 0.91, 0.015)
	near(t, "one graft", known.Queens(one).AtLeast(40), 0.65, 0.05)
	near(t, "two grafts", known.Queens(two...).AtLeast(40), 0.86, 0.04)
	if n := known.Queens(one).Promise(0.90); n < 23 || n > 26 {
		t.Errorf("%d may be promised at 90 %%, want 23 to 26", n)
	}
	near(t, "one graft, book empty", r.Queens(one).AtLeast(40), 0.615, 0.01)
	near(t, "two grafts, book empty", r.Queens(two...).AtLeast(40), 0.785, 0.01)
	if n := r.Queens(one).Promise(0.90); n < 18 || n > 22 {
		t.Errorf("%d may be promised at 90 %% by an empty book, want about 20", n)
	}
}

// Promises fall with the certainty that is wanted.
func TestThePromiseTable(t *testing.T) {
	all := laying().Queens(plan.Graft{Larvae: 96, Nucs: 64}).Promises()
	if len(all) != 3 || all[0].Sure != 0.90 || all[1].Sure != 0.75 || all[2].Sure != 0.50 {
		t.Fatalf("promises %v", all)
	}
	if !(0 < all[0].Queens && all[0].Queens < all[1].Queens && all[1].Queens < all[2].Queens) {
		t.Errorf("promises %v do not rise", all)
	}
}

// How many larvae and what so many give are one: so many are enough, one less is not.
func TestLarvaeReadsTheChancesBackwards(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, _ := drawn(t)
		want, nucs := rapid.IntRange(1, 12).Draw(t, "want"), rapid.IntRange(0, 20).Draw(t, "nucs")
		sure := rapid.Float64Range(0.05, 0.99).Draw(t, "sure")
		s := r.Larvae(want, sure, nucs)
		gives := func(n int) float64 { return r.Queens(plan.Graft{Larvae: n, Nucs: nucs}).AtLeast(want) }
		if s.Limit == plan.NoLimit {
			if gives(s.Larvae) < sure-1e-6 || s.Larvae > want && gives(s.Larvae-1) > sure {
				t.Fatalf("%d larvae: %v, one less %v", s.Larvae, gives(s.Larvae), gives(s.Larvae-1))
			}
			return
		}
		if gives(600) > sure {
			t.Fatalf("no number is said to be enough (%v), 600 are: %v", s.Limit, gives(600))
		}
		if s.Most >= want {
			t.Fatalf("%d is said to be too much, %d could be promised", want, s.Most)
		}
	})
}

// Wishes that cannot be kept get the reason and what is nearest.
func TestAWishBeyondAllNumbers(t *testing.T) {
	r := laying()
	few := r.Larvae(40, 0.75, 50)
	if few.Limit != plan.NucsLimit || few.Nucs <= 50 || few.Most >= 40 || few.Most < 20 {
		t.Errorf("40 of 50 nucs: %v, with %d nucs, at most %d", few.Limit, few.Nucs, few.Most)
	}
	if again := r.Larvae(40, 0.75, few.Nucs); again.Limit != plan.NoLimit {
		t.Errorf("with the %d nucs it names: %v", few.Nucs, again.Limit)
	}
	if less := r.Larvae(few.Most, 0.75, 50); less.Limit != plan.NoLimit {
		t.Errorf("the %d it names: %v", few.Most, less.Limit)
	}
	risky := r.Larvae(10, 0.95, 64)
	if risky.Limit != plan.GraftLimit || risky.Nucs != 0 || risky.Most != 0 {
		t.Errorf("0.95 of one graft: %v, %d nucs, at most %d", risky.Limit, risky.Nucs, risky.Most)
	}
	if one, two := risky.Chances.AtLeast(10), risky.Second.AtLeast(10); two < 0.95 || one > 0.92 {
		t.Errorf("one graft %v, two %v", one, two)
	}
	if s := r.Larvae(590, 0.9, 900); s.Limit != plan.LarvaeLimit || s.Nucs != 0 {
		t.Errorf("590 queens of one graft: %v, %d nucs", s.Limit, s.Nucs)
	}
	if s := r.Larvae(0, 0.9, 10); s.Larvae != 0 || s.Limit != plan.NoLimit {
		t.Errorf("nothing wanted: %+v", s)
	}
	for l := plan.NucsLimit; l <= plan.LarvaeLimit; l++ {
		if l.String() == "" {
			t.Errorf("limit %d has no words", l)
		}
	}
}

// What raises a chance most comes first, and each row is what it says.
func TestRaises(t *testing.T) {
	r := laying()
	g := plan.Graft{Larvae: 96, Nucs: 64}
	before := r.Queens(g).AtLeast(40)
	all := r.Raises(40, 0.1, g)
	if len(all) != 6 {
		t.Fatalf("%d rows", len(all))
	}
	for i, c := range all {
		t.Logf("%s: %.3f (%+.3f)", c, c.Chance, c.Gain)
		near(t, c.String(), c.Rates.Queens(c.Grafts...).AtLeast(40), c.Chance, 1e-12)
		near(t, c.String()+", gain", c.Gain, c.Chance-before, 1e-12)
		if i > 0 && c.Chance > all[i-1].Chance {
			t.Errorf("%s stands behind %s", c, all[i-1])
		}
		if better := c.Gain > 0; better == (c.Change == plan.VirginsForCells) {
			t.Errorf("%s: %+.3f", c, c.Gain)
		}
	}
	if last := all[4].Change; last != plan.MoreLarvae && last != plan.BetterTake {
		t.Errorf("%s stands last of what helps: with cells over, more of them help least", last)
	}
	r.Virgins = true
	if n := len(r.Raises(40, 0, g)); n != 5 {
		t.Errorf("%d rows for who gives virgins, want 5", n)
	}
	if r.Raises(40, 0) != nil {
		t.Error("no graft was raised")
	}
}

// The stages of a batch, for the bars that say why: each is the one before, thinned.
func TestAlong(t *testing.T) {
	for _, virgins := range []bool{false, true} {
		r := plan.DefaultRates(practice.Numbers{})
		r.Virgins = virgins
		all := r.Along(plan.Graft{Larvae: 96, Nucs: 64, Late: 0.1})
		for i, s := range all {
			if s.String() == "" || s.Low() > s.High() || s.Chances.AtLeast(0) != 1 {
				t.Errorf("%s: %d to %d", s, s.Low(), s.High())
			}
			if s.Link == plan.Grafted || s.Link == plan.Placed {
				continue
			}
			near(t, s.String(), s.Chances.Mean(), all[i-1].Chances.Mean()*s.Share, 1e-6)
			if s.Link != plan.InTime && len(s.Used()) == 0 {
				t.Errorf("%s stands on no number", s)
			}
		}
		if last := all[len(all)-1]; last.Link != plan.InTime || all[0].Chances.Mean() != 96 {
			t.Errorf("from %v to %s", all[0].Chances.Mean(), last)
		}
	}
}

// Counts have figures for any number asked.
func TestChancesOfNothing(t *testing.T) {
	var c plan.Chances
	if c.Exactly(0) != 1 || c.Exactly(-1) != 0 || c.AtLeast(0) != 1 || c.AtLeast(1) != 0 || c.Mean() != 0 || c.Quantile(0.5) != 0 || c.Promise(0.9) != 0 {
		t.Error("no graft, and not none for sure")
	}
	if q := laying().Queens(); q.Most() != 0 {
		t.Errorf("no graft gives up to %d", q.Most())
	}
	if math.Abs(laying().Queens(plan.Graft{Larvae: 10}).Exactly(0)-1) > 1e-12 {
		t.Error("queens without nucs")
	}
}
