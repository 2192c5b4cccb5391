package plan_test

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Cells that are given a day late stay together where their hard hour is later still, and lose
// what the clock has it; where it is before they are caged by it, and those that are out by then come to as
// many queens fewer as the table has it for virgins under a day old. Cells that no nuc is there for
// cost nothing, however many there are.
func TestCellsGivenADayLate(t *testing.T) {
	pen := yardOf(64)
	larvae, nucs := 60, 40
	late := func(graft string) (plan.CellsLate, plan.Batch) {
		p := plannerOf(pen, "2027-03-16 08:00")
		at, err := time.Parse("2006-01-02 15:04", graft)
		if err != nil {
			t.Fatal(err)
		}
		day := day(t, graft[:10])
		b := p.Answer(plan.Wish{Queens: 20, By: day + 70, Graft: day, Minute: at.Hour() * 60, Larvae: larvae, Nucs: nucs, Laying: true}).Batches[0]
		return p.CellsLate(b), b
	}
	caged, b := late("2027-05-03 09:00")
	if caged.Cells != 46 || !caged.Hard.Equal(b.Clock.Hard()) || caged.At.Before(caged.Hard) {
		t.Fatalf("%+v", caged)
	}
	n := practice.Numbers{}
	out := b.Clock.Out(caged.At) / float64(larvae)
	near(t, "queens of caged cells", caged.Queens, 40*out*(n.Get(practice.AcceptCell)-n.Get(practice.AcceptVirginUnderDay))*0.875, 1e-6)
	if says := "by Thu 13 May 15:00, in cages from Thu 13 May 05:35 on: 0 queens fewer"; caged.Words(time.UTC) != says {
		t.Errorf("says %q", caged.Words(time.UTC))
	}
	larvae = 200
	if many, _ := late("2027-05-03 09:00"); many.Cells <= caged.Cells || math.Abs(many.Queens-caged.Queens) > 1e-6 {
		t.Errorf("of 200 larvae %+v", many)
	}
	larvae = 60
	who := book.PersonDescribed{Person: booktest.Person("who"), Name: "Nela"} // cells are given on Wed 12 May then
	who.Free[time.Wednesday] = book.FreeHours{From: 10 * 60, Until: 14 * 60}
	who.Free[time.Thursday] = book.FreeHours{From: 15 * 60, Until: 15*60 + 10} // too short for all of them
	pen.Write(who)
	together, b := late("2027-05-03 22:00")
	want := bee.Batch{Graft: b.Ladder.Graft, Cells: 46}.Clock(practice.Numbers{}).Loose().Lost(together.At)
	near(t, "lost by the clock", together.Lost, want, 1e-12)
	if !together.Hard.IsZero() || together.Lost > 0.5 {
		t.Errorf("%+v", together)
	}
	near(t, "queens of cells that stay together, six of them spare", together.Queens, 0, 1e-9)
	nucs = 64
	every, _ := late("2027-05-03 22:00")
	near(t, "queens of cells that stay together, each with a nuc", every.Queens, want*0.70, 1e-9)
	if says := "by Thu 13 May 15:00: 0 of 46 cells lost"; together.Words(time.UTC) != says {
		t.Errorf("says %q", together.Words(time.UTC))
	}
}

// Where people's hours are told, late is the first day after the best one on which somebody is free.
func TestCellsGivenLateAreGivenWhenSomebodyIsFree(t *testing.T) {
	for _, c := range []struct {
		free     []time.Weekday // besides Thursday, on which cells are given
		days     int
		says, at string
	}{
		{[]time.Weekday{time.Friday}, 1, "a day late", "2027-05-14 10:00"},
		{[]time.Weekday{time.Saturday}, 2, "2 days late", "2027-05-15 10:00"},
		{nil, 7, "7 days late", "2027-05-20 10:00"},
	} {
		pen := yardOf(64)
		who := book.PersonDescribed{Person: booktest.Person("who"), Name: "Nela"}
		for _, d := range append(c.free, time.Thursday) {
			who.Free[d] = book.FreeHours{From: 10 * 60, Until: 14 * 60}
		}
		pen.Write(who)
		p := plannerOf(pen, "2027-03-16 08:00")
		graft := day(t, "2027-05-03")
		b := p.Answer(plan.Wish{Queens: 20, By: graft + 70, Graft: graft, Minute: 22 * 60, Larvae: 60, Nucs: 40, Laying: true}).Batches[0]
		late := p.CellsLate(b)
		if at := late.At.Format("2006-01-02 15:04"); at != c.at || late.Days != c.days || late.Late() != c.says {
			t.Errorf("%v: %s, %d days, %q", c.free, at, late.Days, late.Late())
		}
	}
}

// Cells of which the best day and the hard hour pass while nobody is there are not caged: the first
// virgin destroys the others, as it is reckoned for grafted cells. Who is there on the best day and
// does not give them cages them while he is there, and not at the hard hour at which nobody is.
func TestNobodyCagesCellsWhenNobodyIsThere(t *testing.T) {
	late := func(days ...time.Weekday) (plan.CellsLate, plan.Batch) {
		pen := yardOf(64)
		who := book.PersonDescribed{Person: booktest.Person("who"), Name: "Nela"}
		for _, d := range days {
			who.Free[d] = book.FreeHours{From: 10 * 60, Until: 14 * 60}
		}
		pen.Write(who)
		p := plannerOf(pen, "2027-03-16 08:00")
		graft := calendar.Date(2027, 5, 3) // at nine: its cells must be out by Thu 13 May 05:35
		b := p.Answer(plan.Wish{Queens: 20, By: graft + 70, Graft: graft, Minute: 9 * 60, Larvae: 60, Nucs: 64, Laying: true}).Batches[0]
		return p.CellsLate(b), b
	}
	if there, b := late(time.Wednesday, time.Saturday); there.Hard.Format("Mon 2 15:04") != "Wed 12 14:00" || !there.Hard.Before(b.Clock.Hard()) || b.Rung(plan.GiveCells).Best.Weekday() != time.Wednesday {
		t.Errorf("there on %s: %+v", b.Rung(plan.GiveCells).Best, there)
	}
	missed, b := late(time.Saturday)
	n := practice.Numbers{}
	lost := bee.Batch{Graft: b.Ladder.Graft, Cells: missed.Cells}.Clock(n).Loose().Lost(missed.At)
	if !missed.Hard.IsZero() || math.Abs(missed.Lost-lost) > 1e-9 || lost < float64(missed.Cells)/2 || missed.Queens < lost*plan.OfCell(n)-1e-9 {
		t.Errorf("nobody there before %s: %+v, by the clock %.2f are lost", missed.At, missed, lost)
	}
}
