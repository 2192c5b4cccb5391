package plan_test

import (
	"testing"

	"lidmark/domain/plan"
)

// A wish too near gets the first graft before which everything can still be done; a
// graft of which the keeper says the day stays on it.
func TestTheFirstPossibleGraft(t *testing.T) {
	p := plannerOf(yardOf(64), "2027-05-11 08:00")
	a := p.Possible(plan.Wish{Queens: 40, By: day(t, "2027-05-20")})
	if a.InTime || a.Nearest <= day(t, "2027-05-20") {
		t.Errorf("in time %v, nearest %s", a.InTime, a.Nearest)
	}
	for _, r := range a.Batches[0].Rungs {
		if r.Step.Done() && r.Step != plan.DroneComb && r.By < p.View().Today() {
			t.Errorf("%s was to be done by %s", r.Step, r.By)
		}
	}
	said := plan.Wish{Queens: 40, By: day(t, "2027-05-20"), Graft: day(t, "2027-05-12")}
	if got := p.Possible(said).Batches[0].Day; got != said.Graft {
		t.Errorf("grafted on %s, the keeper said %s", got, said.Graft)
	}
}
