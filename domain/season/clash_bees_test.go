package season_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// fullCombs are nucs on full combs and two colonies that give; batches of so many nucs each
// are planned for some days.
func fullCombs(nucs int, days ...calendar.Day) *plan.Planner {
	home := booktest.Yard("home")
	pen := world{givers: 2}.pen()
	for i := range nucs * len(days) {
		n := booktest.Nuc(fmt.Sprint(i))
		pen.Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6, Side: 8}, book.NucPlaced{Nuc: n, Yard: home})
	}
	for i, d := range days {
		pen.Write(book.BatchPlanned{Batch: booktest.Batch(fmt.Sprint(i)), Day: d, Larvae: 40, Nucs: nucs, Yard: home})
	}
	return plannerOf(pen)
}

// By hand: two colonies give two combs each in a week. Four nucs on full combs want one
// each, five want one more than there is.
func TestCombsOfAWeek(t *testing.T) {
	d := day(t, "2027-05-01")
	if all := ofKind(season.Clashes(fullCombs(4, d)), season.BroodShort); len(all) > 0 {
		t.Errorf("four combs of four: %s", all[0].Why)
	}
	c := clash(t, season.Clashes(fullCombs(5, d)), season.BroodShort)
	if c.Want != 5 || c.Have != 4 || c.From != c.To {
		t.Errorf("five combs of four: %s", c.Why)
	}
}

// Two batches made up on one day are one clash of bees and one of brood; made up on two
// days they are one of each day on which a week is over what colonies give, and each batch
// wants its own on its own day.
func TestAWeekIsToldOnceADay(t *testing.T) {
	d := day(t, "2027-05-01")
	for _, kind := range []season.Kind{season.BeesShort, season.BroodShort} {
		all := ofKind(season.Clashes(fullCombs(14, d, d)), kind)
		if len(all) != 1 || len(all[0].Batches) != 2 {
			t.Errorf("%s on one day: told %d times", kind, len(all))
		}
		all = ofKind(season.Clashes(fullCombs(14, d, d+2)), kind)
		if len(all) != 2 || len(all[0].Batches) != 1 || len(all[1].Batches) != 2 {
			t.Fatalf("%s on two days: told %d times", kind, len(all))
		}
		for i, b := range []book.BatchID{booktest.Batch("0"), booktest.Batch("1")} {
			on := all[i].From
			if got, is := all[1].DaysOf(b); !is || got.From != on || got.To != on {
				t.Errorf("%s: batch %d wants it from %s to %s, its nucs are made up on %s", kind, i+1, got.From, got.To, on)
			}
		}
	}
}

// Who moves within the week is still short in it: no way out that was tried is such a day.
func TestNoWayOutOfAWeekLeadsIntoIt(t *testing.T) {
	d := day(t, "2027-05-01")
	p := fullCombs(4, d, d)
	c := clash(t, season.Clashes(p), season.BroodShort)
	if len(c.Ways) == 0 {
		t.Fatal("no way out is told")
	}
	for _, w := range c.Ways {
		if w.Days > -6 && w.Days < 6 && w.Days != 0 {
			t.Errorf("%s", w.What)
		}
	}
}
