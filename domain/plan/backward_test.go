package plan_test

import (
	"testing"

	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// A wish in autumn is answered by a graft of which about as many lay as of the best one
// for that day, and by no later one whose queens are in time and hardly ever mate.
func TestAWishInAutumnIsGraftedWhileTheyMate(t *testing.T) {
	p := plannerOf(withMonths(yardOf(64)), "2027-05-11 08:00")
	yard, first := booktest.Yard("home"), day(t, "2027-05-12")
	for _, by := range []string{"2027-10-20", "2027-11-10", "2027-11-20", "2027-12-25", "2028-03-15"} {
		a := p.Answer(plan.Wish{Queens: 10, By: day(t, by), Laying: true})
		in := func(d calendar.Day) float64 { return p.Ladder(p.GraftAt(d), 1, yard).Laid.InTime(a.By-2, true) }
		best := 0.0
		for d := first; d <= a.By-20; d++ {
			best = max(best, in(d))
		}
		if got := in(a.Batches[0].Day); got < 0.9*0.98*best || !a.InTime { // more than 0.98 are not looked for
			t.Errorf("by %s grafted on %s, in time %v: %.2f of the queens lay, %.2f can be had", by, a.Batches[0].Day, a.InTime, got, best)
		}
		if a.Passed <= a.Batches[0].Day || in(a.Passed) >= 0.9*best {
			t.Errorf("by %s: of the graft passed over, %s, %.2f lay, %.2f can be had", by, a.Passed, in(a.Passed), best)
		}
		if a.Chance < 0.85 {
			t.Errorf("by %s: %.2f", by, a.Chance)
		}
	}
	for _, by := range []string{"2027-06-30", "2028-06-30"} {
		a := p.Answer(plan.Wish{Queens: 10, By: day(t, by), Laying: true})
		if late := a.By.Sub(a.Batches[0].Day); !a.InTime || late > 45 || a.Passed != 0 {
			t.Errorf("by %s, in summer, grafted %d days before, %s passed over", by, late, a.Passed)
		}
	}
}

// Where no graft that is in time makes sense any more, the nearest day is that of the
// first one in spring.
func TestAfterTheSeasonTheNearestDayIsInSpring(t *testing.T) {
	p := plannerOf(withMonths(yardOf(64)), "2027-11-10 08:00")
	a := p.Possible(plan.Wish{Queens: 10, By: day(t, "2027-12-25"), Laying: true})
	if a.InTime || a.Nearest < day(t, "2028-03-15") || a.Nearest > day(t, "2028-06-15") {
		t.Errorf("in time %v, nearest %s", a.InTime, a.Nearest)
	}
	if a.Passed == 0 || a.Passed > a.By {
		t.Errorf("passed over %s", a.Passed)
	}
	if b := p.Possible(plan.Wish{Queens: 10, By: a.Nearest + 14, Laying: true}); !b.InTime || b.Chance < 0.5 {
		t.Errorf("by %s in time %v, %.2f", b.By, b.InTime, b.Chance)
	}
}
