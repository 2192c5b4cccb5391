package plan_test

import (
	"math"
	"math/bits"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Each amount is what the answer says of so many larvae in the same nucs, one graft and
// several; the fewest that are enough are among them, with too few and with more.
func TestByLarvaeIsTheAnswerOfEachAmount(t *testing.T) {
	p := plannerOf(yardOf(64), "2027-03-16 08:00")
	for name, w := range map[string]plan.Wish{
		"found":         {Queens: 20, By: day(t, "2027-06-14")},
		"out of reach":  {Queens: 40, By: day(t, "2027-06-14")},
		"larvae said":   {Queens: 20, By: day(t, "2027-06-14"), Larvae: 31, Nucs: 50, Sure: 0.8},
		"two grafts":    {Queens: 30, By: day(t, "2027-06-14"), Grafts: 2, Sure: 0.7},
		"from a graft":  {Queens: 12, By: day(t, "2027-06-14"), Graft: day(t, "2027-04-28"), Larvae: 40},
		"only a few":    {Queens: 2, By: day(t, "2027-06-14"), Sure: 0.5},
		"more than any": {Queens: 60, By: day(t, "2027-06-14")},
	} {
		a := p.Answer(w)
		all := a.ByLarvae()
		if name == "more than any" && a.Chance >= 0.005 || name != "more than any" && len(all) < 8 {
			t.Fatalf("%s: %d amounts, the answer %.3f", name, len(all), a.Chance)
		}
		fewest, grafted := 0, 0
		for i, one := range all {
			w := a.Wish
			w.Larvae = one.Larvae
			if b := p.Answer(w); b.Nucs != a.Nucs || math.Abs(b.Chance-one.Chance) > 1e-12 {
				t.Errorf("%s, %d larvae: %.6f by larvae, %.6f in %d nucs as an answer", name, one.Larvae, one.Chance, b.Chance, b.Nucs)
			}
			if one.Enough != (one.Chance >= a.Sure-1e-9) || one.Nucs > a.Nucs || one.Nucs > one.Larvae*max(1, w.Grafts) {
				t.Errorf("%s: %+v", name, one)
			}
			if i > 0 && (one.Larvae <= all[i-1].Larvae || one.Chance < all[i-1].Chance-1e-9 || one.Nucs < all[i-1].Nucs) {
				t.Errorf("%s: %+v after %+v", name, one, all[i-1])
			}
			if one.Grafted {
				grafted = one.Larvae
			}
			if one.Fewest {
				fewest = one.Larvae
			}
		}
		if len(all) > 0 && grafted != a.Larvae || (fewest > 0) != (len(all) > 0 && all[len(all)-1].Enough) {
			t.Errorf("%s: %d are grafted, not %d; %d are the fewest: %+v", name, grafted, a.Larvae, fewest, all)
		}
		if w.Larvae == 0 && fewest > 0 && (fewest != a.Larvae || all[0].Chance > 0.7*a.Sure) {
			t.Errorf("%s: %d are the fewest, not %d; clearly too few are %+v", name, fewest, a.Larvae, all[0])
		}
	}
}

// A tiny graft by all that can become of each of its larvae: ripe or not, and of those
// that have one of two nucs, laying or not.
func TestByLarvaeOfATinyGraft(t *testing.T) {
	const works, ripe, lays, nucs, want = 0.9, 0.7, 0.6, 2, 2
	r := only(plan.Taken, fixed(ripe))
	r.Link[plan.GraftWorks], r.Link[plan.LayingOfAccepted], r.Laying = fixed(works), fixed(lays), true
	a := plan.Answer{Wish: plan.Wish{Queens: want, Sure: 0.3, Larvae: 3, Nucs: nucs}, Rates: r, Batches: []plan.Batch{{Graft: plan.Graft{Larvae: 3, Nucs: nucs}}}}
	all := a.ByLarvae()
	if len(all) < 6 {
		t.Fatalf("%d amounts", len(all))
	}
	for _, one := range all {
		sum := 0.0
		for fate := range 1 << (2 * one.Larvae) { // a bit for ripe, a bit for laying, of each
			p, queens, placed := works, 0, 0
			for i := range one.Larvae {
				if fate>>i&1 == 0 {
					p *= 1 - ripe
				} else {
					p *= ripe
				}
				if fate>>(one.Larvae+i)&1 == 0 {
					p *= 1 - lays
				} else {
					p *= lays
				}
				if fate>>i&1 == 1 && placed < nucs {
					placed, queens = placed+1, queens+fate>>(one.Larvae+i)&1
				}
			}
			if queens >= want && bits.OnesCount(uint(fate)) >= want {
				sum += p
			}
		}
		near(t, "by all that can become of them", one.Chance, sum, 1e-9)
	}
}

// More larvae are never less sure, whatever the rates, and fill no more nucs than there
// are.
func TestMoreLarvaeAreNeverLessSure(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, _ := drawn(t)
		g := plan.Graft{Larvae: rapid.IntRange(1, 60).Draw(t, "larvae"), Nucs: rapid.IntRange(1, 30).Draw(t, "nucs"), Late: rapid.Float64Range(0, 1).Draw(t, "late")}
		w := plan.Wish{Queens: rapid.IntRange(1, 12).Draw(t, "want"), Sure: rapid.Float64Range(0.05, 0.99).Draw(t, "sure"), Larvae: g.Larvae, Nucs: g.Nucs}
		was := plan.ByLarvae{}
		for _, one := range (plan.Answer{Wish: w, Rates: r, Batches: []plan.Batch{{Graft: g}}}).ByLarvae() {
			if one.Chance < was.Chance-1e-9 || one.Nucs < was.Nucs || one.Nucs > g.Nucs || one.Larvae <= was.Larvae || was.Enough && (!one.Enough || one.Fewest) {
				t.Fatalf("%+v after %+v", one, was)
			}
			was = one
		}
	})
}

// Larvae said graft by graft have no amount that all of them share.
func TestNoAmountsOfGraftsOneByOne(t *testing.T) {
	p := plannerOf(yardOf(64), "2027-03-16 08:00")
	if all := p.Answer(plan.Wish{Queens: 30, By: day(t, "2027-06-14")}.WithLarvae(80, 60)).ByLarvae(); all != nil {
		t.Errorf("%+v", all)
	}
}

// BenchmarkByLarvae tells how sure a wish is by larvae, found and said. Floor: the answer
// itself, [BenchmarkAnswer], which it is not to double.
func BenchmarkByLarvae(b *testing.B) {
	p := plannerOf(yardOf(64), "2027-03-16 08:00")
	for name, larvae := range map[string]int{"found": 0, "said": 40} {
		a := p.Answer(plan.Wish{Queens: 30, By: p.View().Today() + 90, Larvae: larvae})
		b.Run(name, func(b *testing.B) {
			for b.Loop() {
				a.ByLarvae()
			}
		})
	}
	several := plan.Answer{
		Wish:    plan.Wish{Queens: 40, Sure: 0.8, Larvae: 60, Nucs: 72, Grafts: 2},
		Rates:   plan.DefaultRates(practice.Numbers{}),
		Batches: []plan.Batch{{Graft: plan.Graft{Larvae: 60, Nucs: 36}}, {Graft: plan.Graft{Larvae: 60, Nucs: 36}}},
	}
	b.Run("two grafts", func(b *testing.B) {
		for b.Loop() {
			several.ByLarvae()
		}
	})
}
