package handover_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
)

// An order due far ahead is not short while a graft for it can still be in time, nor
// while one is planned that gives all; it is from the day on which neither is so.
func TestShortOnlyWhenNothingKeepsIt(t *testing.T) {
	by, b := day(t, "2027-07-20"), booktest.Batch("b")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	p.At("2027-05-01 08:00").Write(order("1", 12, "Rook", by))
	at := func(on string) (handover.Served, calendar.Day) {
		v := p.View(on)
		s := sheetOf(v)
		return s.Orders[0], handover.ShortSince(v, s)[booktest.Order("1")]
	}
	o, since := at("2027-05-10 08:00")
	if o.Short != 12 || o.Lost || since != 0 || o.GraftBy.Day <= day(t, "2027-05-10") || o.GraftBy.Day >= by-28 {
		t.Errorf("ten weeks ahead: %+v, short since %s", o, since)
	}
	last := o.GraftBy.Day
	p.At("2027-05-20 08:00").Write(book.BatchPlanned{Batch: b, Day: last, Larvae: 40, Nucs: 20, Queens: 12, Orders: []book.OrderID{booktest.Order("1")}})
	if o, since := at(last.String() + " 08:00"); o.Lost || o.Planned != 12 || since != 0 {
		t.Errorf("the graft is for today: %+v, short since %s", o, since)
	}
	// Nobody grafted: on the next day it can still be made, and from its end on the order cannot be kept.
	lapsed := last + 1
	if o, since := at(lapsed.String() + " 08:00"); o.Lost || o.Planned != 12 || since != 0 {
		t.Errorf("the graft is a day late: %+v, short since %s", o, since)
	}
	if o, since := at((last + 5).String() + " 08:00"); !o.Lost || o.Planned != 0 || since != lapsed {
		t.Errorf("five days after the graft that was not made: %+v, short since %s, want %s", o, since, lapsed)
	}
	// Two weeks are looked back: the day before it, on which it was not so, is seen for
	// thirteen days, and on the fourteenth nobody knows since when.
	for days, want := range map[calendar.Day]calendar.Day{2: lapsed, 14: lapsed, 15: 0} {
		if o, since := at((last + days).String() + " 08:00"); !o.Lost || since != want {
			t.Errorf("%d days after: lost %v, short since %s, want %s", days, o.Lost, since, want)
		}
	}
	if o, since := at((last + 25).String() + " 08:00"); !o.Lost || since != 0 {
		t.Errorf("25 days after: lost %v, short since %s, which is not known so far back", o.Lost, since)
	}
}

// A batch that is planned for an order keeps it if the order takes its line, or nobody told
// which it is; once it is grafted, by the line that was grafted: queens of no line are dealt to
// no order that wants one.
func TestAnotherLineIsNotPlannedForAnOrder(t *testing.T) {
	for line, planned := range map[string][2]int{"Rook": {5, 5}, "Plover": {5, 5}, "": {5, 0}, "Yarrow": {0, 0}} {
		for i, want := range planned {
			grafted := i == 1
			taken := order("1", 5, "Rook", day(t, "2027-06-20"))
			taken.Substitute = []string{"Plover"}
			b := book.BatchPlanned{Batch: booktest.Batch("a"), Day: day(t, "2027-05-03"), Larvae: 40, Nucs: 20, Line: line, Orders: []book.OrderID{taken.Order}}
			p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"}, taken)
			if grafted {
				b.Line = ""
				p.Write(b).At("2027-05-03 12:00").Write(book.Grafted{Batch: b.Batch, Number: 7, Line: line, Larvae: 40})
			} else {
				p.Write(b)
			}
			if o := sheetOf(p.View("2027-05-03 18:00")).Orders[0]; o.Planned != want {
				t.Errorf("line %q, grafted %t: %d planned, want %d", line, grafted, o.Planned, want)
			}
		}
	}
}

// A batch planned for fewer queens than an order misses keeps a part of it, one
// grafted for it as many as its cells are counted on to give; of two orders the first is served first.
func TestWhatIsPlannedForOrders(t *testing.T) {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	p.At("2027-04-10 08:00").Write(order("1", 5, "Rook", day(t, "2027-06-20")), order("2", 5, "", day(t, "2027-06-20")))
	both := []book.OrderID{booktest.Order("1"), booktest.Order("2")}
	p.At("2027-04-11 08:00").Write(
		book.BatchPlanned{Batch: booktest.Batch("a"), Day: day(t, "2027-05-03"), Larvae: 20, Nucs: 7, Orders: both},
		book.BatchPlanned{Batch: booktest.Batch("late"), Day: day(t, "2027-06-01"), Larvae: 20, Queens: 20, Orders: both},
	)
	planned := func(on string) (got [2]int) {
		for i, o := range sheetOf(p.View(on)).Orders {
			got[i] = o.Planned
		}
		return got
	}
	if got := planned("2027-04-12 08:00"); got != [2]int{5, 2} {
		t.Errorf("planned %v, want 5 and 2", got)
	}
	p.At("2027-05-03 12:00").Write(book.Grafted{Batch: booktest.Batch("a"), Number: 7, Line: "Rook", Larvae: 20})
	p.At("2027-05-04 12:00").Write(book.TakeCounted{Batch: booktest.Batch("a"), Accepted: 4})
	if got := planned("2027-05-05 08:00"); got != [2]int{2, 0} {
		t.Errorf("grafted, four taken: planned %v, want two whom four cells give more likely than not", got)
	}
}

// The evening of a graft that is done as planned tells nothing new: what it was planned for, surely
// or hardly, is planned for still.
func TestTheEveningOfAGraftTellsNothingNew(t *testing.T) {
	for queens := 4; queens <= 16; queens += 2 {
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"}, order("1", queens, "Rook", day(t, "2027-06-20")))
		p.Write(book.BatchPlanned{Batch: booktest.Batch("a"), Day: day(t, "2027-05-03"), Line: "Rook", Larvae: 30, Nucs: 20, Queens: queens, By: day(t, "2027-06-20"), Orders: []book.OrderID{booktest.Order("1")}})
		before := sheetOf(p.View("2027-05-03 08:00")).Orders[0]
		p.At("2027-05-03 15:00").Write(book.Grafted{Batch: booktest.Batch("a"), Number: 7, Line: "Rook", Larvae: 30})
		if after := sheetOf(p.View("2027-05-03 18:00")).Orders[0]; before.Planned != queens || after.Planned != queens || after.Lost {
			t.Errorf("%d queens: %d planned before the graft, %d after it, lost %v", queens, before.Planned, after.Planned, after.Lost)
		}
	}
}

// Nor does the hour at which it was done on its day.
func TestTheHourOfAGraftTellsNothingNew(t *testing.T) {
	for _, hour := range []string{"08:00", "15:20", "20:00"} {
		for by := calendar.Day(28); by < 36; by++ {
			due := day(t, "2027-05-03") + by
			p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"}, order("1", 8, "Rook", due))
			p.Write(book.BatchPlanned{Batch: booktest.Batch("a"), Day: day(t, "2027-05-03"), Minute: 15 * 60, Line: "Rook", Larvae: 30, Nucs: 20, Queens: 8, By: due, Orders: []book.OrderID{booktest.Order("1")}})
			p.At("2027-05-03 " + hour).Write(book.Grafted{Batch: booktest.Batch("a"), Number: 7, Line: "Rook", Larvae: 30})
			if o := sheetOf(p.View("2027-05-03 21:00")).Orders[0]; o.Planned != 8 || o.Lost {
				t.Errorf("at %s, by %s: %d planned, lost %v", hour, due.Short(), o.Planned, o.Lost)
			}
		}
	}
}

// By hand: eight Rook in nucs lay and will be ready in May, nine in ten of them good enough: six
// with a chance of 0.85. An order before wants four Rook by then, so two are left for the five of
// 20 July, and a graft is for three.
func TestWhoStandsInNucsIsNotGraftedFor(t *testing.T) {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	later := booktest.Batch("later")
	p.At("2027-04-03 15:00").Write(book.Grafted{Batch: later, Number: 9, Line: "Rook", Larvae: 20})
	for i := range 8 {
		n := booktest.Nuc(fmt.Sprint("later", i))
		p.At("2027-04-10 12:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("L%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")})
		p.At("2027-04-13 12:00").Write(book.CellGiven{Nuc: n, Batch: later})
		p.At("2027-05-13 12:00").Write(book.Looked{Nuc: n, Queen: book.QueenSeen, Eggs: book.SingleEggs})
	}
	p.At("2027-05-14 08:00").Write(order("1", 4, "Rook", day(t, "2027-05-20")), order("2", 5, "Rook", day(t, "2027-07-20")))
	of := func() handover.Served { return sheetOf(p.View("2027-05-18 08:00")).Orders[1] }
	if o := of(); o.Short != 5 || o.Coming != 2 || o.Planned != 0 || o.Lost {
		t.Errorf("short of %d, %d to be expected, %d planned, lost %v; want 5, 2, 0", o.Short, o.Coming, o.Planned, o.Lost)
	}
	p.At("2027-05-15 08:00").Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-05-20"), Larvae: 20, Nucs: 10, Orders: []book.OrderID{booktest.Order("2")}})
	if o := of(); o.Coming != 2 || o.Planned != 3 || o.Lost {
		t.Errorf("%d to be expected, %d planned; want 2 and 3", o.Coming, o.Planned)
	}
}

// The sheet and the plan of a wish name the same day on which to graft, in a yard whose weather
// lets few fly early: an order is lost from the day on which the wish has no graft in time.
func TestAnOrderIsGraftedForWhenItsWishIs(t *testing.T) {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-03-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for i := range 20 {
		n := booktest.Nuc(fmt.Sprint("n", i))
		p.Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: home})
	}
	for m, high := range []float64{2, 4, 9, 14, 19, 22, 24, 24, 19, 13, 7, 3} {
		p.Write(book.WeatherNormal{Yard: home, Month: m + 1, Low: book.Said(high - 9), High: book.Said(high), Rainy: book.Said(0.4)})
	}
	by := day(t, "2027-06-12")
	p.Write(order("1", 12, "Rook", by))
	told, lost := map[calendar.Day]bool{}, 0
	for today := day(t, "2027-04-10"); today <= day(t, "2027-05-10"); today += 5 {
		planner := plan.New(course.New(p.View(today.String() + " 08:00")))
		o, a := handover.New(planner).Orders[0], planner.Possible(plan.Wish{Queens: 12, By: by})
		switch {
		case o.Lost == a.InTime:
			t.Errorf("%s: lost %v, and the wish is in time %v", today, o.Lost, a.InTime)
		case o.Lost:
			lost++
		case o.GraftBy.Day != a.Graft:
			t.Errorf("%s: graft by %s, and for the wish on %s", today, o.GraftBy.Day, a.Graft)
		}
		told[o.GraftBy.Day] = true
	}
	if lost == 0 || len(told) < 2 || told[by-handover.FromGraft(p.View("2027-04-10 08:00").Numbers())] {
		t.Errorf("lost on %d days, grafts told by %v", lost, told)
	}
}

// A graft that nobody planned is for whoever takes its line, from its evening until its cells can
// be given no more: an order is not short of what hangs in a finisher. It gives no more than it has
// nucs, and none to an order of another line; what is planned for somebody stays his.
func TestAGraftForNobodyServesWhoTakesItsLine(t *testing.T) {
	home, b := booktest.Yard("home"), booktest.Batch("b")
	begun := func(nucs int, line string) *booktest.Pen {
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"}, order("1", 10, "Rook", day(t, "2027-07-01")))
		for i := range nucs {
			n := booktest.Nuc(fmt.Sprint(i))
			p.Write(book.NucNamed{Nuc: n, Name: fmt.Sprint("A", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: home})
		}
		return p.At("2027-05-13 10:00").Write(book.Grafted{Batch: b, Number: 1, Line: line, Larvae: 80})
	}
	for name, c := range map[string]struct {
		pen  *booktest.Pen
		on   string
		want int
	}{
		"its line":           {begun(40, "Rook"), "2027-05-14 08:00", 10},
		"few nucs":           {begun(4, "Rook"), "2027-05-14 08:00", 1}, // by hand: each of four cells gives one with some 60 of 100, so one with 97, two with 82
		"another line":       {begun(40, "Plover"), "2027-05-14 08:00", 0},
		"no line":            {begun(40, ""), "2027-05-14 08:00", 0},
		"its cells are over": {begun(40, "Rook"), "2027-05-26 08:00", 0},
		"wished by the keeper himself": {begun(40, "Rook").At("2027-05-01 08:00").Write(book.BatchPlanned{
			Batch: b, Day: day(t, "2027-05-13"), Line: "Rook", Larvae: 80, Nucs: 40, Queens: 10, By: day(t, "2027-07-01"),
		}), "2027-05-14 08:00", 0},
	} {
		if o := sheetOf(c.pen.View(c.on)).Orders[0]; o.Planned != c.want {
			t.Errorf("%s: %d are counted on, want %d", name, o.Planned, c.want)
		}
	}
}

// A graft that was planned with its nucs and for nobody is counted on as one that nobody planned; and what
// is counted on does not hang on what the planner was asked before.
func TestAGraftForNobodyIsCountedOnAlike(t *testing.T) {
	home, b := booktest.Yard("home"), booktest.Batch("b")
	counted := func(plan ...book.Fact) *booktest.Pen {
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"}, order("1", 6, "Rook", day(t, "2027-07-01")))
		for i := range 12 {
			n := booktest.Nuc(fmt.Sprint(i))
			p.Write(book.NucNamed{Nuc: n, Name: fmt.Sprint("A", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: home})
		}
		return p.Write(plan...).At("2027-05-13 10:00").Write(book.Grafted{Batch: b, Number: 1, Line: "Rook", Larvae: 60})
	}
	alone := sheetOf(counted().View("2027-05-14 08:00")).Orders[0]
	planned := sheetOf(counted(book.BatchPlanned{Batch: b, Day: day(t, "2027-05-13"), Line: "Rook", Larvae: 60, Nucs: 12, Yard: home}).View("2027-05-14 08:00")).Orders[0]
	if alone.Planned == 0 || alone.Missing() == 0 || alone.Planned != planned.Planned || alone.Sure != planned.Sure {
		t.Errorf("not planned: %d, %.3f; planned for nobody: %d, %.3f", alone.Planned, alone.Sure, planned.Planned, planned.Sure)
	}
	p := plan.New(course.New(counted().View("2027-05-14 08:00")))
	p.Buys()
	if o := handover.New(p).Orders[0]; o.Planned != alone.Planned || o.Sure != alone.Sure {
		t.Errorf("asked for the buying list before: %d, %.3f, else %d, %.3f", o.Planned, o.Sure, alone.Planned, alone.Sure)
	}
}
