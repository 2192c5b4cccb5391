package plan_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/plan"
)

// The day that finds nucs is looked for day by day, so a window of some days is found too; one that is
// still in time goes before all that are sooner, and one that is sooner before all that are too late.
func TestTheNearestDayThatFindsNucs(t *testing.T) {
	home := booktest.Yard("home")
	pen := yardOf(12)
	pen.Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "Europe/Berlin"},
		book.BatchPlanned{Batch: booktest.Batch("all"), Day: day(t, "2027-06-20"), Larvae: 30, Nucs: 12, Yard: home})
	const now = "2027-05-11 07:30"
	free := func(graft string) int {
		return plannerOf(pen, now).Answer(plan.Wish{Queens: 4, By: day(t, "2027-09-02"), Graft: day(t, graft)}).Nucs
	}
	if free("2027-05-19") == 0 || free("2027-05-20") != 0 || free("2027-07-21") != 0 || free("2027-07-22") == 0 {
		t.Fatal("the nucs are taken on other days than these of the test")
	}
	for _, c := range []struct {
		by, moved, graft string
	}{
		{"2027-07-09", "2027-05-27", "2027-05-19"}, // by the week 20 and 13 May would be asked, too late and too soon
		{"2027-08-31", "2027-07-19", "2027-05-19"}, // the last in time finds none either
		{"2027-09-02", "2027-07-21", "2027-07-22"}, // one day in hand instead of two
	} {
		p := plannerOf(pen, now)
		a := p.Possible(plan.Wish{Queens: 4, By: day(t, c.by)})
		if a.Graft != day(t, c.graft) || !a.InTime || a.Full.Day != day(t, c.moved) || a.Chance < 0.8 {
			t.Errorf("by %s: grafted on %s, in time %v, %v, moved from %s", c.by, a.Graft, a.InTime, a.Chance, a.Full.Day)
		}
	}
	// Of two grafts both find nucs, and the second has to be in time too.
	if a := plannerOf(pen, now).Possible(plan.Wish{Queens: 4, By: day(t, "2027-09-02"), Grafts: 2, Apart: 2}); a.Graft != day(t, "2027-05-17") || a.Nucs == 0 || !a.InTime {
		t.Errorf("two grafts from %s on, %d nucs, in time %v", a.Graft, a.Nucs, a.InTime)
	}
}

// Where no day finds a nuc, as the yard has none, the graft stays on its day and it is said so.
func TestWithoutNucsNoDayFindsSome(t *testing.T) {
	p := plannerOf(yardOf(0), "2027-05-11 07:30")
	a := p.Possible(plan.Wish{Queens: 4, By: day(t, "2027-09-02")})
	if a.Nucs != 0 || a.Full.Day != a.Graft {
		t.Errorf("%d nucs, grafted on %s, full on %s", a.Nucs, a.Graft, a.Full.Day)
	}
}
