package handover_test

import (
	"fmt"
	"math"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
)

// The plan of a wish and the sheet of the orders say one chance of one order: before cells are
// given, when part of them is and when all are, after looks, and with another graft on the plan. Giving
// changes neither it nor how many are told.
func TestPlanAndSheetSayOneChance(t *testing.T) {
	b, one, by := booktest.Batch("b"), booktest.Order("1"), day(t, "2027-06-25")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	for i := range 60 {
		n := booktest.Nuc(fmt.Sprint(i))
		p.Write(book.NucNamed{Nuc: n, Name: fmt.Sprintf("A%d", i+1), Sides: 6}, book.NucPlaced{Nuc: n, Yard: booktest.Yard("home")})
	}
	planned := book.BatchPlanned{Batch: b, Day: day(t, "2027-05-03"), Line: "Rook", Larvae: 60, Nucs: 36, Queens: 22, By: by, Yard: booktest.Yard("home"), Orders: []book.OrderID{one}}
	more := planned
	more.Batch, more.Day, more.Larvae, more.Nucs, more.Queens = booktest.Batch("more"), day(t, "2027-05-20"), 20, 10, 4
	p.At("2027-04-20 08:00").Write(order("1", 22, "Rook", by), planned)
	p.At("2027-05-03 12:00").Write(book.Grafted{Batch: b, Number: 7, Line: "Rook", Larvae: 60})
	p.At("2027-05-11 12:00").Write(book.CappedCounted{Batch: b, Capped: 42})
	p.At("2027-05-13 11:00").Write(book.RipeCounted{Batch: b, Ripe: 36})
	alike := func(what, on string) (told int, chance float64) {
		t.Helper()
		planner := plan.New(course.New(p.View(on)))
		s := handover.New(planner)
		chance = s.Chance(planner, 0, by)
		want := planner.Gives(planner.View().Batch(b), by, false).AtLeast(22)
		for o := range planner.View().Plans() {
			w, _ := planner.Wished(o)
			want = w.Chance
		}
		if math.Abs(chance-want) > 1e-9 || chance < 0.1 || chance > 0.99 {
			t.Errorf("%s: the sheet has %.6f, the plan %.6f", what, chance, want)
		}
		return s.Orders[0].Coming + s.Orders[0].Planned, chance
	}
	give := func(from, to int) {
		for i := from; i < to; i++ {
			p.At("2027-05-13 12:00").Write(book.CellGiven{Nuc: booktest.Nuc(fmt.Sprint(i)), Batch: b})
		}
	}
	told, before := alike("none given", "2027-05-13 11:30")
	give(0, 20)
	part, chance := alike("20 of 36 given", "2027-05-13 12:30")
	give(20, 36)
	all, after := alike("all given", "2027-05-13 12:30")
	if told != 22 || told != part || told != all || math.Abs(before-chance) > 1e-9 || math.Abs(before-after) > 1e-9 {
		t.Errorf("told %d, %d, %d with %.6f, %.6f, %.6f", told, part, all, before, chance, after)
	}
	for i := range 8 {
		p.At("2027-05-17 12:00").Write(book.Looked{Nuc: booktest.Nuc(fmt.Sprint(i)), Queen: book.VirginSeen})
	}
	p.At("2027-05-17 14:00").Write(book.QueenGone{Nuc: booktest.Nuc("20")})
	alike("some were looked at", "2027-05-17 18:00")
	p.At("2027-05-17 19:00").Write(more)
	if _, with := alike("with another graft", "2027-05-17 20:00"); with < after {
		t.Errorf("another graft makes it %.3f, before it %.3f", with, after)
	}
}

// A graft of another line, planned for an order, makes it no surer; nor does an order that it cannot
// serve want any of its queens.
func TestAnotherLineMakesNoOrderSurer(t *testing.T) {
	by := day(t, "2027-06-25")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	p.Write(order("1", 3, "Plover", by), order("2", 3, "Rook", by))
	both := []book.OrderID{booktest.Order("1"), booktest.Order("2")}
	rook := book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-05-03"), Line: "Rook", Larvae: 40, Nucs: 20, Orders: both}
	chances := func(facts ...book.Fact) (all [2]float64) {
		q := *p
		q.Write(facts...)
		planner := plan.New(course.New(q.View("2027-04-20 08:00")))
		s := handover.New(planner)
		for i := range all {
			all[i] = s.Chance(planner, i, by)
		}
		return all
	}
	alone := rook
	alone.Orders = both[1:]
	got, want := chances(rook), chances(alone)
	if got != want || got[0] != 0 || got[1] < 0.5 {
		t.Errorf("planned for both %v, for its own alone %v", got, want)
	}
}
