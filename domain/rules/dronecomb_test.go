package rules_test

import (
	"strings"
	"testing"
	_ "time/tzdata"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/rules"
)

// graftsAhead is a book with two drone colonies and grafts planned for some days.
func graftsAhead(days ...calendar.Day) *booktest.Pen {
	home := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2027-03-01 12:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for _, name := range []string{"D1", "D2"} {
		p.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: home, Roles: []book.Role{book.DroneSource}})
	}
	for _, d := range days {
		p.Write(book.BatchPlanned{Batch: booktest.Batch(d.String()), Day: d, Minute: 15 * 60, Larvae: 24, Nucs: 18, Yard: home})
	}
	return p
}

func combsAsked(p *booktest.Pen, at string) (all []rules.Finding) {
	for _, f := range rules.Findings(p.View(at)) {
		if f.Rule == rules.PlannedStep && strings.HasSuffix(f.What, "drone comb in") {
			all = append(all, f)
		}
	}
	return all
}

// One comb serves the batches whose virgins fly while its drones are ripe and not too
// old; it takes as long as there are drone colonies.
func TestDroneCombIsAskedForOnce(t *testing.T) {
	p := graftsAhead(calendar.Date(2027, 5, 3), calendar.Date(2027, 5, 10), calendar.Date(2027, 6, 28))
	all := combsAsked(p, "2027-04-01 08:00")
	first, later := booktest.Batch("2027-05-03"), booktest.Batch("2027-06-28")
	if len(all) != 2 || all[0].Of != first.Subject() || all[1].Of != later.Subject() {
		t.Fatalf("drone comb is asked for %d times, want once for the grafts of a week apart, once for the late one", len(all))
	}
	if want := 2 * p.View("2027-04-01 08:00").Numbers().Get(practice.MinutesDroneComb); all[0].Takes != want {
		t.Errorf("two drone colonies take %v min, want %v", all[0].Takes, want)
	}
	p.At("2027-04-07 12:00").Write(book.BatchReadied{Batch: first, Step: book.DroneCombIn})
	if all = combsAsked(p, "2027-04-08 08:00"); len(all) != 1 || all[0].Of != later.Subject() {
		t.Errorf("hung in for the first, it is asked for %d times more, want for the late graft only", len(all))
	}
}

// A graft of which nobody told the yard flies at home, and one comb serves it and one that is told
// so.
func TestOneCombServesAGraftWithoutAYard(t *testing.T) {
	p := graftsAhead(calendar.Date(2027, 5, 3))
	p.Write(book.BatchPlanned{Batch: booktest.Batch("nowhere"), Day: calendar.Date(2027, 5, 3), Minute: 15 * 60, Larvae: 30, Nucs: 18})
	if all := combsAsked(p, "2027-04-01 08:00"); len(all) != 1 {
		t.Errorf("drone comb is asked for %d times, want once", len(all))
	}
}

// A late comb is asked for as long as it gives ripe drones before the virgins have flown,
// and no longer.
func TestDroneCombThatIsUselessIsNotAskedFor(t *testing.T) {
	p := graftsAhead(calendar.Date(2027, 5, 10))
	if all := combsAsked(p, "2027-04-18 08:00"); len(all) != 1 || !strings.Contains(all[0].Why, "not ripe for the first flights") {
		t.Errorf("some days late: %v", all)
	}
	if all := combsAsked(p, "2027-05-09 08:00"); len(all) != 0 {
		t.Errorf("its drones are ripe when the virgins have flown, and it is asked for: %s", all[0].Why)
	}
}
