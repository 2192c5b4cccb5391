package season_test

import (
	"math"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// lateBook is a yard of twenty nucs in a place with cool autumns, and one order by a day.
func lateBook(by calendar.Day) *booktest.Pen {
	home := booktest.Yard("home")
	p := world{nucs: 20}.pen().Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "Europe/Berlin"})
	for m := time.January; m <= time.December; m++ {
		high := 12 - 13*math.Cos(2*math.Pi*(float64(m)-0.7)/12)
		p.Write(book.WeatherNormal{Yard: home, Month: int(m), Low: book.Said(high - 9), High: book.Said(high), Rainy: book.Said(0.3)})
	}
	return p.Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 4, By: by})
}

// TestLateGraftsHaveOneChance: of a graft whose queens mate when drones end the season, and one after
// it, the wish, the plan, hand-over and, once it is made, the graft as it was planned say one chance;
// the later, the less. What the search finds then is as sure as a wish has it.
func TestLateGraftsHaveOneChance(t *testing.T) {
	by, home, before := day(t, "2027-10-10"), booktest.Yard("home"), 1.0
	for _, graft := range []string{"2027-07-20", "2027-08-10", "2027-08-13", "2027-08-20", "2027-08-30"} {
		pen, b := lateBook(by), booktest.Batch("b")
		at := func(on string) *plan.Planner { return plan.New(course.New(pen.View(on))) }
		wished := at("2027-07-01 08:00").Answer(plan.Wish{Queens: 4, By: by, Graft: day(t, graft), Larvae: 24, Nucs: 12, Yard: home}).Chance
		pen.Write(book.BatchPlanned{Batch: b, Day: day(t, graft), Larvae: 24, Nucs: 12, Queens: 4, By: by, Yard: home, Orders: []book.OrderID{booktest.Order("1")}})
		p := at("2027-07-01 08:00")
		planned, _ := p.View().BatchPlan(b)
		same := func(what string, chance float64) {
			if math.Abs(chance-wished) > 1e-9 {
				t.Errorf("grafted on %s a wish has %.6f, %s %.6f", graft, wished, what, chance)
			}
		}
		same("the plan", p.Sure(planned))
		same("hand-over", handover.New(p).Chance(p, 0, by))
		pen.At(graft + " 13:00").Write(book.Grafted{Batch: b, Number: 1, Larvae: 24})
		p = at(graft + " 18:00")
		same("the graft as planned", p.AsPlanned(p.Left(p.View().Batch(b)), 4, by))
		if sheet, gives := handover.New(p).Chance(p, 0, by), p.Gives(p.View().Batch(b), by, false).AtLeast(4); math.Abs(sheet-gives) > 1e-9 {
			t.Errorf("grafted on %s it gives %.6f, by hand-over %.6f", graft, gives, sheet)
		}
		if wished > before+1e-9 {
			t.Errorf("grafted on %s it is %.3f sure, earlier %.3f", graft, wished, before)
		}
		before = wished
	}
	if before > 0.01 {
		t.Errorf("after the season %.3f sure", before)
	}
	p := plan.New(course.New(lateBook(by).View("2027-07-30 08:00")))
	f := season.Search(p, season.Wanted{Promises: []season.Promise{{Queens: 4, By: by}}}, nil)
	if len(f.Kept) != 1 || len(f.Batches) != 1 {
		t.Fatalf("%+v", f)
	}
	found := f.Plan(0, booktest.Batch("found"))
	a := p.Answer(plan.Wish{Queens: 4, By: by, Graft: found.Day, Minute: found.Minute, Larvae: found.Larvae, Nucs: found.Nucs, Yard: found.Yard})
	if math.Abs(a.Chance-f.Kept[0].Chance) > 1e-9 || a.Chance < 0.5 {
		t.Errorf("the search has %.6f on %s, a wish %.6f", f.Kept[0].Chance, found.Day, a.Chance)
	}
}
