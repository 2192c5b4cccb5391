package plan_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
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

// All nucs are taken until long after: a wish that a graft would keep finds no nuc, and one for which any
// graft is too late says that, and not that nucs are missing.
func TestNoNucIsNotTooLate(t *testing.T) {
	pen := yardOf(10).Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-05-10"), Larvae: 30, Nucs: 10, Yard: booktest.Yard("home")})
	p := plannerOf(pen, "2027-05-03 08:00")
	for by, noNuc := range map[string]bool{"2027-06-20": true, "2027-05-20": false} {
		if late := p.Possible(plan.Wish{Queens: 4, By: day(t, by)}).TooLate(); late.NoNuc != noNuc {
			t.Errorf("by %s: %s", by, late.Said(calendar.Day.Short))
		}
	}
}

// "Another only if the first fails" is offered where the first has all the nucs: else it is not that it failed
// for which queens are missing.
func TestOnlyWhoHasAllNucsIsInsured(t *testing.T) {
	for _, held := range []int{0, 12} {
		pen := yardOf(30)
		if held > 0 {
			pen.Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-04-08"), Larvae: 30, Nucs: held, Yard: booktest.Yard("home")})
		}
		a := plannerOf(pen, "2027-04-02 08:00").Answer(plan.Wish{Queens: 18, By: day(t, "2027-07-10"), Graft: day(t, "2027-05-08"), Grafts: 2})
		if (a.Insured() > 0) != (held == 0) {
			t.Errorf("%d of 30 nucs held: %.2f, insured %.2f, %d nucs", held, a.Chance, a.Insured(), a.Nucs)
		}
	}
}
