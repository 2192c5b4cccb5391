package plan_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// twoAhead is a book with two grafts planned, the second first.
func twoAhead() *plan.Planner {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-03-01 12:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.ColonyDescribed{Colony: booktest.Colony("S4"), Name: "S4"},
		book.BatchPlanned{Batch: booktest.Batch("b"), Day: calendar.Date(2027, 5, 3), Larvae: 20, Nucs: 10, Yard: home},
		book.BatchPlanned{Batch: booktest.Batch("a"), Day: calendar.Date(2027, 4, 19), Larvae: 96, Nucs: 64, Yard: home, Queens: 40, By: calendar.Date(2027, 6, 14)},
	)
	return plan.New(course.New(p.View("2027-03-02 08:00")))
}

// The buying list is what the batches need together, and the first day to order is
// that of the first batch.
func TestTheBuyingListIsTheSumOfTheBatches(t *testing.T) {
	p := twoAhead()
	var cups, feed float64
	for b := range p.View().Plans() {
		d := p.Planned(b)
		for _, n := range d.Needs {
			switch n.Good {
			case plan.CellCups:
				cups += n.Amount
			case plan.RearerFeed:
				feed += n.Amount
			}
		}
	}
	if cups != 116 {
		t.Errorf("%v cell cups for 96 and 20 larvae", cups)
	}
	all := p.Buys()
	for i, b := range all {
		if !b.Bought() || len(b.For) != 2 || b.For[0].Planned.Larvae != 96 || b.OrderBy != b.For[0].OrderBy || b.For[1].OrderBy <= b.OrderBy {
			t.Errorf("%s: %v of %d batches by %s", b, b.Amount, len(b.For), b.OrderBy)
		}
		if i > 0 && b.OrderBy < all[i-1].OrderBy {
			t.Errorf("%s is to be ordered before %s, which stands above it", b.Good, all[i-1].Good)
		}
		if b.Good == plan.CellCups && b.Amount != cups || b.Good == plan.RearerFeed && math.Abs(b.Amount-feed) > 1e-9 {
			t.Errorf("%v of %s", b.Amount, b.Good)
		}
	}
	if len(all) != 4 {
		t.Errorf("%d goods are bought: cups, syrup, food and cages are", len(all))
	}
}

// Nothing is bought for a graft that has lapsed: its breeder was never confined.
func TestNothingIsBoughtForALapsedGraft(t *testing.T) {
	pen := yardOf(20)
	pen.At("2027-04-20 08:00").Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-05-05"), Larvae: 60, Nucs: 20, Yard: booktest.Yard("home")})
	if before := plannerOf(pen, "2027-04-28 08:00").Buys(); len(before) == 0 {
		t.Error("nothing is bought while it can be kept")
	}
	if after := plannerOf(pen, "2027-05-08 08:00").Buys(); len(after) != 0 {
		t.Errorf("for what has lapsed %v is bought", after)
	}
}

// What colonies give and what nobody can give is all that the nucs take; who is to be
// ready by a day is no more than who is ever ready.
func TestAPlannedBatchAddsUp(t *testing.T) {
	p := twoAhead()
	for b := range p.View().Plans() {
		d := p.Planned(b)
		gives := 0.0
		for _, g := range d.Given {
			if _, cups := cupsOf(g); g.For == plan.MakeUpNucs {
				gives = g.ShortCups + cups
			}
		}
		for _, n := range d.Needs {
			if n.Good == plan.CupsOfBees && math.Abs(n.Amount-gives) > 1e-9 {
				t.Errorf("graft of %s: %v cups are needed, %v given and short", b.Day, n.Amount, gives)
			}
		}
		b.By = 0
		if ever := p.Planned(b).Chances.Mean(); d.Chances.Mean() > ever+1e-9 || ever <= 0 {
			t.Errorf("graft of %s: %v queens by the day, %v ever", b.Day, d.Chances.Mean(), ever)
		}
	}
	for b := range p.View().Plans() {
		if most := p.Planned(b).Chances.Most(); most > b.Nucs {
			t.Errorf("%d queens of %d nucs", most, b.Nucs)
		}
	}
}

// What is ticked off settles it for the batch itself: starters that are set up want no bees
// and no time for that, nucs that are made up no bees, brood, food and time, and no food is
// bought for them.
func TestStepsDoneWantNothingMore(t *testing.T) {
	pen := yardOf(20)
	id := booktest.Batch("b")
	pen.Write(book.BatchPlanned{Batch: id, Day: day(t, "2027-05-05"), Larvae: 60, Nucs: 20, Yard: booktest.Yard("home")})
	wants := func() (goods map[plan.Good]bool, minutes map[plan.Step]bool, food bool) {
		p := plannerOf(pen, "2027-04-28 08:00")
		b, _ := p.View().BatchPlan(id)
		d := p.Planned(b)
		goods, minutes = map[plan.Good]bool{}, map[plan.Step]bool{}
		for _, n := range d.Needs {
			goods[n.Good] = true
		}
		for _, m := range d.Minutes {
			minutes[m.Step] = true
		}
		for _, buy := range p.Buys() {
			food = food || buy.Good == plan.FoodForNucs
		}
		return goods, minutes, food
	}
	for _, c := range []struct {
		done         book.ReadyStep
		bees, forNuc bool
	}{{0, true, true}, {book.StarterSetUp, false, true}, {book.NucsReady, false, false}} {
		if c.done != 0 {
			pen.Write(book.BatchReadied{Batch: id, Step: c.done})
		}
		goods, minutes, food := wants()
		if goods[plan.StarterBees] != c.bees || minutes[plan.SetUpStarter] != c.bees || !goods[plan.Starters] {
			t.Errorf("%q done: bees for starters %v, time %v", c.done, goods[plan.StarterBees], minutes[plan.SetUpStarter])
		}
		for _, g := range []plan.Good{plan.CupsOfBees, plan.KilogramsOfBees, plan.FoodForNucs} {
			if goods[g] != c.forNuc {
				t.Errorf("%q done: %s %v", c.done, g, goods[g])
			}
		}
		if minutes[plan.MakeUpNucs] != c.forNuc || food != c.forNuc || !goods[plan.Nucs] {
			t.Errorf("%q done: time for nucs %v, food bought %v", c.done, minutes[plan.MakeUpNucs], food)
		}
	}
}
