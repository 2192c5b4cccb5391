package crew_test

import (
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/crew"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// grafting is a book in which a graft for 20 queens by the 20th of June is planned.
func grafting(on calendar.Day) *booktest.Pen {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for i := range 36 {
		name := fmt.Sprintf("A%d", i+1)
		p.Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Sides: 6}, book.NucPlaced{Nuc: booktest.Nuc(name), Yard: home})
	}
	return p.Write(book.BatchPlanned{
		Batch: booktest.Batch("b"), Day: on, Minute: 15 * 60, Yard: home, Larvae: 63, Nucs: 36, Queens: 20, By: calendar.Date(2027, time.June, 20),
	})
}

// A graft that waits for another day costs the queens who come too late by then: many
// where the promise hangs on the day, none to speak of where there is time.
func TestAPlannedGraftIsPricedByItsPromise(t *testing.T) {
	price := func(day int) float64 {
		on := calendar.Date(2027, time.May, day)
		_, of := waiting(t, grafting(on), on.String()+" 07:00")
		grafts := of(rules.ActGraft)
		if len(grafts) != 1 {
			t.Fatalf("%d grafts wait on %s", len(grafts), on)
		}
		return grafts[0].Price.Queens
	}
	if early, edge := price(1), price(10); early > 0.1 || edge < 5 {
		t.Errorf("a day later costs %.2f queens where there is time, %.2f where there is none", early, edge)
	}
}

// A queen who is late costs what the orders lose: nothing where their window is still open,
// and nothing where nobody waits for her any more.
func TestALateQueenCostsWhatTheOrdersLose(t *testing.T) {
	on := calendar.Date(2027, time.May, 10)
	price := func(by calendar.Day, closed bool) float64 {
		p, order := grafting(on), booktest.Order("1")
		p.Write(book.OrderTaken{Order: order, Number: "1", Queens: 20, By: by}, book.BatchPlanned{
			Batch: booktest.Batch("b"), Day: on, Minute: 15 * 60, Yard: booktest.Yard("home"), Larvae: 63, Nucs: 36, Queens: 20, By: calendar.Date(2027, time.June, 20),
			Orders: []book.OrderID{order},
		})
		if closed {
			p.Write(book.OrderClosed{Order: order})
		}
		_, of := waiting(t, p, on.String()+" 07:00")
		return of(rules.ActGraft)[0].Price.Queens
	}
	if edge := price(calendar.Date(2027, time.June, 20), false); edge < 5 {
		t.Errorf("a day late for an order costs %.2f queens", edge)
	}
	if open := price(calendar.Date(2027, time.July, 10), false); open > 0.1 {
		t.Errorf("a day late within the order's window costs %.2f queens", open)
	}
	if nobody := price(calendar.Date(2027, time.June, 20), true); nobody > 0.01 {
		t.Errorf("a day late for nobody costs %.2f queens", nobody)
	}
}

// Ripe cells of a planned batch have their hard hour on a day ahead: they are given where there is the
// time for it, whatever else is to be done, and else it is said that they cannot wait.
func TestRipeCellsOfAPlannedBatchCannotWait(t *testing.T) {
	p := grafting(calendar.Date(2027, time.May, 10))
	for on := calendar.Date(2027, time.May, 18); on < calendar.Date(2027, time.May, 23); on++ {
		v := book.NewSeason(time.LoadLocation, p.Entries).Ahead(on.At(7, 0, time.UTC), calendar.Date(2027, time.April, 2))
		judged := rules.Judge(v)
		if len(judged.Day(on).Hard) == 0 {
			continue
		}
		for minutes, given := range map[float64]bool{10: false, 60: true} {
			day, err := crew.Plan(judged, on, crew.Hands{{{Name: "Ida", Minutes: minutes}}})
			if err != nil {
				t.Fatal(err)
			}
			waits := slices.ContainsFunc(day.Waits, func(w crew.Work) bool { return w.Task.Act == rules.ActGoOn && w.Hard && w.Price.Queens > 0 })
			if (doneBy(day)[rules.ActGoOn] > 0) != given || waits == given {
				t.Errorf("%s, %.0f min: %+v wait", on.Short(), minutes, day.Waits)
			}
		}
		return
	}
	t.Error("no day has the hard hour")
}

// What makes ready for a graft and can be done tomorrow as well costs nothing today.
func TestWhatMakesReadyAndCanWaitCostsNothing(t *testing.T) {
	p := grafting(calendar.Date(2027, time.May, 10))
	_, of := waiting(t, p, "2027-05-06 07:00")
	all := of(rules.ActMakeReady)
	if len(all) == 0 {
		t.Fatal("nothing makes ready")
	}
	for _, w := range all {
		if waits := w.Task.By.After(p.View("2027-05-08 00:00").On()); waits && w.Price.Queens > 0.01 {
			t.Errorf("%s by %v costs %.2f queens", w.Task.Title, w.Task.By, w.Price.Queens)
		}
	}
}

// Nobody grafts into starters that nobody set up: with no time for both, both wait. Here they
// are set up on the day itself.
func TestAGraftWaitsForWhatMakesItReady(t *testing.T) {
	p := grafting(calendar.Date(2027, time.May, 10)).Write(book.NumberChanged{Number: "starter_set_up_before", Value: 0})
	p.Write(book.BatchReadied{Batch: booktest.Batch("b"), Step: book.BreederConfined})
	v := p.View("2027-05-10 07:00")
	for _, minutes := range []float64{20, 40, 60, 80, 100, 120, 240} {
		day, err := crew.Plan(rules.Judge(v), v.Today(), crew.Hands{{{Name: "Ida", Minutes: minutes}}})
		if err != nil {
			t.Fatal(err)
		}
		done, waits := doneBy(day), map[rules.Act]int{}
		for _, w := range day.Waits {
			if s := w.Task.Findings[0].Step; s == plan.Confine || s == plan.SetUpStarter {
				waits[w.Task.Act]++
			}
		}
		if done[rules.ActGraft] > 0 && waits[rules.ActMakeReady] > 0 {
			t.Errorf("%v min: grafted, and %d steps before it wait", minutes, waits[rules.ActMakeReady])
		}
		if minutes == 240 && done[rules.ActGraft] == 0 {
			t.Error("time for all, and nobody grafts")
		}
	}
}

// A feed that is late bars no graft: where there is time for one of them it is the graft, of the least
// worth too, and where there is not even that the starters are fed.
func TestALateFeedBarsNoGraft(t *testing.T) {
	on, b := calendar.Date(2027, time.May, 10), booktest.Batch("b")
	for name, p := range map[string]*booktest.Pen{
		"for an order": grafting(on),
		"for nobody":   grafting(on).Write(book.BatchPlanned{Batch: b, Day: on, Minute: 15 * 60, Yard: booktest.Yard("home"), Larvae: 63, Nucs: 36}),
	} {
		p.Write(book.BatchReadied{Batch: b, Step: book.BreederConfined}, book.BatchReadied{Batch: b, Step: book.StarterSetUp})
		v := p.View("2027-05-10 07:00")
		for minutes, want := range map[float64]map[plan.Step]bool{ // 63 larvae of half a minute, two starters of five
			9: {}, 15: {plan.FeedStarter: true}, 32: {plan.GraftLarvae: true}, 40: {plan.GraftLarvae: true}, 42: {plan.GraftLarvae: true, plan.FeedStarter: true},
		} {
			day, err := crew.Plan(rules.Judge(v), v.Today(), crew.Hands{{{Name: "Ida", Minutes: minutes}}})
			if err != nil {
				t.Fatal(err)
			}
			done := map[plan.Step]bool{}
			for _, visit := range day.Sheets[0].Visits {
				for _, w := range visit.Work {
					if s := w.Task.Findings[0].Step; s == plan.GraftLarvae || s == plan.FeedStarter {
						done[s] = true
					}
				}
			}
			if !maps.Equal(done, want) || !day.Exact {
				t.Errorf("%s, %v min: %v, want %v", name, minutes, done, want)
			}
			for _, w := range day.Waits {
				if s := w.Task.Findings[0].Step; s == plan.FeedStarter && w.Price.Queens > 0.01 {
					t.Errorf("%s, %v min: the feed costs %.2f queens: %s", name, minutes, w.Price.Queens, w.Price.Why)
				}
			}
		}
	}
}

// Drone comb that is late is no graft that is late: on the last day for it, three weeks before the graft,
// waiting costs nothing that is known.
func TestLateDroneCombMovesNoGraft(t *testing.T) {
	on := calendar.Date(2027, time.June, 7)
	p := grafting(on).Write(book.ColonyDescribed{Colony: booktest.Colony("d"), Name: "D1", Yard: booktest.Yard("home"), Roles: []book.Role{book.DroneSource}})
	v := p.View("2027-05-01 07:00")
	b, _ := v.BatchPlan(booktest.Batch("b"))
	last := plan.New(course.New(v)).LadderOf(b).Rung(plan.DroneComb).By
	_, of := waiting(t, p, last.String()+" 07:00")
	combs := 0
	for _, w := range of(rules.ActMakeReady) {
		if w.Task.Findings[0].Step == plan.DroneComb {
			if combs++; w.Price.Queens > 0.01 || !strings.Contains(w.Price.Why, "the graft need not wait") {
				t.Errorf("%+v", w.Price)
			}
		}
	}
	if combs != 1 {
		t.Errorf("%d drone combs wait on %s, want one", combs, last.Short())
	}
}

// A graft that is two days overdue costs today what one costs that is meant for today.
func TestAnOverdueGraftIsPricedFromToday(t *testing.T) {
	price := func(meant int) crew.Price {
		_, of := waiting(t, grafting(calendar.Date(2027, time.May, meant)), "2027-05-09 07:00")
		if len(of(rules.ActGraft)) != 1 {
			t.Fatalf("%d grafts wait, want one", len(of(rules.ActGraft)))
		}
		return of(rules.ActGraft)[0].Price
	}
	if late, today := price(7), price(9); late != today || today.Queens < 0.1 {
		t.Errorf("overdue it costs %+v, meant for today %+v", late, today)
	}
}

// A half that is grafted already counts: where it gives as many as the order waits for, the
// planned half may wait.
func TestAGraftedHalfCounts(t *testing.T) {
	on := calendar.Date(2027, time.May, 10)
	price := func(half bool) float64 {
		p, order, by := grafting(on), booktest.Order("1"), calendar.Date(2027, time.June, 20)
		plan := func(id string, on calendar.Day) book.BatchPlanned {
			return book.BatchPlanned{Batch: booktest.Batch(id), Day: on, Minute: 15 * 60, Yard: booktest.Yard("home"), Larvae: 60, Nucs: 18, Queens: 8, By: by, Orders: []book.OrderID{order}}
		}
		p.Write(book.OrderTaken{Order: order, Number: "1", Queens: 8, By: by}, plan("b", on))
		if half {
			p.Write(plan("c", on-6)).At("2027-05-04 15:00").Write(book.Grafted{Batch: booktest.Batch("c"), Number: 1, Larvae: 60})
		}
		_, of := waiting(t, p, on.String()+" 07:00")
		return of(rules.ActGraft)[0].Price.Queens
	}
	if alone, half := price(false), price(true); alone < 0.3 || half > alone/2 {
		t.Errorf("a day late costs %.2f queens alone, %.2f beside a half that is grafted", alone, half)
	}
}
