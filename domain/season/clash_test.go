package season_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// planned writes batches of 60 larvae and 40 nucs on some days.
func planned(p *booktest.Pen, days ...calendar.Day) *booktest.Pen {
	p.At("2027-03-31 20:00")
	for i, d := range days {
		p.Write(book.BatchPlanned{
			Batch: booktest.Batch(fmt.Sprint(i)), Day: d, Larvae: 60, Nucs: 40, Yard: booktest.Yard("home"), Queens: 15, By: d + 60, Line: []string{"Rook", "Plover"}[i%2],
		})
	}
	return p
}

func kindsOf(all []season.Clash) (kinds []season.Kind) {
	for _, c := range all {
		kinds = append(kinds, c.Kind)
	}
	slices.Sort(kinds)
	return slices.Compact(kinds)
}

func clash(t *testing.T, all []season.Clash, k season.Kind) season.Clash {
	t.Helper()
	for _, c := range all {
		if c.Kind == k {
			return c
		}
	}
	t.Fatalf("%s is not told: %v", k, kindsOf(all))
	return season.Clash{}
}

// By hand: two batches of 60 larvae want two starters each at 45 larvae, three
// finishers each at 20 of 48 takes, and 80 nucs.
func TestTwoBatchesWantTheSame(t *testing.T) {
	d := day(t, "2027-05-01")
	all := season.Clashes(plannerOf(planned(world{nucs: 60, starters: 3, finishers: 4}.pen(), d, d)))
	for kind, want := range map[season.Kind][2]float64{
		season.TwoGrafts: {2, 1}, season.NucsShort: {80, 60}, season.StartersShort: {4, 3}, season.FinishersShort: {6, 4},
	} {
		c := clash(t, all, kind)
		if c.Want != want[0] || c.Have != want[1] || len(c.Batches) != 2 {
			t.Errorf("%s: %v of %v by %d batches, by hand %v of %v by two", kind, c.Want, c.Have, len(c.Batches), want[0], want[1])
		}
	}
	if len(all) != 4 {
		t.Errorf("told of: %v", kindsOf(all))
	}
}

func TestBatchesInTurnDoNotClash(t *testing.T) {
	d := day(t, "2027-05-01")
	if all := season.Clashes(plannerOf(planned(world{nucs: 80, starters: 2, finishers: 3}.pen(), d, d+5))); len(all) > 0 {
		t.Errorf("a turn of five days: %s", all[0].Why)
	}
	all := season.Clashes(plannerOf(planned(world{nucs: 80, starters: 2, finishers: 3}.pen(), d, d+4)))
	c := clash(t, all, season.FinishersShort)
	if c.From != c.To || c.From != d+5 {
		t.Errorf("a turn of four days: from %s to %s, want on %s", c.From, c.To, d+5)
	}
}

// Nucs are taken from the day they are made up, and free on the last day by which
// the queens are ready: the next ones may be made up then, not a day sooner.
func TestNucsAreFreeWhenQueensAreReady(t *testing.T) {
	d := day(t, "2027-05-01")
	home := booktest.Yard("home")
	p := plannerOf(world{nucs: 40}.pen())
	ready := p.Ladder(p.GraftAt(d), 60, home).Rung(plan.Ready).By
	next := d
	for p.Ladder(p.GraftAt(next), 60, home).Rung(plan.MakeUpNucs).Best < ready {
		next++
	}
	if all := season.Clashes(plannerOf(planned(world{nucs: 40}.pen(), d, next))); len(all) > 0 {
		t.Errorf("made up on the day: %s", all[0].Why)
	}
	c := clash(t, season.Clashes(plannerOf(planned(world{nucs: 40}.pen(), d, next-1))), season.NucsShort)
	if c.From != ready-1 || c.To != ready-1 {
		t.Errorf("made up a day sooner: %s", c.Why)
	}
}

// A way out was tried: planned so, the clash is gone. The chance before it is that
// of the batch as it stands.
func TestWaysOutLeadOut(t *testing.T) {
	d := day(t, "2027-05-01")
	w := world{nucs: 60, starters: 3, finishers: 4}
	p := plannerOf(planned(w.pen(), d, d))
	for _, c := range season.Clashes(p) {
		tried := 0
		for _, way := range c.Ways {
			if way.Plan.Batch.IsZero() {
				continue
			}
			tried++
			pen := planned(w.pen(), d, d).Write(way.Plan)
			if slices.Contains(kindsOf(season.Clashes(plannerOf(pen))), c.Kind) {
				t.Errorf("%s: %s leaves it", c.Kind, way.What)
			}
			if want := kept(p, book.BatchPlan{BatchPlanned: way.Plan}); !way.Wished || way.After != want {
				t.Errorf("%s: %s: %v, reckoned %v", c.Kind, way.What, way.After, want)
			}
		}
		if tried < 2 {
			t.Errorf("%s: %d ways", c.Kind, tried)
		}
	}
}

// With 45 nucs for two batches of 40, five would be left to one that owes 15 queens: that
// is no way out, but its promise given up.
func TestAPromiseGivenUpIsNoWayOut(t *testing.T) {
	d := day(t, "2027-05-01")
	c := clash(t, season.Clashes(plannerOf(planned(world{nucs: 45, starters: 9, finishers: 9}.pen(), d, d))), season.NucsShort)
	if len(c.Ways) == 0 {
		t.Fatal("no way out is told")
	}
	for _, w := range c.Ways {
		if w.Wished && w.After < 0.05 {
			t.Errorf("%s: the promise is kept with %.3f, before with %.3f", w.What, w.After, w.Before)
		}
	}
}

// Of three batches on one day one way alone is never enough: it leaves what the two
// others miss.
func TestAWayThatIsNotEnough(t *testing.T) {
	d := day(t, "2027-05-01")
	c := clash(t, season.Clashes(plannerOf(planned(world{nucs: 200}.pen(), d, d, d))), season.TwoGrafts)
	if len(c.Ways) == 0 || c.Short() != 2 {
		t.Fatalf("%d ways, %v short", len(c.Ways), c.Short())
	}
	for _, w := range c.Ways {
		if w.Left != 1 {
			t.Errorf("%s leaves %v", w.What, w.Left)
		}
	}
}

func kept(p *plan.Planner, b book.BatchPlan) float64 {
	late := 1 - p.LadderOf(b).Laid.InTime(b.By, b.Laying)
	return plan.RatesOf(p.View()).Queens(plan.Graft{Larvae: b.Larvae, Nucs: p.Dealt(b), Late: late}).AtLeast(b.Queens)
}

// Ida is free on Mondays alone, for an hour: a graft of a Saturday has nobody, and
// neither have its cells on the tenth day.
func TestNobodyIsFree(t *testing.T) {
	pen := world{nucs: 60}.pen()
	pen.Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida M.", Free: [7]book.FreeHours{1: {From: 1080, Until: 1140}}})
	saturday := day(t, "2027-05-01")
	all := season.Clashes(plannerOf(planned(pen, saturday)))
	if c := clash(t, all, season.NobodyFree); c.From != saturday {
		t.Errorf("nobody is free: %s", c.Why)
	}
	over := clash(t, all, season.MinutesOver)
	if over.Short() <= 0 || over.Have > 60 {
		t.Errorf("%s", over.Why)
	}
}

// By hand: 400 virgins want sixteen colonies at 25 each; seven are there. Comb hung
// in on the view's day is ripe 40 days later, on 11 May; the virgins of a graft of
// 5 April fly from about the 22nd.
func TestDrones(t *testing.T) {
	pen := world{nucs: 400}.pen()
	for i := range 7 {
		pen.Write(book.ColonyDescribed{Colony: booktest.Colony(fmt.Sprint(i)), Name: fmt.Sprint(i), Yard: booktest.Yard("home"), Roles: []book.Role{book.DroneSource}})
	}
	graft := func(d calendar.Day, nucs int) *booktest.Pen {
		return pen.Write(book.BatchPlanned{Batch: booktest.Batch("one"), Day: d, Larvae: nucs + 100, Nucs: nucs, Yard: booktest.Yard("home")})
	}
	all := season.Clashes(plannerOf(graft(day(t, "2027-04-05"), 400)))
	if c := clash(t, all, season.DronesShort); c.Want != 16 || c.Have != 7 {
		t.Errorf("%s", c.Why)
	}
	c := clash(t, all, season.DronesUnripe)
	if ripe := c.From + calendar.Day(c.Want); ripe != day(t, "2027-05-11") {
		t.Errorf("%s", c.Why)
	}
	later := season.Clashes(plannerOf(graft(day(t, "2027-05-10"), 40)))
	if kinds := kindsOf(later); !slices.Equal(kinds, []season.Kind{season.DronesShort}) {
		t.Errorf("comb in good time: %v", kinds)
	}
	pen.At("2027-03-05 12:00").Write(book.BatchReadied{Batch: booktest.Batch("one"), Step: book.DroneCombIn})
	old := season.Clashes(plannerOf(graft(day(t, "2027-05-10"), 40)))
	if c := clash(t, old, season.DronesOld); c.Want <= 0 {
		t.Errorf("%s", c.Why)
	}
}

// Each batch has the days of the clash on which its own virgins fly: those of two grafts
// three weeks apart share none.
func TestDaysOfEachBatch(t *testing.T) {
	pen := world{nucs: 100}.pen()
	pen.Write(book.ColonyDescribed{Colony: booktest.Colony("D1"), Name: "D1", Yard: booktest.Yard("home"), Roles: []book.Role{book.DroneSource}})
	one, two := booktest.Batch("one"), booktest.Batch("two")
	pen.Write(book.BatchPlanned{Batch: one, Day: day(t, "2027-05-01"), Larvae: 40, Nucs: 30, Yard: booktest.Yard("home")},
		book.BatchPlanned{Batch: two, Day: day(t, "2027-05-08"), Larvae: 40, Nucs: 30, Yard: booktest.Yard("home")})
	c := clash(t, season.Clashes(plannerOf(pen)), season.DronesShort)
	a, inA := c.DaysOf(one)
	b, inB := c.DaysOf(two)
	if !inA || !inB || a.From != c.From || b.To != c.To || a.To >= b.To || b.From <= a.From {
		t.Errorf("%v: %v and %v of %v to %v", c.Batches, a, b, c.From, c.To)
	}
	if _, in := c.DaysOf(booktest.Batch("three")); in {
		t.Error("a batch that is not in the clash has days of it")
	}
}

// Cells that nobody gave by their hour emerge all the same: their virgins want drones.
func TestCellsThatAreLateFly(t *testing.T) {
	pen := world{nucs: 40}.pen()
	pen.Write(book.ColonyDescribed{Colony: booktest.Colony("D1"), Name: "D1", Yard: booktest.Yard("home"), Roles: []book.Role{book.DroneSource}})
	late := booktest.Batch("late")
	pen.At("2027-03-20 09:00").Write(book.Grafted{Batch: late, Number: 1, Larvae: 30})
	c := clash(t, season.Clashes(plannerOf(pen)), season.DronesShort)
	if _, in := c.DaysOf(late); !in || !strings.HasPrefix(c.Why, "Up to 30 virgins") {
		t.Errorf("%s", c.Why)
	}
}

// By hand: two colonies give 1.1 kg each in a week; sixty nucs of two cups of 700
// bees at 8300 a kilogram want 10.1 kg.
func TestBeesOfAWeek(t *testing.T) {
	pen := world{nucs: 60, starters: 1}.pen()
	for _, name := range []string{"S1", "S2"} {
		pen.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: booktest.Yard("home"), Roles: []book.Role{book.BroodSource}, Thousands: 40})
	}
	pen.Write(book.BatchPlanned{Batch: booktest.Batch("one"), Day: day(t, "2027-05-01"), Larvae: 40, Nucs: 60, Yard: booktest.Yard("home")})
	c := clash(t, season.Clashes(plannerOf(pen)), season.BeesShort)
	if c.Have != 2.2 || c.Want < 10 || c.Want > 10.3 {
		t.Errorf("%s", c.Why)
	}
}

// The floor is the ladders of the days to which batches can move: 1.6 ms each.
func BenchmarkClashes(b *testing.B) {
	var days []calendar.Day
	for i := range 60 {
		days = append(days, day(b, "2027-04-20")+calendar.Day(i*3/2))
	}
	pen := planned(world{nucs: 900, starters: 3, finishers: 9}.pen(), days...)
	for b.Loop() {
		season.Clashes(plannerOf(pen))
	}
}

// A batch tried on another day clashes as it would were it planned there; the board
// stays as it is.
func TestABatchIsTriedElsewhere(t *testing.T) {
	d := day(t, "2027-05-01")
	w := world{nucs: 60, starters: 3, finishers: 4}
	p := planned(w.pen(), d, d)
	board := season.NewBoard(plannerOf(p))
	for by := range calendar.Day(12) {
		var moved book.BatchPlanned
		for b := range p.View(morning).Plans() {
			moved = b.BatchPlanned
		}
		moved.Day += by
		tried := board.If(moved)
		next := planned(w.pen(), d, d)
		next.Write(moved)
		there := season.Clashes(plannerOf(next))
		if len(tried) != len(there) {
			t.Fatalf("%d days on: tried %v, planned %v", by, kindsOf(tried), kindsOf(there))
		}
		for i, c := range tried {
			if o := there[i]; c.Kind != o.Kind || c.From != o.From || c.To != o.To || c.Want != o.Want || c.Have != o.Have || c.Why != o.Why {
				t.Errorf("%d days on: tried %+v, planned %+v", by, c, o)
			}
		}
	}
	if again := board.Clashes(); len(again) != 4 {
		t.Errorf("the board is changed: %v", kindsOf(again))
	}
}

// Two grafts on a day come apart though their virgins want more drones than there are, apart
// as together.
func TestGraftsComeApartWhereDronesAreShort(t *testing.T) {
	on := day(t, "2027-04-20")
	pen := world{nucs: 60, starters: 6, finishers: 12, drones: 2}.pen()
	for _, name := range []string{"one", "two"} {
		pen.Write(book.BatchPlanned{Batch: booktest.Batch(name), Day: on, Larvae: 24, Nucs: 12, Yard: booktest.Yard("home")})
	}
	all := season.Clashes(plannerOf(pen))
	clash(t, all, season.DronesShort)
	if c := clash(t, all, season.TwoGrafts); len(c.Ways) == 0 || c.Ways[0].Days == 0 {
		t.Errorf("%s %+v", c.Why, c.Ways)
	}
}
