package season_test

import (
	"fmt"
	"math"
	"slices"
	"strings"
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

// forNucs are those of some clashes that are about nucs alone.
func forNucs(all []season.Clash) []season.Clash {
	return slices.DeleteFunc(all, func(c season.Clash) bool { return !strings.Contains(c.Why, " for nucs in ") })
}

// By hand: a starter wants 1.2 kg of bees, the same colonies give 2.2 kg in a week. Two batches
// of 40 larvae on one day want 2.4, eight days apart no starter meets another, but the second one
// the first nucs. A starter that is set up wants none any more.
func TestStartersWantBeesToo(t *testing.T) {
	d := day(t, "2027-05-01")
	told := func(p *plan.Planner) []season.Clash {
		return slices.DeleteFunc(ofKind(season.Clashes(p), season.BeesShort), func(c season.Clash) bool { return !strings.Contains(c.Why, " for starters") })
	}
	all := told(fullCombs(1, d, d))
	if len(all) != 1 || math.Abs(all[0].Want-2.4) > 1e-9 || math.Abs(all[0].Have-2.2) > 1e-9 || all[0].From != d-1 || len(all[0].Batches) != 2 || !strings.Contains(all[0].Why, "2.4 kg of bees for starters in the week to Fri 30 Apr, the colonies can give 2.2 kg") {
		t.Errorf("two starters on one day: %+v", all)
	}
	if all := told(fullCombs(1, d)); len(all) > 0 {
		t.Errorf("one starter: %s", all[0].Why)
	}
	if all := told(fullCombs(10, d, d+8)); len(all) != 1 || !strings.Contains(all[0].Why, "for starters and nucs in the week to") {
		t.Errorf("the second starter a day before the first nuc: %+v", all)
	}
	pen := world{nucs: 30, givers: 1}.pen()
	b := book.BatchPlanned{Batch: booktest.Batch("one"), Day: d, Larvae: 40, Nucs: 1, Yard: booktest.Yard("home")}
	if all := told(plannerOf(pen.Write(b))); len(all) != 1 {
		t.Errorf("1.2 kg of 1.1: %+v", all)
	}
	if all := told(plannerOf(pen.Write(book.BatchReadied{Batch: b.Batch, Step: book.StarterSetUp}))); len(all) > 0 {
		t.Errorf("set up: %s", all[0].Why)
	}
}

// What a batch is short of by the amounts is short in the season too, where it is the only one.
func TestAmountsAndClashesWantTheSameBees(t *testing.T) {
	for _, larvae := range []int{40, 100, 300} {
		pen := world{nucs: 60, givers: 3}.pen()
		b := book.BatchPlanned{Batch: booktest.Batch("one"), Day: day(t, "2027-05-01"), Larvae: larvae, Nucs: 30, Yard: booktest.Yard("home")}
		p := plannerOf(pen.Write(b))
		was, _ := p.View().BatchPlan(b.Batch)
		want := map[calendar.Day]float64{}
		for _, n := range p.Needs(p.LadderOf(was), p.SizeOf(was)) {
			if (n.Good == plan.StarterBees || n.Good == plan.KilogramsOfBees) && n.Short() > 0.01 {
				want[n.From] = n.Amount
			}
		}
		for _, c := range ofKind(season.Clashes(p), season.BeesShort) {
			if math.Abs(want[c.From]-c.Want) > 1e-9 {
				t.Errorf("%d larvae: the season wants %.2f kg on %s, the amounts %.2f", larvae, c.Want, c.From, want[c.From])
			}
			delete(want, c.From)
		}
		if len(want) > 0 {
			t.Errorf("%d larvae: the season does not tell of %v", larvae, want)
		}
	}
}

// Two batches made up on one day are one clash of bees and one of brood; made up on two
// days they are one of each day on which a week is over what colonies give, and each batch
// wants its own on its own day.
func TestAWeekIsToldOnceADay(t *testing.T) {
	d := day(t, "2027-05-01")
	for _, kind := range []season.Kind{season.BeesShort, season.BroodShort} {
		all := forNucs(ofKind(season.Clashes(fullCombs(14, d, d)), kind))
		if len(all) != 1 || len(all[0].Batches) != 2 {
			t.Errorf("%s on one day: told %d times", kind, len(all))
		}
		all = forNucs(ofKind(season.Clashes(fullCombs(14, d, d+2)), kind))
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

// A colony that gave all it had within the week is told of as one that gives a little is: a
// batch that wants bees and brood then cannot have them, in the clashes and in a search.
func TestARestingColonyGivesNothing(t *testing.T) {
	d := day(t, "2027-05-01")
	giver := booktest.Colony("brood source 0").Subject()
	for cups, has := range map[float64]float64{12: 1.1 - 12*700.0/8300, 14: 0} {
		pen := world{nucs: 30, givers: 1}.pen()
		pen.Write(book.BatchPlanned{Batch: booktest.Batch("one"), Day: day(t, "2027-04-05"), Larvae: 40, Nucs: 10, Yard: booktest.Yard("home")})
		pen.At("2027-03-31 12:00").Write(book.BeesAdded{Nuc: booktest.Nuc("0"), Cups: cups, From: giver}, book.BroodGiven{To: booktest.Nuc("0").Subject(), Combs: 2, From: giver})
		if c := clash(t, season.Clashes(plannerOf(pen)), season.BeesShort); math.Abs(c.Have-has) > 1e-9 || math.Abs(c.Want-1.2) > 1e-9 {
			t.Errorf("%v cups gone: %s", cups, c.Why)
		}
	}
	var w season.Wanted
	w.Window, w.Larvae, w.Promises = 1, []int{24}, []season.Promise{{Name: "order 1", Queens: 3, By: d + 15, Sure: 0.5}}
	at := season.Search(plannerOf(world{nucs: 30, givers: 4}.pen()), w, nil)
	if len(at.Kept) != 1 {
		t.Fatalf("four colonies that give: %+v", at.Short)
	}
	pen := world{nucs: 30, givers: 4}.pen().At("2027-03-31 12:00")
	for i := range 4 {
		giver := booktest.Colony(fmt.Sprint("brood source ", i)).Subject()
		pen.Write(book.BeesAdded{Nuc: booktest.Nuc("0"), Cups: 14, From: giver}, book.BroodGiven{To: booktest.Nuc("0").Subject(), Combs: 2, From: giver})
	}
	if f := season.Search(plannerOf(pen), w, nil); len(f.Kept) != 0 {
		t.Errorf("grafted on %s with bees that nobody has", f.Batches[0].Day)
	}
}

// What colonies gave seven days ago they give again: the week of a day begins six days before.
func TestAWeekHasSevenDays(t *testing.T) {
	d := day(t, "2027-05-01")
	for apart, short := range map[calendar.Day]bool{6: true, 7: false} {
		if all := ofKind(season.Clashes(fullCombs(4, d, d+apart)), season.BroodShort); len(all) > 0 != short {
			t.Errorf("four combs of four, and four again %d days later: %d clashes", apart, len(all))
		}
	}
}
