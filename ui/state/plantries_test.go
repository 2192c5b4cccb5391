package state_test

import (
	"strings"
	"testing"

	"lidmark/ui/state"
)

// The same wish is kept once, what is for unlike queens says so, and what stands on the plan
// is compared with it.
func TestWhatIsKeptSaysWhatItIsFor(t *testing.T) {
	w := planner(t).run("keep try")
	c, _ := state.CommandNamed("keep try")
	if why := c.Reason(w.State); why == "" {
		t.Error("the same wish can be kept twice")
	}
	if _, is := w.OnPlan(); is {
		t.Error("nothing is planned, and compared with")
	}
	w.run("laying by").settled().run("keep try")
	if len(w.Planning.Tries) != 2 {
		t.Fatalf("%d are kept: %s", len(w.Planning.Tries), c.Reason(w.State))
	}
	one, _ := w.Planning.Tries[0].Wanted(w.Today())
	two, _ := w.Planning.Tries[1].Wanted(w.Today())
	if one == two || !strings.HasSuffix(one, "ready") || !strings.HasSuffix(two, "laying") {
		t.Errorf("they are for %q and %q", one, two)
	}
	w.run("plan it").settled()
	sheet := w.answer()
	on, is := w.OnPlan()
	if _, now := w.PlanTries(); !is || on.Graft != now.Graft || on.Larvae != now.Larvae || on.Nucs != now.Nucs || on.Promise != now.Promise || int(on.Hours+0.5) != int(now.Hours+0.5) {
		t.Errorf("on the plan stands %+v, just planned was %+v", on, now)
	}
	w.run("day earlier").settled()
	if again, _ := w.OnPlan(); again != on || w.answer().Batches[0].Day == sheet.Batches[0].Day {
		t.Errorf("with another wish the plan is told as %+v", again)
	}
}

// Where a graft so early that another follows if it fails is surer than the wish, it is offered,
// and taken it offers no more; not where so early fewer nucs are free than the wish has.
func TestASecondGraftIfTheFirstFailsIsOffered(t *testing.T) {
	w := planner(t)
	if sheet := w.answer(); sheet.Again.Chance > 0 {
		t.Errorf("of %d nucs some come free later, and all are offered before: %+v", sheet.Nucs, sheet.Again)
	}
	sheet := w.typedInto(state.WishQueens, "22").typedInto(state.WishNucs, "40").answer()
	if sheet.Again.Chance <= sheet.Chance || sheet.Again.Other <= sheet.Again.Day {
		t.Fatalf("%+v beside %.2f", sheet.Again, sheet.Chance)
	}
	w.run("graft again").settled()
	if got := w.answer(); len(got.Batches) != 1 || got.Batches[0].Day != sheet.Again.Day {
		t.Errorf("taken, the graft is on %s, offered %s", got.Batches[0].Day, sheet.Again.Day)
	}
	if c, _ := state.CommandNamed("graft again"); c.Reason(w.State) == "" {
		t.Error("taken, the same day is offered again")
	}
}

// A graft a day later of which nobody is old enough by the day says that, not a bare chance.
func TestADayTooLateSaysWhy(t *testing.T) {
	w := planner(t)
	for range 30 {
		if w.answer().Young {
			break
		}
		w.run("day later").settled()
	}
	if sheet := w.answer(); !sheet.Young || !strings.HasPrefix(sheet.DayLate(), "too young on ") {
		t.Fatalf("thirty days on: %q", sheet.DayLate())
	}
	if before := w.answer().Batches[0].Day; w.run("day later").settled().answer().Chance > 0.005 {
		t.Errorf("a day after %s they are told as too young, and %.2f are in time", before, w.answer().Chance)
	}
}
