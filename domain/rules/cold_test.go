package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// Common practice, no source: no box is opened under 14 °C unless it must be.
func TestOpeningOnACoolDayIsWarnedOf(t *testing.T) {
	home := booktest.Yard("home")
	for high, want := range map[float64]bool{9: true, 13.9: true, 14: false, 22: false} {
		p := (&booktest.Pen{}).At("2027-05-01 12:00").Write(
			book.YardDescribed{Yard: home, Name: "Home", Home: true, Zone: "UTC"},
			book.NucNamed{Nuc: a1, Name: "A1", Sides: 6}, book.NucPlaced{Nuc: a1, Yard: home},
			book.WeatherSeen{Yard: home, Day: calendar.Date(2027, 5, 11), High: book.Said(high), Forecast: true})
		v := p.View("2027-05-11 09:00")
		warned := false
		for _, r := range rules.Check(v, rules.OpenNuc{Nuc: a1, Minutes: 2}).Warned {
			warned = warned || strings.Contains(r.Why, "brood chills")
		}
		if warned != want {
			t.Errorf("%v °C: warned %v, want %v", high, warned, want)
		}
	}
}
