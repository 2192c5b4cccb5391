package season_test

import (
	"fmt"
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// ofKind are the clashes of a kind.
func ofKind(all []season.Clash, k season.Kind) []season.Clash {
	return slices.DeleteFunc(slices.Clone(all), func(c season.Clash) bool { return c.Kind != k })
}

// Two grafts on one day and two on the next are two clashes, each on its own day, and
// nobody gets out of one into the other: a third graft of that day.
func TestTwoGraftsAreOfOneDay(t *testing.T) {
	d := day(t, "2027-05-01")
	all := ofKind(season.Clashes(plannerOf(planned(world{nucs: 400}.pen(), d, d, d+1, d+1))), season.TwoGrafts)
	if len(all) != 2 {
		t.Fatalf("%d clashes of two grafts", len(all))
	}
	for i, c := range all {
		on := d + calendar.Day(i)
		if c.From != on || c.To != on || c.Want != 2 || len(c.Batches) != 2 {
			t.Errorf("%v of %d batches from %s to %s, by hand two on %s", c.Want, len(c.Batches), c.From, c.To, on)
		}
		if want := fmt.Sprintf("Plover, graft of %s and Rook, graft of %[1]s are on one day, %[1]s.", on.Short()); c.Why != want {
			t.Errorf("said is %q, want %q", c.Why, want)
		}
		if len(c.Ways) == 0 {
			t.Error("no way out is told")
		}
		for _, w := range c.Ways {
			if w.Plan.Day == d || w.Plan.Day == d+1 {
				t.Errorf("%s: it is a third graft of that day", w.What)
			}
		}
	}
}

// By hand: at one starter, grafts on three days running, each set up on the day before and
// moved on the day after its graft, share it on two days. Of them the first batch wants
// the first, the last the last, and the one between both.
func TestABatchHasItsOwnDaysOfAStarter(t *testing.T) {
	d := day(t, "2027-05-01")
	pen := world{nucs: 400, starters: 1}.pen().At("2027-03-31 20:00")
	for i := range 3 {
		pen.Write(book.BatchPlanned{Batch: booktest.Batch(fmt.Sprint(i)), Day: d + calendar.Day(i), Larvae: 20, Nucs: 10, Yard: booktest.Yard("home")})
	}
	c := clash(t, season.Clashes(plannerOf(pen)), season.StartersShort)
	for i, want := range []season.Days{{From: d, To: d}, {From: d, To: d + 1}, {From: d + 1, To: d + 1}} {
		if got, is := c.DaysOf(booktest.Batch(fmt.Sprint(i))); !is || got != want {
			t.Errorf("batch %d of %s to %s: %s to %s, by hand %s to %s", i+1, c.From, c.To, got.From, got.To, want.From, want.To)
		}
	}
}

// Of nucs and of finishers, too, a batch has the days on which it takes them: two that
// follow each other within a clash that a third keeps up share none.
func TestABatchHasItsOwnDaysOfNucsAndFinishers(t *testing.T) {
	d := day(t, "2027-05-01")
	for kind, w := range map[season.Kind]world{season.NucsShort: {nucs: 60}, season.FinishersShort: {nucs: 400, finishers: 3}} {
		p := plannerOf(planned(w.pen(), d, d+4, d+30))
		for _, c := range ofKind(season.Clashes(p), kind) {
			for b := range p.View().Plans() {
				l := p.LadderOf(b)
				takes := season.Days{From: l.Rung(plan.MakeUpNucs).Best, To: l.Rung(plan.Ready).By - 1}
				if kind == season.FinishersShort {
					from := l.Rung(plan.ToFinisher).Best
					takes = season.Days{From: from, To: from + 4} // a turn of five days
				}
				want := season.Days{From: max(c.From, takes.From), To: min(c.To, takes.To)}
				if got, is := c.DaysOf(b.Batch); is != (want.From <= want.To) || is && got != want {
					t.Errorf("%s from %s to %s: %v, %v, taken are they from %s to %s", kind, c.From, c.To, got, is, takes.From, takes.To)
				}
			}
		}
		if len(ofKind(season.Clashes(p), kind)) == 0 {
			t.Errorf("%s is not told", kind)
		}
	}
}

// What is short by as much on later days is told as it is on the first of them: by hand,
// 55 nucs are wanted of 50 that are free, then 65 of 60.
func TestTheFirstOfTheWorstDaysIsTold(t *testing.T) {
	home := booktest.Yard("home")
	pen := world{nucs: 60}.pen().At("2027-03-31 20:00")
	for i := range 10 {
		pen.Write(book.CellGiven{Nuc: booktest.Nuc(fmt.Sprint(i))})
	}
	p := plannerOf(pen)
	free := p.FreeFrom(home)[59]
	made := func(on calendar.Day) calendar.Day {
		for d := on - 20; d < on; d++ {
			if p.Ladder(p.GraftAt(d), 60, home).Rung(plan.MakeUpNucs).Best == on {
				return d
			}
		}
		t.Fatalf("nothing is made up on %s", on)
		return 0
	}
	for i, nucs := range []int{55, 10} {
		pen.Write(book.BatchPlanned{Batch: booktest.Batch(fmt.Sprint(i)), Day: made(free + calendar.Day(i-1)), Larvae: 60, Nucs: nucs, Yard: home})
	}
	c := clash(t, season.Clashes(plannerOf(pen)), season.NucsShort)
	if c.From != free-1 || c.Want != 55 || c.Have != 50 || len(c.Batches) != 2 {
		t.Errorf("from %s %v of %v by %d batches; from %s ten more are free", c.From, c.Want, c.Have, len(c.Batches), free)
	}
}
