package season_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/season"
)

// owed is a book of one order for which too small a graft is planned.
func owed(t *testing.T, larvae, nucs int, graft string) *booktest.Pen {
	by, o := day(t, "2027-06-16"), booktest.Order("1")
	pen := world{nucs: 60}.pen()
	return pen.Write(
		book.OrderTaken{Order: o, Number: "1", Queens: 8, By: by},
		book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, graft), Larvae: larvae, Nucs: nucs, Queens: 8, By: by, Orders: []book.OrderID{o}},
	)
}

// What a planned graft leaves missing of an order at the wished certainty is looked for, and what is found makes
// it as sure as hand-over says once it is planned; then nothing is looked for any more.
func TestWhatAPlannedGraftLeavesMissing(t *testing.T) {
	pen := owed(t, 16, 10, "2027-04-28")
	p := plannerOf(pen)
	was := handover.New(p).Chance(p, 0, day(t, "2027-06-16"))
	promises := promisesOf(p)
	if was <= 0 || was > 0.85 || len(promises) != 1 || promises[0].Has == nil || promises[0].Queens != 8 {
		t.Fatalf("planned, %.2f sure: %+v", was, promises)
	}
	alone := season.Search(p, season.Wanted{Promises: []season.Promise{{Queens: 8, By: promises[0].By}}}, nil)
	f := season.Search(p, season.Wanted{Promises: promises}, nil)
	if len(f.Batches) == 0 || len(f.Kept) != 1 || f.Minutes >= alone.Minutes {
		t.Fatalf("%d grafts of %.0f min, without the planned one %.0f: %+v", len(f.Batches), f.Minutes, alone.Minutes, f.Short)
	}
	for i := range f.Batches {
		pen.Write(f.Plan(i, booktest.Batch(fmt.Sprint(i))))
	}
	p = plannerOf(pen)
	then := handover.New(p).Chance(p, 0, promises[0].By)
	if told := f.Kept[0].Chance; then-told > 1e-9 || told-then > 1e-9 || then < 0.88 {
		t.Errorf("told to be %.4f sure, hand-over says %.4f", told, then)
	}
	if again := promisesOf(p); len(again) != 0 {
		t.Errorf("kept, it is looked for again: %+v", again)
	}
}

// What hangs in a finisher and was planned by nobody is what an order of its line has too: it waits
// for that, told as sure as hand-over says, and the search looks for no second graft, or for what it leaves missing.
func TestAGraftForNobodyIsNotLookedForAgain(t *testing.T) {
	for larvae, again := range map[int]int{60: 0, 12: 1} {
		pen := world{nucs: 60}.pen().Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 6, By: day(t, "2027-06-16")})
		pen.At("2027-04-28 10:00").Write(book.Grafted{Batch: booktest.Batch("b"), Number: 1, Larvae: larvae})
		p := plan.New(course.New(pen.View("2027-04-29 08:00")))
		sheet := handover.New(p)
		waits, searched := season.EntrustedTo(p, sheet), season.Promises(p, sheet, 0)
		if len(waits) != 1 || !waits[0].Grafted || waits[0].Chance != sheet.Chance(p, 0, sheet.Orders[0].On) || len(searched) != again {
			t.Errorf("%d larvae: waits for %+v, searched %+v", larvae, waits, searched)
		}
		if again == 1 && searched[0].Has == nil {
			t.Error("what it has does not count")
		}
	}
}

// Where nothing reaches the wish, the best there is room for is told with its chance, and the queens of the
// lines are those that are short.
func TestTheBestThatAPlannedGraftCanBeHelpedWith(t *testing.T) {
	pen := world{nucs: 13}.pen()
	o := booktest.Order("1")
	pen.Write(
		book.OrderTaken{Order: o, Number: "1", Queens: 8, By: day(t, "2027-06-16")},
		book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-04-28"), Larvae: 16, Nucs: 9, Queens: 8, By: day(t, "2027-06-16"), Orders: []book.OrderID{o}},
	)
	p := plannerOf(pen)
	f := season.Search(p, season.Wanted{Promises: promisesOf(p)}, nil)
	if len(f.Short) != 1 || len(f.Batches) == 0 {
		t.Fatalf("%+v", f)
	}
	s := f.Short[0]
	_, short := f.Queens()
	without := handover.New(p).Chance(p, 0, day(t, "2027-06-16"))
	if short != s.Off || s.Queens != 8-s.Off || s.Part < 0.9-1e-9 || s.Chance <= without || s.Chance >= 0.88 {
		t.Errorf("%d short, %.3f sure without: %+v", short, without, s)
	}
}

// A graft whose day is past and that nobody made counts nothing: neither for its order nor against other grafts.
func TestAGraftThatWasNotMadeCountsNothing(t *testing.T) {
	with := plannerOf(owed(t, 90, 60, "2027-03-30"))
	promises := promisesOf(with)
	if len(promises) != 1 || promises[0].Has != nil || len(season.EntrustedTo(with, handover.New(with))) != 0 {
		t.Fatalf("%+v", promises)
	}
	pen := world{nucs: 60}.pen()
	pen.Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 8, By: day(t, "2027-06-16")})
	alone := plannerOf(pen)
	search := func(p *plan.Planner) season.Found {
		return season.Search(p, season.Wanted{Promises: promisesOf(p)}, nil)
	}
	if a, b := search(with), search(alone); len(a.Batches) == 0 || fmt.Sprint(days(a), a.Minutes) != fmt.Sprint(days(b), b.Minutes) {
		t.Errorf("grafts %v, without it %v", days(a), days(b))
	}
}

// Where people have few hours a graft without a clash is preferred, also one that takes more work; and what
// clashes all the same is told before it is planned as afterwards.
func TestClashesAreToldBeforeTheyArePlanned(t *testing.T) {
	pen := world{nucs: 60, drones: 2}.pen()
	all := book.FreeHours{From: 480, Until: 1200}
	pen.Write(book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida M.", Free: [7]book.FreeHours{1: all, 2: all, 3: all, 4: all, 6: {From: 600, Until: 660}}})
	before := plannerOf(pen)
	w := season.Wanted{}
	for i := range 2 {
		w.Promises = append(w.Promises, season.Promise{Name: fmt.Sprint("order ", i), Queens: 5, By: day(t, "2027-07-16") + calendar.Day(4*i), Sure: 0.8})
	}
	f := season.Search(before, w, nil)
	told := f.Clashes(before)
	for i := range f.Batches {
		pen.Write(f.Plan(i, booktest.Batch(fmt.Sprint(i))))
	}
	after := season.Clashes(plannerOf(pen))
	if len(f.Batches) == 0 || len(told) == 0 || len(told) != len(after) {
		t.Fatalf("%d grafts, %d clashes told, %d afterwards", len(f.Batches), len(told), len(after))
	}
	for i, c := range after {
		if c.Why != told[i].Why {
			t.Errorf("%q, told %q", c.Why, told[i].Why)
		}
	}
}
