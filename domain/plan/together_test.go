package plan_test

import (
	"testing"

	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// By hand: two batches of 36 nucs that hold them at the same time want 72 at once, six
// weeks apart 36; cell cups are used up, the breeder serves both; of 60 and 20 kg with 50
// and 30 there, ten are short.
func TestTogether(t *testing.T) {
	need := func(g plan.Good, amount, have float64, from, to calendar.Day) []plan.Need {
		return []plan.Need{{Good: g, Amount: amount, Have: have, Known: true, From: 100 + from, To: 100 + to}}
	}
	for _, c := range []struct {
		name         string
		first, then  []plan.Need
		amount, have float64
	}{
		{"nucs at once", need(plan.Nucs, 36, 43, 0, 30), need(plan.Nucs, 36, 50, 3, 33), 72, 50},
		{"nucs in turn", need(plan.Nucs, 36, 43, 0, 30), need(plan.Nucs, 36, 40, 30, 60), 36, 43},
		{"starters in turn", need(plan.Starters, 2, 1, 0, 2), need(plan.Starters, 3, 1, 3, 5), 3, 1},
		{"breeder", need(plan.BreederOfLine, 1, 2, 0, 4), need(plan.BreederOfLine, 1, 2, 3, 7), 1, 2},
		{"bees short once", need(plan.KilogramsOfBees, 60, 50, 0, 0), need(plan.KilogramsOfBees, 20, 30, 9, 9), 80, 70},
		{"bees enough", need(plan.KilogramsOfBees, 20, 50, 0, 0), need(plan.KilogramsOfBees, 20, 30, 3, 3), 40, 50},
	} {
		got := plan.Together(c.first, c.then)
		if len(got) != 1 || got[0].Amount != c.amount || got[0].Have != c.have {
			t.Errorf("%s: %+v, want %v of %v", c.name, got, c.amount, c.have)
		}
	}
}

// What is bought is ordered once for all of them, by the day on which the first needs it: in
// whichever order they are asked.
func TestOrderedOnceForAll(t *testing.T) {
	need := func(by calendar.Day) []plan.Need {
		return []plan.Need{{Good: plan.CellCups, Amount: 30, From: by + 14, To: by + 20, OrderBy: by}}
	}
	for _, days := range [][]calendar.Day{{100, 103, 110}, {110, 103, 100}} {
		var all [][]plan.Need
		for _, d := range days {
			all = append(all, need(d))
		}
		got := plan.Together(all...)
		if len(got) != 1 || got[0].OrderBy != 100 || got[0].From != 114 || got[0].To != 130 || got[0].Amount != 90 {
			t.Errorf("of %v: %+v, want 90 ordered by 100, used from 114 to 130", days, got)
		}
	}
}

// The nucs that an answer names and those that its amounts name are the same.
func TestAmountsOfTwoGraftsAreThoseOfTheAnswer(t *testing.T) {
	p := plan.New(course.New(sources(nil).View("2027-04-02 08:00")))
	a := p.Answer(plan.Wish{Queens: 30, Nucs: 72, Larvae: 60, Graft: day(t, "2027-05-01"), Grafts: 2, Apart: 3, Yard: booktest.Yard("home")})
	for _, n := range plan.Together(p.NeedsOf(a.Wanting()...)...) {
		if sum := a.Batches[0].Size.Nucs + a.Batches[1].Size.Nucs; n.Good == plan.Nucs && (int(n.Amount) != sum || sum <= a.Batches[0].Size.Nucs) {
			t.Errorf("%v nucs are needed of %d", n.Amount, sum)
		}
	}
}
