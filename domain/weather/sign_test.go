package weather_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/weather"
)

var (
	hill  = booktest.Yard("Hill")
	today = calendar.Date(2027, 5, 20)
)

// TestADayInOneStroke: 3, 1.2 and 0 hours, as RULES 3 has them; what was seen
// goes before what was foretold, in whichever order they were written.
func TestADayInOneStroke(t *testing.T) {
	y := at(book.WeatherSeen{Yard: hill, Day: today - 2, Sign: book.Flying},
		book.WeatherSeen{Yard: hill, Day: today - 1, Sign: book.HalfFit},
		book.WeatherSeen{Yard: hill, Day: today, Sign: book.NoFlight},
		book.WeatherSeen{Yard: hill, Day: today, Sign: book.Flying, Forecast: true},
		book.WeatherSeen{Yard: hill, Day: today + 1, Sign: book.Flying, Forecast: true})
	for d, want := range map[calendar.Day]weather.Flight{
		today - 2: {Hours: 3, Chance: 1, Layer: weather.Seen, Why: "+ typed: 3 h"},
		today - 1: {Hours: 1.2, Chance: 1, Layer: weather.Seen, Why: "± typed: 1.2 h"},
		today:     {Hours: 0, Chance: 0, Layer: weather.Seen, Why: "− typed: 0 h"},
		today + 1: {Hours: 3, Chance: 1, Layer: weather.Forecast, Why: "+ foretold: 3 h"},
		today + 2: {Hours: 2, Chance: 1, Layer: weather.Assumed, Why: "nobody told this day's weather, and no normals are typed: 2 h assumed"},
	} {
		if got := y.Day(d); got != want {
			t.Errorf("%v: %+v, want %+v", d, got, want)
		}
	}
}

// at is the weather of the yard Hill as seen on the evening of today.
func at(facts ...book.Fact) *weather.Yard {
	p := (&booktest.Pen{}).At("2027-05-20 20:00")
	p.Write(book.YardDescribed{Yard: hill, Name: "Hill", Lat: 50, Lon: 10, Zone: "Europe/Berlin"})
	p.Write(facts...)
	return weather.NewYard(p.View("2027-05-20 23:00"), hill)
}
