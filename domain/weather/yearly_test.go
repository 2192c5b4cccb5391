package weather_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/weather"
)

// toldIn is a yard at 44 degrees north of which the usual weather of some months is told.
func toldIn(months map[int][2]float64) *weather.Yard {
	id := booktest.Yard("home")
	p := (&booktest.Pen{}).At("2028-01-01 12:00").Write(book.YardDescribed{Yard: id, Name: "Home", Home: true, Zone: "UTC", Lat: 44, Lon: 11})
	for m, t := range months {
		p.Write(book.WeatherNormal{Yard: id, Month: m, Low: book.Said(t[0]), High: book.Said(t[1])})
	}
	return weather.NewYard(p.View("2028-02-01 12:00"), id)
}

// The months that are not told follow from those that are: of a yard whose March to September are
// told December is no month to fly in, February is colder than April, and all of them are assumed.
func TestMonthsThatFollow(t *testing.T) {
	season := map[int][2]float64{3: {4, 14}, 4: {7, 17}, 5: {11, 22}, 6: {15, 27}, 7: {18, 30}, 8: {18, 30}, 9: {14, 25}}
	y := toldIn(season)
	for _, c := range []struct {
		day         string
		least, most float64
		layer       weather.Layer
	}{
		{"2028-12-10", 0, 0.2, weather.Assumed}, {"2028-02-10", 0, 0.5, weather.Assumed}, {"2028-10-10", 0.3, 3, weather.Assumed}, {"2028-06-10", 2, 6, weather.Typical},
	} {
		d, err := calendar.ParseDay(c.day)
		if err != nil {
			t.Fatal(err)
		}
		f := y.Day(d)
		if f.Hours < c.least || f.Hours > c.most || f.Layer != c.layer || strings.Contains(f.Why, "as those that are") != (c.layer == weather.Assumed) {
			t.Errorf("%s: %+v", c.day, f)
		}
	}
	winter, err := calendar.ParseDay("2028-12-10")
	if err != nil {
		t.Fatal(err)
	}
	for name, months := range map[string]map[int][2]float64{"none told": nil, "two told": {5: {11, 22}, 6: {15, 27}}, "told of one warmth": {6: {15, 27}, 7: {15, 27}, 8: {15, 26}}} {
		if f := toldIn(months).Day(winter); f.Hours != 2 {
			t.Errorf("%s: %+v", name, f)
		}
	}
}
