package handover_test

import (
	"fmt"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
)

// A poor take, and then a queen found gone, leave an order short of queens that were planned:
// it says how many the batch has left of them, and since when that is known, while another graft
// can still keep it as well as when none can.
func TestABatchGivesFewerThanPlanned(t *testing.T) {
	id, one := booktest.Batch("b"), booktest.Order("1")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	p.At("2027-04-20 08:00").Write(order("1", 12, "Rook", day(t, "2027-07-20")))
	p.At("2027-04-21 08:00").Write(book.BatchPlanned{Batch: id, Day: day(t, "2027-05-03"), Line: "Rook", Larvae: 60, Nucs: 30, Queens: 12, Orders: []book.OrderID{one}})
	p.At("2027-05-03 12:00").Write(book.Grafted{Batch: id, Number: 3, Line: "Rook", Larvae: 60})
	p.At("2027-05-05 12:00").Write(book.TakeCounted{Batch: id, Accepted: 8})
	var nucs []book.NucID
	for i := range 8 {
		n := booktest.Nuc(fmt.Sprint("A", i))
		nucs = append(nucs, n)
		p.At("2027-05-12 08:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")}, book.NucMadeUp{Nuc: n})
		p.At("2027-05-13 08:00").Write(book.CellGiven{Nuc: n, Batch: id})
	}
	p.At("2027-05-30 08:00").Write(book.Looked{Nuc: nucs[0], Queen: book.NoneSeen, Eggs: book.NoEggs, Thorough: true}, book.QueenGone{Nuc: nucs[0]})
	at := func(on string) (o handover.Served, since calendar.Day) {
		v := p.View(on)
		s := sheetOf(v)
		return s.Orders[0], handover.ShortSince(v, s)[one]
	}
	if o, since := at("2027-05-04 08:00"); o.Missing() != 0 || len(o.Fell) != 0 || since != 0 {
		t.Errorf("before the take is counted: %d missing, fell %+v, since %s", o.Missing(), o.Fell, since)
	}
	o, since := at("2027-05-07 08:00")
	if o.Lost || o.Missing() != 9 || since != day(t, "2027-05-05") || o.FellWords() != "batch 3 has 8 cells and queens left, 3 of them to be counted on, for 12 planned" {
		t.Errorf("eight taken: lost %v, %d missing since %s, %q", o.Lost, o.Missing(), since, o.FellWords())
	}
	if o, _ := at("2027-05-31 08:00"); o.FellWords() != "batch 3 has 7 cells and queens left, 3 of them to be counted on, for 12 planned" {
		t.Errorf("one more is gone: %q", o.FellWords())
	}
	if o, since := at("2027-05-27 08:00"); o.Missing() == 0 || since != 0 {
		t.Errorf("three weeks later: %d missing since %s, which is not looked back so far for", o.Missing(), since)
	}
}

// A graft may be planned less surely than nucs are counted on: its order falls short on the day of a poor take, and neither
// when it is grafted, nor when its cells are given; after a take as was to be expected it does not.
func TestAnOrderFallsShortOnTheDayOfTheTake(t *testing.T) {
	for _, c := range []struct{ queens, taken, missing int }{{8, 30, 0}, {8, 6, 6}, {12, 30, 0}, {12, 6, 9}} {
		id, one := booktest.Batch("b"), booktest.Order("1")
		p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
		p.At("2027-04-20 08:00").Write(order("1", c.queens, "Rook", day(t, "2027-07-20")))
		p.At("2027-04-21 08:00").Write(book.BatchPlanned{Batch: id, Day: day(t, "2027-05-03"), Line: "Rook", Larvae: 40, Nucs: 24, Queens: c.queens, Orders: []book.OrderID{one}})
		p.At("2027-05-03 12:00").Write(book.Grafted{Batch: id, Number: 3, Line: "Rook", Larvae: 40})
		p.At("2027-05-05 12:00").Write(book.TakeCounted{Batch: id, Accepted: c.taken})
		for i := range min(c.taken, 24) {
			n := booktest.Nuc(fmt.Sprint("A", i))
			p.At("2027-05-01 08:00").Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")})
			p.At("2027-05-13 08:00").Write(book.CellGiven{Nuc: n, Batch: id})
		}
		for _, on := range []string{"2027-05-02 08:00", "2027-05-04 08:00", "2027-05-05 18:00", "2027-05-12 08:00", "2027-05-13 18:00"} {
			v := p.View(on)
			s := sheetOf(v)
			o, since := s.Orders[0], handover.ShortSince(v, s)[one]
			want, from := c.missing, day(t, "2027-05-05")
			if v.Today() < from || want == 0 {
				want, from = 0, 0
			}
			if o.Missing() != want || since != from {
				t.Errorf("%d of %d taken, by %s: %d missing since %s, want %d since %s", c.taken, c.queens, on, o.Missing(), since, want, from)
			}
		}
	}
}

// A graft that nobody made is why its order is short; an order for which nothing was ever
// planned is short of nothing that anybody counted on, and known short since no day.
func TestAGraftThatWasNotMade(t *testing.T) {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	p.At("2027-04-28 08:00").Write(order("1", 12, "Rook", day(t, "2027-07-20")), order("2", 5, "Rook", day(t, "2027-07-21")))
	p.At("2027-04-29 08:00").Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-05-03"), Line: "Rook", Larvae: 20, Queens: 12, Orders: []book.OrderID{booktest.Order("1")}})
	v := p.View("2027-05-06 08:00")
	s := sheetOf(v)
	since := handover.ShortSince(v, s)
	one, two := s.Orders[0], s.Orders[1]
	if one.Lost || one.FellWords() != "the graft planned for Mon 3 May was not made" || since[one.Order.Order] != day(t, "2027-05-04") {
		t.Errorf("lost %v, %q, since %s", one.Lost, one.FellWords(), since[one.Order.Order])
	}
	if _, told := since[two.Order.Order]; two.Missing() != 5 || len(two.Fell) != 0 || told {
		t.Errorf("of the other %d are missing, %+v, told %v", two.Missing(), two.Fell, told)
	}
}

// Cells that nobody gave, counted or wrote off are lost once the last day to give them is past: they keep
// no order any more, while there is still the time for another graft.
func TestCellsPastTheirLastDayKeepNoOrder(t *testing.T) {
	id := booktest.Batch("b")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	p.At("2027-04-20 08:00").Write(order("1", 12, "Rook", day(t, "2027-07-20")))
	p.At("2027-04-21 08:00").Write(book.BatchPlanned{Batch: id, Day: day(t, "2027-05-03"), Line: "Rook", Larvae: 60, Queens: 12, Orders: []book.OrderID{booktest.Order("1")}})
	p.At("2027-05-03 12:00").Write(book.Grafted{Batch: id, Number: 3, Line: "Rook", Larvae: 60})
	at := func(on string) handover.Served { return sheetOf(p.View(on)).Orders[0] }
	if o := at("2027-05-13 08:00"); o.Planned != 12 || o.Missing() != 0 {
		t.Errorf("ripe: %d planned, %d missing", o.Planned, o.Missing())
	}
	o := at("2027-06-01 08:00")
	if o.Planned != 0 || o.Missing() != 12 || o.GraftBy.Day == 0 || o.FellWords() != "batch 3 has no cell and no queen left for 12 planned" {
		t.Errorf("long past: %d planned, %d missing, graft by %s, %q", o.Planned, o.Missing(), o.GraftBy.Day, o.FellWords())
	}
	if o := at("2027-07-15 08:00"); !o.Lost {
		t.Error("too late for another graft, and not told as lost")
	}
}

// A graft that was written down days after it was made leaves no gap before: its order is short since the take.
func TestAnOrderIsShortSinceTheTakeOfAGraftWrittenLate(t *testing.T) {
	id, one := booktest.Batch("b"), booktest.Order("1")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	p.At("2027-04-20 08:00").Write(order("1", 12, "Rook", day(t, "2027-07-20")))
	p.At("2027-04-21 08:00").Write(book.BatchPlanned{Batch: id, Day: day(t, "2027-05-03"), Line: "Rook", Larvae: 60, Nucs: 30, Queens: 12, Orders: []book.OrderID{one}})
	p.At("2027-05-03 12:00").Write(book.Grafted{Batch: id, Number: 3, Line: "Rook", Larvae: 60})
	p.Entries[len(p.Entries)-1].Written = day(t, "2027-05-06").At(18, 0, time.UTC)
	p.At("2027-05-06 19:00").Write(book.TakeCounted{Batch: id, Accepted: 8})
	v := p.View("2027-05-07 08:00")
	if since := handover.ShortSince(v, sheetOf(v))[one]; since != day(t, "2027-05-06") {
		t.Errorf("short since %s, want the day of the take", since)
	}
}

// A planned graft that was not made counts as long as it can be made, so much later; then its order is short.
func TestAGraftCountsAsLongAsItCanBeMade(t *testing.T) {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	p.At("2027-04-20 08:00").Write(order("1", 12, "Rook", day(t, "2027-07-20")))
	p.At("2027-04-21 08:00").Write(book.BatchPlanned{
		Batch: booktest.Batch("b"), Day: day(t, "2027-05-03"), Line: "Rook", Larvae: 60, Nucs: 30, Queens: 12, Orders: []book.OrderID{booktest.Order("1")},
	})
	for on, missing := range map[string]int{"2027-05-03": 0, "2027-05-04": 0, "2027-05-05": 12, "2027-05-20": 12} {
		v := p.View(on + " 20:00")
		if o := sheetOf(v).Orders[0]; o.Missing() != missing || (missing > 0) != (len(o.Fell) > 0) {
			t.Errorf("%s: %d missing, fell %q", on, o.Missing(), o.FellWords())
		}
	}
}
