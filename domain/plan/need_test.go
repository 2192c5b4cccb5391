package plan_test

import (
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

func needs(p *plan.Planner, l plan.Ladder, s plan.Size) map[plan.Good]plan.Need {
	all := map[plan.Good]plan.Need{}
	for _, n := range p.Needs(l, s) {
		all[n.Good] = n
	}
	return all
}

// 96 larvae are three starters at 45 each and four finishers at 20 of 77 takes.
// The weights: 64 nucs of 2 cups are some 90 000 bees, about 10.8 kg, of nine or
// ten colonies at 1.1 kg: common practice, no source; the arithmetic by hand.
func TestWhatABatchEats(t *testing.T) {
	p := nobody(t, "2027-03-16")
	l := p.Ladder(p.GraftAt(day(t, "2027-04-19")), 96, book.YardID{})
	got := needs(p, l, plan.Size{Larvae: 96, Nucs: 64, Takes: 77, Cells: 73, Queens: 40})
	for good, want := range map[plan.Good]float64{
		plan.CellCups: 96, plan.Starters: 3, plan.Finishers: 4, plan.Nucs: 64, plan.CupsOfBees: 128, plan.Cages: 40,
		plan.DroneColonies: 8, plan.StarterBees: 3.6, plan.NursesOfCells: 77.0 * 300 / 8300, plan.BreederOfLine: 1,
	} {
		if math.Abs(got[good].Amount-want) > 1e-9 {
			t.Errorf("%s: %v, want %v", good, got[good].Amount, want)
		}
	}
	if kg := got[plan.KilogramsOfBees].Amount; math.Abs(kg-10.8) > 0.05 {
		t.Errorf("%.2f kg of bees, want about 10.8", kg)
	}
	if n := got[plan.Nucs]; n.Short() != 64 {
		t.Errorf("a book without nucs is short of %v, want 64", n.Short())
	}
	if n := got[plan.Cages]; n.OrderBy.IsZero() || n.OrderBy >= n.From {
		t.Errorf("cages are wanted on %s and ordered by %s", n.From, n.OrderBy)
	}
}

// givers is a book with two brood sources, the first of which gave three cups a
// week ago less a day, and a breeder.
func givers() *plan.Planner {
	p := (&booktest.Pen{}).At("2027-04-01 18:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.ColonyDescribed{Colony: booktest.Colony("S1"), Name: "S1", Yard: booktest.Yard("home"), Roles: []book.Role{book.BroodSource}, Thousands: 50},
		book.ColonyDescribed{Colony: booktest.Colony("S2"), Name: "S2", Yard: booktest.Yard("home"), Roles: []book.Role{book.BroodSource}, Thousands: 24.15},
		book.ColonyDescribed{Colony: booktest.Colony("B1"), Name: "B1", Yard: booktest.Yard("home"), Roles: []book.Role{book.Breeder}, Thousands: 60},
	)
	p.At("2027-04-21 18:00").Write(book.BeesAdded{Nuc: booktest.Nuc("A1"), Cups: 3, From: booktest.Colony("S1").Subject()})
	return plan.New(course.New(p.View("2027-04-25 08:00")))
}

// By hand: 1.1 kg a week less three cups of 700 bees at 8300 a kilogram is 0.847
// kg; 4150 bees over twenty thousand are 0.5 kg; a breeder gives nothing.
func TestWhoGivesBees(t *testing.T) {
	all := givers().Givers(day(t, "2027-04-27"))
	if len(all) != 2 || all[0].Colony.Name != "S1" || all[1].Colony.Name != "S2" {
		t.Fatalf("%d give, want S1 and S2", len(all))
	}
	if kg := all[0].Kilograms; math.Abs(kg-(1.1-3*700.0/8300)) > 1e-9 {
		t.Errorf("S1 gives %.3f kg", kg)
	}
	if kg := all[1].Kilograms; math.Abs(kg-0.5) > 1e-9 {
		t.Errorf("S2 gives %.3f kg", kg)
	}
	if later := givers().Givers(day(t, "2027-04-28")); math.Abs(later[0].Kilograms-1.1) > 1e-9 {
		t.Errorf("a week later S1 gives %.3f kg", later[0].Kilograms)
	}
}

func TestMinutesStandOnTheBestDays(t *testing.T) {
	p := nobody(t, "2027-03-16")
	l := p.Ladder(p.GraftAt(day(t, "2027-04-19")), 96, book.YardID{})
	var sum float64
	for _, m := range p.Minutes(l, plan.Size{Larvae: 96, Nucs: 64, Takes: 77, Cells: 73, Queens: 40}) {
		sum += m.Minutes
		if m.Step != plan.LookForEggs && m.Day != l.Rung(m.Step).Best {
			t.Errorf("%s on %s, best on %s", m.Step, m.Day, l.Rung(m.Step).Best)
		}
	}
	// by hand: 80 + 20 + 15 + 120 + 48 + 20 + 40 + 40 + 256 + 64 + 128 + 48 + 160
	if math.Abs(sum-1039) > 1e-9 {
		t.Errorf("%v minutes in all, 1039 by hand", sum)
	}
}

// TestNucsThatKeepTheirBees: of five nucs two are alive and free by then, one is alive and
// holds a cell, two are empty, one of them on full combs: a batch of four makes up the two
// empty ones, by hand 2 × 2 cups (the usual night), 4 + 10 min, half a kilogram of food
// each, and of six two more such as the book does not know.
func TestNucsThatKeepTheirBees(t *testing.T) {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-03-01 18:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for i, side := range []float64{2, 2, 2, 2, 9} {
		n := booktest.Nuc(string(rune('A' + i)))
		p.At("2027-03-01 18:00").Write(book.NucNamed{Nuc: n, Name: string(rune('A' + i)), Sides: 6, Side: side}, book.NucPlaced{Nuc: n, Yard: home})
		if i == 1 || i == 2 || i == 3 {
			p.At("2027-03-20 18:00").Write(book.NucMadeUp{Nuc: n, Cups: 3})
		}
	}
	p.At("2027-03-21 18:00").Write(book.Grafted{Batch: booktest.Batch("b"), Number: 1, Larvae: 10})
	p.At("2027-04-27 18:00").Write(book.CellGiven{Nuc: booktest.Nuc("D"), Batch: booktest.Batch("b")})
	pl := plan.New(course.New(p.View("2027-04-28 08:00")))
	l := pl.Ladder(pl.GraftAt(day(t, "2027-05-05")), 10, home)
	n := pl.View().Numbers()
	mini, frame, food := n.Get(practice.MinutesMakeUp), n.Get(practice.MinutesMakeUpFrameNuc), n.Get(practice.FoodPerNuc)
	all := pl.MakeUps(l, plan.Size{Yard: home}, 6)
	cups := all[6].Cups - all[5].Cups // of one that the book does not know
	for nucs, want := range map[int]plan.MakeUp{
		0: {}, 2: {}, 3: {Nucs: 1, Cups: cups, Minutes: mini},
		4: {Nucs: 2, Cups: 2 * cups, Minutes: mini + frame, Combs: n.Get(practice.BroodCombsPerNuc)},
		6: {Nucs: 4, Cups: 4 * cups, Minutes: 3*mini + frame, Combs: n.Get(practice.BroodCombsPerNuc)},
	} {
		got := all[nucs]
		got.Kilograms, got.All = 0, plan.ByKind{}
		if got != want || cups <= 0 {
			t.Errorf("%d nucs: %+v, want %+v", nucs, got, want)
		}
		size := plan.Size{Larvae: 10, Nucs: nucs, Takes: 8, Cells: 7, Queens: 3, Yard: home}
		if got := needs(pl, l, size)[plan.FoodForNucs].Amount; math.Abs(got-food*float64(want.Nucs)) > 1e-9 {
			t.Errorf("%d nucs: %v kg of food, want %v for each of %d", nucs, got, food, want.Nucs)
		}
		minutes := 0.0
		for _, m := range pl.Minutes(l, size) {
			if m.Step == plan.MakeUpNucs {
				minutes += m.Minutes
			}
		}
		if math.Abs(minutes-want.Minutes) > 1e-9 {
			t.Errorf("%d nucs: %v min, want %v", nucs, minutes, want.Minutes)
		}
	}
}

// TestNucsAreLeftToTheBatchBefore: the living nuc that a planned batch wants at the same
// time is not counted for a later one as well.
func TestNucsAreLeftToTheBatchBefore(t *testing.T) {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-03-01 18:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.NucNamed{Nuc: booktest.Nuc("A"), Name: "A", Sides: 6, Side: 2}, book.NucPlaced{Nuc: booktest.Nuc("A"), Yard: home}, book.NucMadeUp{Nuc: booktest.Nuc("A"), Cups: 3})
	made := func(graft string) int {
		pl := plan.New(course.New(p.View("2027-04-28 08:00")))
		return pl.MakeUps(pl.Ladder(pl.GraftAt(day(t, graft)), 10, home), plan.Size{Yard: home}, 1)[1].Nucs
	}
	if got := made("2027-05-12"); got != 0 {
		t.Errorf("a nuc that is alive is made up: %d", got)
	}
	p.At("2027-04-20 18:00").Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-05-05"), Larvae: 10, Nucs: 1, Yard: home})
	if before, after := made("2027-05-03"), made("2027-05-12"); before != 0 || after != 1 {
		t.Errorf("%d are made up for the batch before, %d for the one after", before, after)
	}
}

// TestABatchDoesNotTakeItsOwnNucs: by hand, of four living nucs a batch of four makes up
// none, on its day and moved to any other; of two batches of one day the one that is planned
// first has them, and a wish comes after both.
func TestABatchDoesNotTakeItsOwnNucs(t *testing.T) {
	home := booktest.Yard("home")
	p := yardOf(4)
	for _, n := range []string{"0", "1", "2", "3"} {
		p.Write(book.NucMadeUp{Nuc: booktest.Nuc(n), Cups: 3})
	}
	batch := func(name string) book.BatchPlanned {
		return book.BatchPlanned{Batch: booktest.Batch(name), Day: day(t, "2027-05-05"), Larvae: 10, Nucs: 4, Yard: home}
	}
	p.Write(batch("a"))
	pl := plannerOf(p, "2027-04-28 08:00")
	made := func(name string, graft string) int {
		b, _ := pl.View().BatchPlan(booktest.Batch(name))
		b.Yard, b.Nucs, b.Larvae, b.Day = home, 4, 10, day(t, graft)
		return pl.MadeUp(pl.LadderOf(b), pl.SizeOf(b)).Nucs
	}
	for _, graft := range []string{"2027-05-04", "2027-05-05", "2027-05-06", "2027-05-20"} {
		if got := made("a", graft); got != 0 {
			t.Errorf("grafted on %s %d of its own four are made up", graft, got)
		}
	}
	pl = plannerOf(p.Write(batch("b")), "2027-04-28 08:00")
	var of []int
	for b := range pl.View().Plans() {
		of = append(of, pl.MadeUp(pl.LadderOf(b), pl.SizeOf(b)).Nucs)
	}
	if wish := made("none", "2027-05-05"); len(of) != 2 || of[0] != 0 || of[1] != 4 || wish != 4 {
		t.Errorf("%v are made up for two batches of one day, %d for a wish", of, wish)
	}
}
