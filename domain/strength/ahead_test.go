package strength_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
)

// TestDatesComeTrue: the day foretold is the first on which it is so, when that
// day comes and the weather was as assumed.
func TestDatesComeTrue(t *testing.T) {
	p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Food: 300, From: booktest.Colony("S1")})
	told, _, _ := state(p, "2027-05-13 20:00")
	weakTold := calendar.Day(0)
	var weak, light calendar.Day
	for d := calendar.Date(2027, 5, 13); d < calendar.Date(2027, 6, 7); d++ {
		s, _, _ := state(p, d.String()+" 20:00")
		if weakTold == 0 {
			weakTold = s.Ahead.Weak
		}
		if weak == 0 && s.Weak() {
			weak = d
		}
		if light == 0 && s.Light(numbers) {
			light = d
		}
	}
	if told.Ahead.Light == 0 || told.Ahead.Light != light {
		t.Errorf("light foretold for %s, came %s", told.Ahead.Light, light)
	}
	if weakTold == 0 || weakTold != weak {
		t.Errorf("weak foretold for %s, came %s", weakTold, weak)
	}
}

// TestAColdNightToComeIsKnown: a night that is foretold counts on its day.
func TestAColdNightToComeIsKnown(t *testing.T) {
	p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 2, From: booktest.Colony("S1")})
	p.Write(book.WeatherSeen{Yard: yard, Day: calendar.Date(2027, 5, 15), Low: book.Said(6), Forecast: true})
	s, _, _ := state(p, "2027-05-11 20:00")
	if want := calendar.Date(2027, 5, 14); s.Ahead.Weak != want {
		t.Errorf("weak from %s, want %s, the day before the morning of 6 °C", s.Ahead.Weak, want)
	}
}

// TestFedItIsLightLater, and one whose bees nobody knows has no dates.
func TestFedItIsLightLater(t *testing.T) {
	base := func() *booktest.Pen {
		return pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3, Food: 200, From: booktest.Colony("S1")})
	}
	hungry, _, _ := state(base(), "2027-05-11 20:00")
	fed, _, _ := state(base().Write(book.Fed{To: a1.Subject(), Litres: 0.1}), "2027-05-11 20:00")
	if hungry.Ahead.Light == 0 || fed.Ahead.Light <= hungry.Ahead.Light {
		t.Errorf("light from %s, fed from %s: want a later day", hungry.Ahead.Light, fed.Ahead.Light)
	}
	p := pen().At("2027-05-10 18:00").Write(book.NucMadeUp{Nuc: a1, From: booktest.Colony("S1")})
	if s, _, _ := state(p, "2027-05-11 20:00"); s.Ahead.Light != 0 || s.Ahead.Weak != 0 || s.Ahead.Full != 0 {
		t.Errorf("nobody said anything, and yet %+v", s.Ahead)
	}
}
