package season_test

import (
	"fmt"
	"regexp"
	"slices"
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

// overNewYear is a book of the south with a plan for each kind of clash, before and after New Year: two
// grafts on a day that want more of all than there is, one whose cells nobody is free to give, grafts for
// an order that cannot be kept whole, and one whose comb is old when its virgins fly.
func overNewYear(t *testing.T) *booktest.Pen {
	pen := world{nucs: 60, starters: 1, finishers: 1, givers: 1, drones: 1, places: 40}.pen()
	ida, home, o := booktest.Person("Ida"), booktest.Yard("home"), booktest.Order("1")
	who := book.PersonDescribed{Person: ida, Name: "Ida M."}
	for d := range who.Free {
		who.Free[d] = book.FreeHours{From: 600, Until: 720}
	}
	graft := func(name, on string, larvae, nucs int, orders ...book.OrderID) book.BatchPlanned {
		d := day(t, on)
		return book.BatchPlanned{Batch: booktest.Batch(name), Day: d, Larvae: larvae, Nucs: nucs, Yard: home, Queens: nucs / 3, By: d + 60, Orders: orders}
	}
	for i := range 20 { // full combs
		pen.Write(book.NucNamed{Nuc: booktest.Nuc(fmt.Sprint(i)), Name: fmt.Sprintf("A%d", i+1), Sides: 6, Side: 8})
	}
	pen.Write(who, book.DaysOff{Person: ida, From: day(t, "2027-12-27"), To: day(t, "2028-01-04")},
		book.OrderTaken{Order: o, Number: "1", Queens: 30, By: day(t, "2028-02-12")},
		book.OrderTaken{Order: booktest.Order("2"), Number: "2", Queens: 20, By: day(t, "2028-02-20")},
		graft("one", "2027-12-18", 60, 40, o), graft("two", "2027-12-18", 60, 30), graft("three", "2028-01-02", 60, 40),
		graft("four", "2028-01-02", 30, 20), graft("old", "2028-01-20", 30, 20))
	return pen.At("2027-11-01 12:00").Write(book.BatchReadied{Batch: booktest.Batch("old"), Step: book.DroneCombIn})
}

// sentencesOf are all sentences of a season: clashes and their ways out, as they are and with a graft
// moved, what a search is short of and what is better dropped, and how sure the orders are.
func sentencesOf(p *plan.Planner) (all []string, kinds map[season.Kind]bool) {
	kinds = map[season.Kind]bool{}
	board := season.NewBoard(p)
	clashes := board.Clashes()
	for b := range p.View().ToGraft() {
		b.Day += 3
		clashes = append(clashes, board.If(b.BatchPlanned)...)
	}
	for _, c := range clashes {
		kinds[c.Kind] = true
		all = append(all, c.Why)
		for _, w := range c.Ways {
			all = append(all, w.What)
		}
	}
	sheet := handover.New(p)
	for _, e := range season.EntrustedTo(p, sheet) {
		all = append(all, e.Said())
	}
	wishes := []season.Promise{{Queens: 20, By: calendar.Date(2027, time.December, 30)}, {Queens: 20, By: calendar.Date(2028, time.February, 20)}}
	found := season.Search(p, season.Wanted{Promises: append(season.Promises(p, sheet, 0), wishes...), Window: 7, Larvae: []int{24, 60}, Rounds: 1}, nil)
	for _, s := range found.Short {
		all = append(all, s.Why)
	}
	for _, d := range found.Dropped(p, nil) {
		all = append(all, d.Said())
	}
	return all, kinds
}

// A season over New Year, as in the south: in all its sentences a day of another year than the one asked
// in has its year, and no other has it.
func TestDaysOfAnotherYearHaveTheirs(t *testing.T) {
	pen := overNewYear(t)
	said := regexp.MustCompile(`\d (Oct|Nov|Dec|Jan|Feb|Mar|Apr)( 20\d\d)?\b`)
	told := map[season.Kind]bool{}
	for _, on := range []string{"2027-12-10", "2028-01-03"} {
		today := day(t, on)
		all, kinds := sentencesOf(plan.New(course.New(pen.View(on + " 08:00"))))
		dated := 0
		for _, s := range all {
			for _, m := range said.FindAllStringSubmatch(s, -1) {
				year, want := 2028, ""
				if slices.Contains([]string{"Oct", "Nov", "Dec"}, m[1]) {
					year = 2027
				}
				if now, _, _ := today.Date(); year != now {
					want, dated = calendar.Date(year, time.June, 1).String()[:4], dated+1
					want = " " + want
				}
				if m[2] != want {
					t.Errorf("on %s %q says %q", on, s, m[0])
				}
			}
		}
		if dated < 5 {
			t.Errorf("on %s only %d days of another year are told in %d sentences", on, dated, len(all))
		}
		for k := range kinds {
			told[k] = true
		}
	}
	for k := season.NobodyFree; k <= season.MinutesOver; k++ {
		if !told[k] {
			t.Errorf("no clash is told of: %s", k)
		}
	}
}
