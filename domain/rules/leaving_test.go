package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// TestQueensLeaveOnADay: the day on which an order is fetched is in the calendar, with the
// same id and alarms before it, until its queens are handed over.
func TestQueensLeaveOnADay(t *testing.T) {
	p := pen(t)
	fetched(p)
	leaving := func(at string) (all []rules.Deadline) {
		for _, d := range rules.Deadlines(p.View(at), calendar.Date(2027, 5, 1), calendar.Date(2027, 5, 31)) {
			if id, ok := d.Of.Order(); ok && id == booktest.Order("31") {
				all = append(all, d)
			}
		}
		return all
	}
	first, again := leaving("2027-05-13 09:00"), leaving("2027-05-15 09:00")
	if len(first) != 1 || len(again) != 1 || first[0].ID != again[0].ID {
		t.Fatalf("%+v, then %+v, want one of one id", first, again)
	}
	d := first[0]
	if d.Day != calendar.Date(2027, 5, 16) || d.What != "Order 31: 2 queens to be fetched by Corin A., cage 23, short by 1" {
		t.Errorf("%s on %s", d.What, d.Day)
	}
	if len(d.Alarms) != 2 || calendar.DayOf(d.Alarms[0], p.View("2027-05-13 09:00").Zone()) >= d.Day {
		t.Errorf("alarms %v, want two, one before the day", d.Alarms)
	}
	if late := leaving("2027-05-18 09:00"); len(late) != 1 || late[0].Day != d.Day {
		t.Errorf("two days late: %+v, want it on its day", late)
	}
	p.At("2027-05-16 10:00").Write(
		book.QueenHandedOver{Queen: booktest.Queen("b"), Order: booktest.Order("31")},
		book.OrderClosed{Order: booktest.Order("31")})
	if all := leaving("2027-05-16 11:00"); len(all) > 0 {
		t.Errorf("handed over, and still %+v", all)
	}
}

// TestWhatIsClaimedIsNotPastDue: two who came dead after the order's day are to be handed
// over by a new day, which the rule names with the claim.
func TestWhatIsClaimedIsNotPastDue(t *testing.T) {
	p := pen(t)
	fetched(p)
	p.At("2027-05-16 10:00").Write(
		book.QueenHandedOver{Queen: booktest.Queen("b"), Order: booktest.Order("31")},
		book.QueenHandedOver{Queen: booktest.Queen("c"), Order: booktest.Order("31")})
	p.At("2027-05-25 09:00").Write(book.Claimed{Order: booktest.Order("31"), Queens: 2, How: book.DeadOnArrival})
	v := p.View("2027-05-26 09:00")
	f := of(v, rules.Leaving)
	if len(f) != 1 || f[0].PastDue(v.On()) || f[0].Why != "claimed Tue 25 May, to be replaced by Tue 8 Jun" || calendar.DayOf(f[0].By, v.Zone()) != calendar.Date(2027, 6, 8) {
		t.Errorf("%+v", f)
	}
}

// TestALateOrderStaysOnItsDay: an order that was to be sent is late from the day on which
// it had to go, not from the day on which it had to arrive.
func TestALateOrderStaysOnItsDay(t *testing.T) {
	p := pen(t)
	p.At("2027-05-01 18:00").Write(book.OrderTaken{
		Order: booktest.Order("31"), Number: "31", Queens: 2, By: calendar.Date(2027, 5, 20), Sent: true, Journey: 2,
	})
	for _, row := range []struct {
		at   string
		want calendar.Day
	}{{"2027-05-10 09:00", calendar.Date(2027, 5, 18)}, {"2027-05-19 09:00", calendar.Date(2027, 5, 18)}} {
		v := p.View(row.at)
		f := of(v, rules.Leaving)
		if len(f) != 1 || calendar.DayOf(f[0].By, v.Zone()) != row.want {
			t.Fatalf("on %s: %+v, want it by %s", row.at, f, row.want)
		}
	}
	v := p.View("2027-05-19 09:00")
	plan := rules.Day(v, v.Today())
	if len(plan.Stops) != 1 || len(plan.Stops[0].Tasks) != 1 || plan.Stops[0].Tasks[0].Act != rules.ActSeeToOrder || plan.Minutes != 0 { // no queen is there to be handed over
		t.Errorf("a day late the plan is %+v, want the customer to be rung, without minutes", plan)
	}
	const want = "None of 2 queens for the customer is there; ring the customer: the soonest day is "
	if said := of(v, rules.Leaving)[0].Do; !strings.HasPrefix(said, want) {
		t.Errorf("a day late: %q, want %q", said, want)
	}
}

// TestQueensAreHandedOverBehindTheirCatch: on the day on which the queen of an order is
// caught and fetched, handing her over takes its minutes and comes behind the catch, in a
// yard away, at home or at dusk; one who is caged already is handed over in the yard's turn.
func TestQueensAreHandedOverBehindTheirCatch(t *testing.T) {
	for _, away := range []bool{false, true} {
		p := pen(t)
		layingOn1June(p)
		if away {
			p.At("2027-06-02 08:00").Write(
				book.YardDescribed{Yard: booktest.Yard("away"), Name: "Away", Zone: "UTC", Drive: 30},
				book.NucPlaced{Nuc: a1, Yard: booktest.Yard("away")})
		}
		p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
		p.At("2027-06-12 18:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 1, By: calendar.Date(2027, 6, 20)})
		v := p.View("2027-06-20 09:00")
		plan := rules.Day(v, v.Today())
		catch, handed := -1, -1
		for i, s := range plan.Stops {
			for _, task := range s.Tasks {
				switch task.Act {
				case rules.ActCatchQueen:
					catch = i
				case rules.ActHandOver:
					handed = i
					if want := v.Numbers().Get(practice.MinutesHandOver); want == 0 || task.Minutes != want {
						t.Errorf("away %t: handing an order over takes %g min, want %g", away, task.Minutes, want)
					}
				}
			}
		}
		if catch < 0 || handed <= catch {
			t.Errorf("away %t: caught at stop %d, handed over at stop %d", away, catch, handed)
		}
		p.At("2027-06-20 09:30").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("b"), Label: "23"})
		v = p.View("2027-06-20 10:00")
		for _, s := range rules.Day(v, v.Today()).Stops {
			if s.Last {
				t.Errorf("away %t: caged, and still handed over last", away)
			}
		}
	}
}

// TestNoCatchAmongRobbers: the day, its order and the nuc agree that a queen is not caught
// before robbers have gone.
func TestNoCatchAmongRobbers(t *testing.T) {
	p := pen(t)
	layingOn1June(p)
	p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	p.At("2027-06-12 18:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 1, By: calendar.Date(2027, 6, 20)})
	p.At("2027-06-19 17:00").Write(book.NucMadeUp{Nuc: booktest.Nuc("C4"), Cups: 3}, book.Robbed{Nuc: booktest.Nuc("C4")})
	for _, day := range []struct {
		at      string
		catches int
		short   bool
	}{{"2027-06-20 09:00", 0, true}, {"2027-06-21 09:00", 1, false}} {
		v := p.View(day.at)
		catches, short := 0, false
		for _, task := range tasks(rules.Day(v, v.Today()).Stops) {
			switch task.Act {
			case rules.ActCatchQueen:
				catches++
			case rules.ActHandOver:
				short = false
			case rules.ActSeeToOrder:
				short = strings.Contains(task.Title, "is not there")
			}
		}
		if catches != day.catches || short != day.short {
			t.Errorf("%s: %d catches, short %t", day.at, catches, short)
		}
		for _, f := range of(v, rules.Ready) {
			if f.Of == a1.Subject() && strings.Contains(f.Do, "until Mon 21 Jun") != day.short {
				t.Errorf("%s: %q", day.at, f.Do)
			}
		}
	}
}
