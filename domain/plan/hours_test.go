package plan_test

import (
	"testing"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// Who is free on Monday evenings alone, and on Sundays, gives cells that must be out by
// Monday noon on Sunday; without the Sunday, nobody is free before the hard hour.
func TestCellsAreGivenWhileSomebodyIsFree(t *testing.T) {
	hours := [7]book.FreeHours{0: {From: 480, Until: 1200}, 1: {From: 1020, Until: 1200}}
	for _, sunday := range []bool{true, false} {
		if !sunday {
			hours[0] = book.FreeHours{}
		}
		pen := yardOf(8)
		pen.Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida M.", Free: hours})
		p := plannerOf(pen, "2027-05-11 08:00")
		d := day(t, "2027-05-28")
		l := p.Ladder(d.At(9, 0, p.View().Zone()), 50, booktest.Yard("home"))
		give := l.Rung(plan.GiveCells)
		if give.By != day(t, "2027-06-07") || give.Hard.Hour() >= 17 {
			t.Fatalf("hard by %s", give.Hard)
		}
		if sunday && (give.Best != day(t, "2027-06-06") || give.NobodyFree) {
			t.Errorf("best %s, nobody free %v", give.Best, give.NobodyFree)
		}
		if !sunday && !give.NobodyFree {
			t.Errorf("somebody is said to be free from %s to %s", give.From, give.Hard)
		}
	}
}

// A batch that was grafted at 18:00 on a Wednesday is best out on Saturday the 15th, by the
// table and by the clock; who is away on that day gives its cells the day before, who is
// free on Saturday afternoons alone then, and with nobody free the clock's day stays. The
// plan of such a graft tells the same days.
func TestALiveBatchIsBestOutWhileSomebodyIsFree(t *testing.T) {
	const friday, saturday = 5, 6
	at := func(hours map[int]book.FreeHours) (week [7]book.FreeHours) {
		for d, h := range hours {
			week[d] = h
		}
		return week
	}
	morning, late := book.FreeHours{From: 480, Until: 720}, book.FreeHours{From: 900, Until: 1020}
	for name, c := range map[string]struct {
		free [7]book.FreeHours
		best string
	}{
		"saturday":           {at(map[int]book.FreeHours{friday: morning, saturday: morning}), "2027-05-15 12:00"},
		"friday":             {at(map[int]book.FreeHours{friday: morning}), "2027-05-14 12:00"},
		"saturday afternoon": {at(map[int]book.FreeHours{1: morning, saturday: late}), "2027-05-15 15:00"},
		"on the hard hour":   {at(map[int]book.FreeHours{saturday: {From: 1110, Until: 1200}}), "2027-05-15 18:16"},
		"no hours":           {at(nil), "2027-05-15 12:00"},
	} {
		pen := yardOf(8)
		pen.Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida M.", Free: c.free})
		pen.At("2027-05-05 18:00").Write(book.Grafted{Batch: booktest.Batch("4"), Number: 4, Larvae: 24})
		p := plannerOf(pen, "2027-05-11 08:00")
		b, zone := p.View().Batch(booktest.Batch("4")), p.View().Zone()
		if got := p.BestOut(b, zone).In(zone).Format("2006-01-02 15:04"); got != c.best {
			t.Errorf("%s: best out by %s, want %s", name, got, c.best)
		}
		planned := p.Ladder(b.At.Instant, 24, booktest.Yard("home")).Rung(plan.GiveCells)
		if in := p.Windows(b, zone)[bee.CellsIn-1]; b.At.Day(zone)+calendar.Day(in.Best) != planned.Best {
			t.Errorf("%s: best given on day %d, planned for %s", name, in.Best, planned.Best)
		}
	}
}

// By hand: the 90 capped cells of 100 larvae take 90 minutes to give, of which there are 80 on
// the day that is best; the day before has room. What waits for them is made ready for then.
func TestCountedCellsAreGivenWhereThereIsTimeForAll(t *testing.T) {
	for capped, sooner := range map[int]calendar.Day{70: 0, 90: 1} {
		pen := yardOf(100)
		week := [7]book.FreeHours{}
		for d := range week {
			week[d] = book.FreeHours{From: 480, Until: 720}
		}
		pen.Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida M.", Free: week})
		pen.At("2027-05-05 18:00").Write(book.Grafted{Batch: booktest.Batch("4"), Number: 4, Larvae: 100})
		pen.At("2027-05-10 09:00").Write(book.CappedCounted{Batch: booktest.Batch("4"), Capped: capped})
		best := plannerOf(pen, "2027-05-11 08:00").Waiting(plannerOf(pen, "2027-05-11 08:00").View().Batch(booktest.Batch("4"))).Rung(plan.GiveCells).Best
		pen.Write(book.HoursOn{Person: booktest.Person("Ida"), Day: best, FreeHours: book.FreeHours{From: 480, Until: 560}})
		p := plannerOf(pen, "2027-05-11 08:00")
		b := p.View().Batch(booktest.Batch("4"))
		w := p.Waiting(b)
		if got := w.Rung(plan.GiveCells).Best; got != best-sooner {
			t.Errorf("%d cells are given on %s, want %d days before %s", capped, got, sooner, best)
		}
		if in := p.Windows(b, p.View().Zone())[bee.CellsIn-1]; b.At.Day(p.View().Zone())+calendar.Day(in.Best) != w.Rung(plan.GiveCells).Best {
			t.Errorf("%d cells: by the batch itself on day %d, as those wait for it on %s", capped, in.Best, w.Rung(plan.GiveCells).Best)
		}
	}
}

// By hand: 20 nucs at four minutes take 80, of which there are 60 on the eve of the day on which the cells are
// given; the day before has room. For 15 nucs, or where no day of the window has room, it is the eve.
func TestNucsAreMadeUpWhereThereIsTimeForAll(t *testing.T) {
	for _, c := range []struct {
		nucs, before int // minutes free on the day before the eve
		want         calendar.Day
	}{{15, 720, 1}, {20, 720, 2}, {20, 60, 1}} {
		pen, week := yardOf(40), [7]book.FreeHours{}
		for d := range week {
			week[d] = book.FreeHours{From: 480, Until: 540}
		}
		pen.Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida M.", Free: week})
		id := booktest.Batch("4")
		pen.Write(book.BatchPlanned{Batch: id, Day: day(t, "2027-05-28"), Minute: 9 * 60, Yard: booktest.Yard("home"), Larvae: 60, Nucs: c.nucs})
		ladder := func() plan.Ladder {
			p := plannerOf(pen, "2027-05-11 08:00")
			b, _ := p.View().BatchPlan(id)
			return p.LadderOf(b)
		}
		give := ladder().Rung(plan.GiveCells).Best
		pen.Write(book.HoursOn{Person: booktest.Person("Ida"), Day: give - 2, FreeHours: book.FreeHours{From: 480, Until: 480 + c.before}})
		l := ladder()
		if up := l.Rung(plan.MakeUpNucs); l.Rung(plan.GiveCells).Best != give || up.Best != give-c.want || up.From != give-2 {
			t.Errorf("%d nucs, %d min: made up on %s, want %d days before %s", c.nucs, c.before, up.Best, c.want, give)
		}
	}
}
