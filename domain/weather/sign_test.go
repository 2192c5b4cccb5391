package weather_test

import (
	"math"
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

// at is the weather of the yard Hill as known on the evening of today.
func at(facts ...book.Fact) *weather.Yard {
	p := (&booktest.Pen{}).At("2027-05-20 18:00")
	p.Write(book.YardDescribed{Yard: hill, Name: "Hill", Lat: 50, Lon: 10, Zone: "Europe/Berlin"})
	p.Write(facts...)
	return weather.NewYard(p.View("2027-05-20 19:00"), hill)
}

// record is what the book says of the yard Hill by then.
func record(facts ...book.Fact) *book.Yard {
	p := (&booktest.Pen{}).At("2027-05-20 18:00")
	return p.Write(book.YardDescribed{Yard: hill, Name: "Hill"}).Write(facts...).View("2027-05-20 19:00").Yard(hill)
}

func sign(d calendar.Day, s book.Sign) book.Fact {
	return book.WeatherSeen{Yard: hill, Day: d, Sign: s, Forecast: d > today}
}

// TestADayInOneStroke: 3, 1.2 and 0 hours are common practice; the hours of a
// forecast are worked by hand: 0.8·3 + 0.2·2/3·1.2 is 2.56, and after 3 days
// 0.7·1.2 + 0.15·3 is 1.29, with a chance of 0.7 + 0.15.
func TestADayInOneStroke(t *testing.T) {
	y := at(sign(today-2, book.Flying), sign(today-1, book.HalfFit), sign(today, book.NoFlight), sign(today+1, book.Flying), sign(today+3, book.HalfFit))
	for d, want := range map[calendar.Day]weather.Flight{
		today - 2: {Hours: 3, Chance: 1, Layer: weather.Seen, Why: "+ typed: 3 h"},
		today - 1: {Hours: 1.2, Chance: 1, Layer: weather.Seen, Why: "± typed: 1.2 h"},
		today:     {Hours: 0, Chance: 0, Layer: weather.Seen, Why: "− typed: 0 h"},
		today + 1: {Hours: 2.56, Chance: 14.0 / 15, Layer: weather.Forecast, Why: "forecast +, 1 day ahead it is right in 80 %: 2.6 h, 93 % for at least 1 h"},
		today + 3: {Hours: 1.29, Chance: 0.85, Layer: weather.Forecast, Why: "forecast ±, 3 days ahead it is right in 70 %: 1.3 h, 85 % for at least 1 h"},
		today + 2: {Hours: 2, Chance: 2.0 / 3, Layer: weather.Assumed, Why: "nobody told this day's weather, and no normals are typed: 2 h assumed"},
	} {
		got := y.Day(d)
		if math.Abs(got.Hours-want.Hours) > 1e-9 || math.Abs(got.Chance-want.Chance) > 1e-9 || got.Layer != want.Layer || got.Why != want.Why {
			t.Errorf("%v: %+v, want %+v", d, got, want)
		}
		if y.Hours(d) != got.Hours || y.Day(d) != got {
			t.Errorf("%v: asked again it is otherwise", d)
		}
	}
}

// TestLayersAreNotMixed: of each day one layer alone says how it is.
func TestLayersAreNotMixed(t *testing.T) {
	may := book.WeatherNormal{Yard: hill, Month: 5, Low: book.Said(9), High: book.Said(20)}
	y := at(sign(today, book.Flying), book.WeatherSeen{Yard: hill, Day: today, Sign: book.NoFlight, Forecast: true},
		sign(today+1, book.NoFlight), may)
	for d, want := range map[calendar.Day]weather.Layer{
		today: weather.Seen, today + 1: weather.Forecast, today + 2: weather.Typical, calendar.Date(2027, 6, 1): weather.Assumed,
	} {
		if got := y.Day(d).Layer; got != want {
			t.Errorf("%v is %v, want %v", d, got, want)
		}
	}
	if h := y.Hours(today); h != 3 {
		t.Errorf("a day that was seen has %g h: what was foretold of it is mixed in", h)
	}
}

// TestTheSameWeather: of two states of the book, what tells them apart in any day
// does, and nothing else.
func TestTheSameWeather(t *testing.T) {
	hours := func(c float64) book.Fact { return hourly(today, 24, c, 2, 0, 1) }
	may := book.WeatherNormal{Yard: hill, Month: 5, High: book.Said(20)}
	foretold := hourly(today, 24, 20, 2, 0, 1)
	foretold.Forecast = true
	for name, c := range map[string]struct {
		a, b []book.Fact
		same bool
	}{
		"told alike":    {[]book.Fact{hours(20), may}, []book.Fact{hours(20), may}, true},
		"other hours":   {[]book.Fact{hours(20)}, []book.Fact{hours(21)}, false},
		"a sign more":   {[]book.Fact{sign(today, book.Flying)}, nil, false},
		"other normals": {[]book.Fact{may}, nil, false},
		"other wind":    {[]book.Fact{hours(20)}, []book.Fact{hourly(today, 24, 20, 3, 0, 1)}, false},
		"other rain":    {[]book.Fact{hours(20)}, []book.Fact{hourly(today, 24, 20, 2, 1, 1)}, false},
		"other sky":     {[]book.Fact{hours(20)}, []book.Fact{hourly(today, 24, 20, 2, 0, 0.5)}, false},
		"foretold":      {[]book.Fact{hours(20)}, []book.Fact{foretold}, false},
		"told later": {
			[]book.Fact{book.WeatherSeen{Yard: hill, Day: today + 2, Sign: book.Flying, Forecast: true}}, nil, false,
		},
		"a flow more": {[]book.Fact{book.ForageSeen{Yard: hill, Forage: book.InFlow}}, nil, true},
	} {
		if got := weather.Same(record(c.a...), record(c.b...)); got != c.same {
			t.Errorf("%s: the same is %v", name, got)
		}
	}
}
