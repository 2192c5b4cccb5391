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

// Days on which nobody is free to graft, or to give the cells, are passed over: who has the weekday off
// of the nearest day that finds nucs grafts on another.
func TestTheNearestDayThatFindsNucsIsOneOnWhichSomebodyIsFree(t *testing.T) {
	pen := yardOf(12)
	pen.Write(book.BatchPlanned{Batch: booktest.Batch("all"), Day: day(t, "2027-06-20"), Larvae: 30, Nucs: 12, Yard: booktest.Yard("home")})
	var week [7]book.FreeHours
	for d := range week {
		week[d] = book.FreeHours{From: 480, Until: 1200}
	}
	grafted := func() plan.Ladder {
		pen.Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida M.", Free: week})
		a := plannerOf(pen, "2027-05-11 07:30").Possible(plan.Wish{Queens: 4, By: day(t, "2027-07-09")})
		if a.Nucs == 0 || a.Full.Day.IsZero() {
			t.Fatalf("%d nucs for the graft of %s, moved from %s", a.Nucs, a.Graft, a.Full.Day)
		}
		return a.Batches[0].Ladder
	}
	off := grafted().Day
	week[off.Weekday()] = book.FreeHours{}
	if l := grafted(); l.Day == off || l.Rung(plan.GraftLarvae).NobodyFree || l.Rung(plan.GiveCells).NobodyFree {
		t.Errorf("with the weekday of %s off it is grafted on %s", off, l.Day)
	}
}

// By when to graft for a yard that is named says what that yard has, however many nucs another has.
func TestByWhenToGraftIsSaidOfTheYardThatIsNamed(t *testing.T) {
	pen := yardOf(12)
	pen.Write(book.YardDescribed{Yard: booktest.Yard("away"), Name: "Away"})
	for _, n := range []string{"B1", "B2"} {
		pen.Write(book.NucNamed{Nuc: booktest.Nuc(n), Name: n, Sides: 6}, book.NucPlaced{Nuc: booktest.Nuc(n), Yard: booktest.Yard("away")})
	}
	p := plannerOf(pen, "2027-05-11 07:30")
	for name, nucs := range map[string]int{"home": 12, "away": 2} {
		w := plan.Wish{Queens: 4, By: day(t, "2027-08-31"), Yard: booktest.Yard(name)}
		if by := p.GraftBy(w); by.Yard != p.View().Yard(w.Yard).Name || by.Nucs != nucs {
			t.Errorf("%s: %+v, want its %d nucs", name, by, nucs)
		}
	}
}
