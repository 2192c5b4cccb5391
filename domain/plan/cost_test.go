package plan_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/plan"
)

// Of 96 larvae for 64 nucs the one in ten worst is owed first to the graft, which fails
// outright one in twelve; where no graft does, to the mating.
func TestTheFailureThatCostsMost(t *testing.T) {
	one := plan.Graft{Larvae: 96, Nucs: 64}
	for name, r := range map[string]plan.Rates{"book empty": laying(), "rates known": laying().Known()} {
		c, ok := r.Dearest(0.90, one)
		if !ok || c.Link != plan.GraftWorks || c.String() == "" {
			t.Errorf("%s: %q costs most (%v), want the graft", name, c, ok)
		}
		if as := r.Queens(one).Promise(0.90); c.With != as || c.Without < as+5 {
			t.Errorf("%s: %d with it, %d without, %d may be promised", name, c.With, c.Without, as)
		}
		r.Link[plan.GraftWorks] = fixed(1)
		if c, ok := r.Dearest(0.90, one); !ok || c.Link != plan.LayingOfAccepted || c.Without <= c.With {
			t.Errorf("%s, no graft fails: %q costs most, %d without it and %d with it", name, c, c.Without, c.With)
		}
	}
	if c, ok := only(plan.Taken, fixed(0.8)).Dearest(0.90, one); ok {
		t.Errorf("%q costs most where nothing goes worse than usual", c)
	}
}

// No link costs more than the one that is told, and every one has words.
func TestNoLinkCostsMore(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		r, grafts := drawn(t)
		sure := rapid.Float64Range(0.3, 0.95).Draw(t, "sure")
		c, ok := r.Dearest(sure, grafts...)
		if ok && (c.Without <= c.With || c.Fails() == "") {
			t.Fatalf("%v %q: %d without it, %d with it", c.Link, c, c.Without, c.With)
		}
		if len(grafts) > 1 {
			return // looked for by rates that are integrated roughly
		}
		as := r.Queens(grafts...).Promise(sure)
		for _, l := range []plan.Link{plan.GraftWorks, plan.Taken, plan.RipeOfTaken, plan.EmergedOfRipe, plan.LayingOfAccepted} {
			usual := r
			usual.Link[l] = plan.Rate{Default: r.Link[l].Mean(), Weight: math.Inf(1)}
			if l == plan.GraftWorks {
				usual.Link[l] = fixed(1)
			}
			if n := usual.Queens(grafts...).Promise(sure); n > max(as, c.Without) {
				t.Fatalf("%s costs %d, %s (%v) is told, which costs %d", l, n-as, c, ok, c.Without-c.With)
			}
		}
	})
}
