package plan_test

import (
	"testing"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// What cells cost that are out when nucs are given them goes from nothing before the first is
// out to what the table has for virgins of some days, by hand (0.80 − 0.63) × 0.875 each; left
// together hardly more than one virgin is there, the others are destroyed.
func TestWhatIsOutCostsWhatVirginsCost(t *testing.T) {
	n, graft, cells := practice.Numbers{}, time.Date(2027, 5, 3, 9, 0, 0, 0, time.UTC), 20
	c := bee.Batch{Graft: graft, Cells: cells}.Clock(n)
	cost := func(by func(bee.Clock, time.Time) plan.Emerged, at time.Time) float64 {
		return plan.OfEmerged(by(c, at), n)
	}
	all := float64(cells) * (0.80 - 0.63) * 0.875
	near(t, "in cages long before", cost(plan.CagedBy, c.Hard().AddDate(0, 0, -2)), 0, 1e-3)
	near(t, "in cages long after", cost(plan.CagedBy, c.Middle().AddDate(0, 0, 5)), all, 1e-3)
	if young := cost(plan.CagedBy, c.Middle().Add(20*time.Hour)); young <= 0 || young > 0.8*all {
		t.Errorf("in cages within a day %.3f, of some days %.3f", young, all)
	}
	if few := cost(plan.LooseBy, c.Middle().AddDate(0, 0, 5)); few < 0.99*all/float64(cells) || few > 2*all/float64(cells) {
		t.Errorf("together long after %.3f, of one %.3f", few, all/float64(cells))
	}
	last := 0.0
	for h := range 200 {
		now := cost(plan.CagedBy, graft.AddDate(0, 0, 9).Add(time.Duration(h)*time.Hour))
		if now < last-1e-9 {
			t.Fatalf("after %d h %.4f, before it %.4f", h, now, last)
		}
		last = now
	}
}
