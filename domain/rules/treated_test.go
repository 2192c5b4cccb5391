package rules_test

import (
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestNoCatchInTheWait: a day's route sends nobody to catch a queen in the wait
// after a treatment of her nuc or yard, and says why.
func TestNoCatchInTheWait(t *testing.T) {
	order := book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 2, By: calendar.Date(2027, 7, 25)}
	yard := func(p *booktest.Pen) {
		treatedA1(p)
		p.Write(book.Treated{Of: atFar.Subject(), With: "thymol", Wait: 20})
	}
	for _, row := range []struct {
		name, at string
		write    func(*booktest.Pen)
		act      rules.Act
		do       string
	}{
		{"in the wait", "2027-06-25 18:00", treatedA1, rules.ActNone, "No catch before Sat 26 Jun, unless the label allows it"},
		{"after it", "2027-06-26 18:00", treatedA1, rules.ActCatchQueen, "Catch her, cage and mark her"},
		{"in the yard's", "2027-06-26 18:00", yard, rules.ActNone, "No catch before Fri 2 Jul, unless the label allows it"},
		{"in both, the yard's ends last", "2027-06-20 18:00", yard, rules.ActNone, "No catch before Fri 2 Jul, unless the label allows it"},
		{"after both", "2027-07-02 18:00", yard, rules.ActCatchQueen, "Catch her, cage and mark her"},
	} {
		p := pen(t)
		row.write(p)
		p.Write(order)
		v := p.View(row.at)
		found := of(v, rules.Ready)
		if len(found) != 1 || found[0].Act != row.act || found[0].Do != row.do {
			t.Errorf("%s: %+v, want %q", row.name, found, row.do)
		}
		catches := 0
		for _, s := range rules.Day(v, v.Today()).Stops {
			for _, task := range s.Tasks {
				if task.Act == rules.ActCatchQueen {
					catches++
				}
			}
		}
		if (catches == 1) != (row.act == rules.ActCatchQueen) {
			t.Errorf("%s: %d catches in the route", row.name, catches)
		}
	}
}

// TestADayTellsItsWaits: like waits of nucs are one line, those of colonies and
// yards their own, and nothing when they are over.
func TestADayTellsItsWaits(t *testing.T) {
	p := pen(t)
	p.At("2027-05-13 18:00").Write(madeUp("A1", "A2", "B1")...)
	for name, wait := range map[string]int{"A1": 3, "A2": 5, "B1": 3} {
		p.At("2027-05-13 19:00").Write(book.Treated{Of: booktest.Nuc(name).Subject(), With: "oxalic acid", Wait: wait})
	}
	p.Write(book.Treated{Of: booktest.Colony("S2").Subject(), With: "thymol", Wait: 3})
	for at, want := range map[string][]string{
		"2027-05-14 09:00": {"S2 wait after treatment until Sun 16 May", "A1 B1 wait after treatment until Sun 16 May", "A2 wait after treatment until Tue 18 May"},
		"2027-05-16 09:00": {"A2 wait after treatment until Tue 18 May"},
		"2027-05-18 09:00": nil,
	} {
		v := p.View(at)
		var got []string
		for _, w := range rules.Day(v, v.Today()).Waits {
			var line strings.Builder
			for _, of := range w.Of {
				line.WriteString(rules.Name(v, of) + " ")
			}
			got = append(got, line.String()+w.Title)
		}
		if !slices.Equal(got, want) {
			t.Errorf("%s: %q, want %q", at, got, want)
		}
	}
}
