package rules_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// graftMade is the book of [graftPlanned] for an order of three, grafted as planned, of which so many
// were taken.
func graftMade(taken int) *booktest.Pen {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.OrderTaken{Order: booktest.Order("o"), Number: "1", Customer: "Mill Farm", Queens: 3, By: calendar.Date(2027, time.July, 20)},
		book.BatchPlanned{
			Batch: booktest.Batch("b"), Day: calendar.Date(2027, time.May, 10), Minute: 15 * 60, Yard: home, Larvae: 40, Nucs: 12,
			Queens: 3, By: calendar.Date(2027, time.July, 20), Orders: []book.OrderID{booktest.Order("o")},
		},
	)
	p.At("2027-05-10 15:00").Write(book.Grafted{Batch: booktest.Batch("b"), Number: 1, Larvae: 40})
	return p.At("2027-05-11 18:00").Write(book.TakeCounted{Batch: booktest.Batch("b"), Accepted: taken})
}

// rulesOn are the rules that ask for work of a day, as it is looked at from another, with what they ask for.
func rulesOn(p *booktest.Pen, from, on calendar.Day) (all map[rules.Rule][]string, day rules.DayPlan) {
	v := book.NewSeason(time.LoadLocation, p.Entries).Ahead(on.At(12, 0, time.UTC), from)
	all, day = map[rules.Rule][]string{}, rules.Day(v, on)
	for _, s := range day.Stops {
		for _, task := range s.Tasks {
			f := task.Findings[0]
			all[f.Rule] = append(all[f.Rule], task.Title)
		}
	}
	return all, day
}

// A grafted batch goes on as planned on the days ahead, as one that is only planned does: behind its
// hard hour its cells are in nucs, its queens are looked for and caught, and its customer is served.
func TestAGraftedBatchGoesOnOnDaysAhead(t *testing.T) {
	p, from := graftMade(12), calendar.Date(2027, time.May, 12)
	a1 := booktest.Nuc("A1")
	p.At("2027-05-11 19:00").Write(book.NucNamed{Nuc: a1, Name: "A1", Sides: 6}, book.NucPlaced{Nuc: a1, Yard: booktest.Yard("home")}, book.NucMadeUp{Nuc: a1, Cups: 3, Food: 900})
	var told []string
	for on := from + 1; on < from+60; on++ {
		all, day := rulesOn(p, from, on)
		for rule, what := range all {
			switch late := on > calendar.Date(2027, time.May, 20); {
			case rule == rules.VirginWalks, rule == rules.Counts, rule == rules.OrderShort, late && (rule == rules.CellsOut || rule == rules.Queenless || rule == rules.LayingWorkers):
				t.Errorf("%s: %s, %q", on.Short(), rule, what)
			case rule == rules.PlannedStep:
				told = append(told, what...)
			}
		}
		if on > calendar.Date(2027, time.May, 20) && !day.Taken {
			t.Errorf("%s: it is not said that cells are taken as given", on.Short())
		}
		v := book.NewSeason(time.LoadLocation, p.Entries).Ahead(on.At(12, 0, time.UTC), from)
		if s := handover.New(plan.New(course.New(v))); s.Orders[0].Stand().Rings() || len(s.Orders[0].Fell) > 0 {
			t.Errorf("%s: the customer is rung, %s", on.Short(), s.Orders[0].FellWords())
		}
	}
	words := strings.Join(told, "; ")
	if !strings.Contains(words, "Look for eggs") || !strings.Contains(words, "Catch about") {
		t.Errorf("told %q", words)
	}
}

// On the day on which cells are given the nucs of the day before are taken as made up, and what was counted
// and moved before is not asked for as late.
func TestStepsOfAGraftedBatchAreTakenAsDone(t *testing.T) {
	p, from := graftMade(12), calendar.Date(2027, time.May, 11)
	for on, want := range map[calendar.Day]bool{calendar.Date(2027, time.May, 11): true, calendar.Date(2027, time.May, 13): false} {
		if all, _ := rulesOn(p, from, on); want != (len(all[rules.MoveToFinisher]) > 0) {
			t.Errorf("%s: %q", on.Short(), all[rules.MoveToFinisher])
		}
	}
	all, day := rulesOn(p, from, calendar.Date(2027, time.May, 20))
	if len(all[rules.NobodyReady]) > 0 || len(all[rules.CellsOut]) != 1 {
		t.Errorf("on the day of the cells: %q", all)
	}
	ripe := 0.0
	for _, k := range day.Kit {
		if k.Goods == "ripe cells" {
			ripe = k.Amount
		}
	}
	if ripe != 12 {
		t.Errorf("%v ripe cells are packed for nucs that are taken as made up", ripe)
	}
}

// A batch whose hard hour was past already on the day from which a day ahead is looked at stays what it is.
func TestABatchPastItsHourStaysSoOnDaysAhead(t *testing.T) {
	p, from := graftMade(12), calendar.Date(2027, time.May, 22)
	for on := from; on < from+3; on++ {
		all, _ := rulesOn(p, from, on)
		if len(all[rules.VirginWalks])+len(all[rules.CellsOut])+len(all[rules.Counts]) == 0 || len(all[rules.OrderShort]) == 0 {
			t.Errorf("%s: %q", on.Short(), all)
		}
	}
}
