package rules_test

import (
	"fmt"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// A graft planned for a day on which the yard's weather lets hardly any queen lay is warned
// of; in summer, and where nobody said the yard, it is not.
func TestAGraftOutOfSeasonIsWarned(t *testing.T) {
	home, p := booktest.Yard("home"), &booktest.Pen{}
	p.At("2027-04-01 12:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for m, high := range []float64{2, 4, 9, 14, 19, 22, 24, 24, 19, 13, 7, 3} {
		p.Write(book.WeatherNormal{Yard: home, Month: m + 1, Low: book.Said(high - 9), High: book.Said(high), Rainy: book.Said(0.3)})
	}
	v := p.View("2027-05-05 18:00")
	for _, c := range []struct {
		planned book.BatchPlanned
		warned  bool
	}{
		{book.BatchPlanned{Yard: home, Day: calendar.Date(2027, 11, 10), Larvae: 20}, true},
		{book.BatchPlanned{Yard: home, Day: calendar.Date(2027, 6, 10), Larvae: 20}, false},
		{book.BatchPlanned{Day: calendar.Date(2027, 11, 10), Larvae: 20}, false},
	} {
		got := rules.Check(v, rules.PlanOf(v, c.planned)).Warned
		if (len(got) > 0) != c.warned {
			t.Errorf("planned for %s: %+v", c.planned.Day, got)
		}
		if c.warned && !strings.Contains(got[0].Why, "the last graft that makes sense is on") {
			t.Errorf("%+v", got)
		}
	}
}

// A graft planned for a yard on standstill is warned of, one for another yard is not.
func TestAGraftForAYardOnStandstillIsWarned(t *testing.T) {
	home, far, p := booktest.Yard("home"), booktest.Yard("far"), &booktest.Pen{}
	p.At("2027-04-01 12:00").Write(
		book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
		book.YardDescribed{Yard: far, Name: "Far", Zone: "UTC"},
		book.DiseaseSuspected{Of: home.Subject(), What: "foul brood"},
	)
	v := p.View("2027-05-05 18:00")
	for yard, want := range map[book.YardID]string{home: "Home is on standstill, foul brood suspected since Thu 1 Apr", far: ""} {
		got := rules.Check(v, rules.PlanOf(v, book.BatchPlanned{Yard: yard, Day: calendar.Date(2027, 6, 10), Larvae: 20})).Warned
		if said := fmt.Sprint(got); strings.Contains(said, "standstill") != (want != "") || !strings.Contains(said, want) {
			t.Errorf("minded: %s", said)
		}
	}
}

// A second graft of a day and line is told of, with what tells both apart; one of another line or day
// is not.
func TestASecondGraftOfADayIsToldOf(t *testing.T) {
	p := &booktest.Pen{}
	day := calendar.Date(2027, 6, 10)
	p.At("2027-04-01 12:00").Write(book.BatchPlanned{Batch: booktest.Batch("first"), Day: day, Larvae: 24, Line: "Sorrel"})
	v := p.View("2027-05-05 18:00")
	for name, c := range map[string]struct {
		planned book.BatchPlanned
		told    bool
	}{
		"alike":   {book.BatchPlanned{Batch: booktest.Batch("b"), Day: day, Larvae: 30, Line: "Sorrel"}, true},
		"itself":  {book.BatchPlanned{Batch: booktest.Batch("first"), Day: day, Larvae: 30, Line: "Sorrel"}, false},
		"line":    {book.BatchPlanned{Batch: booktest.Batch("b"), Day: day, Larvae: 30, Line: "Teasel"}, false},
		"day":     {book.BatchPlanned{Batch: booktest.Batch("b"), Day: day + 1, Larvae: 30, Line: "Sorrel"}, false},
		"no line": {book.BatchPlanned{Batch: booktest.Batch("b"), Day: day, Larvae: 30}, false},
	} {
		got := fmt.Sprint(rules.Check(v, rules.PlanOf(v, c.planned)).Warned)
		if strings.Contains(got, "another graft for Sorrel is planned for Thu 10 Jun, of 24 larvae") != c.told {
			t.Errorf("%s: %s", name, got)
		}
	}
}

// A graft planned for more nucs than stand in its yard is told of; one without a yard is not.
func TestAGraftForMoreNucsThanStandThereIsToldOf(t *testing.T) {
	p, home := &booktest.Pen{}, booktest.Yard("home")
	p.At("2027-04-01 12:00").Write(book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"})
	for _, name := range []string{"A1", "A2"} {
		p.Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: name}, book.NucPlaced{Nuc: booktest.Nuc(name), Yard: home})
	}
	v := p.View("2027-05-05 18:00")
	for name, c := range map[string]struct {
		planned book.BatchPlanned
		told    bool
	}{
		"more":    {book.BatchPlanned{Day: calendar.Date(2027, 6, 10), Larvae: 20, Nucs: 3, Yard: home}, true},
		"as many": {book.BatchPlanned{Day: calendar.Date(2027, 6, 10), Larvae: 20, Nucs: 2, Yard: home}, false},
		"nowhere": {book.BatchPlanned{Day: calendar.Date(2027, 6, 10), Larvae: 20, Nucs: 3}, false},
	} {
		if got := fmt.Sprint(rules.Check(v, rules.PlanOf(v, c.planned)).Warned); strings.Contains(got, "planned for 3 nucs, and 2 stand in Home") != c.told {
			t.Errorf("%s: %s", name, got)
		}
	}
}
