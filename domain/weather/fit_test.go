package weather_test

import (
	"math"
	"math/rand/v2"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/weather"
)

// hourly is a day of which every hour is alike.
func hourly(d calendar.Day, hours int, celsius, wind, rain, sky float64) book.WeatherHours {
	f := book.WeatherHours{Yard: hill, Day: d}
	for range hours {
		f.Celsius = append(f.Celsius, book.Said(celsius))
		f.Wind = append(f.Wind, book.Said(wind))
		f.Rain = append(f.Rain, book.Said(rain))
		f.Sky = append(f.Sky, book.Said(sky))
	}
	return f
}

// TestFitHoursByHand: the time of day is worth 4 h (2 in the middle, half of 2 at
// either end), and each thing takes its share of it. Wind at 10 m is 0.748 of
// itself at 2 m, so 5.35 m/s of it, half way from 4 to 6.7, are 7.153.
func TestFitHoursByHand(t *testing.T) {
	for name, c := range map[string]struct{ celsius, wind, rain, sky, want float64 }{
		"fine":                {24, 0, 0, 1, 4},
		"just warm":           {22, 5, 0, 1, 4},
		"half warm":           {19, 0, 0, 1, 2},
		"cool":                {16, 0, 0, 1, 0},
		"half too hot":        {37.5, 0, 0, 1, 2},
		"too hot":             {40, 0, 0, 1, 0},
		"half windy":          {24, 7.153, 0, 1, 2},
		"windy":               {24, 9, 0, 1, 0},
		"overcast":            {24, 0, 0, 0, 1.2},
		"broken":              {24, 0, 0, 0.5, 2.8},
		"rain":                {24, 0, 0.1, 1, 0},
		"half warm, overcast": {19, 0, 0, 0, 0.6},
	} {
		got := at(hourly(today, 24, c.celsius, c.wind, c.rain, c.sky)).Day(today)
		chance := 0.0
		if c.want >= 1 {
			chance = 1
		}
		if math.Abs(got.Hours-c.want) > 0.003 || got.Chance != chance || got.Layer != weather.Seen {
			t.Errorf("%s: %+v, want %g h", name, got, c.want)
		}
	}
}

// The clocks change on 28 March and 31 October 2027; the sun does not.
func TestHoursOfDaysWhenTheClocksChange(t *testing.T) {
	for d, hours := range map[calendar.Day]int{calendar.Date(2027, 3, 28): 23, calendar.Date(2027, 10, 31): 25} {
		f := hourly(d, hours, 10, 0, 0, 1)
		start, noon := d.Start(zone(t, "Europe/Berlin")), weather.SunOn(d, zone(t, "Europe/Berlin"), weather.Place{Lat: 50, Lon: 10}).Noon
		middle := int(noon.Sub(start).Hours()) // the hour in which it is noon by the sun
		for i := middle + 1; i < middle+3; i++ {
			f.Celsius[i] = book.Said(24)
		}
		got := at(f).Hours(d)
		if got < 1.0 || got > 2 {
			t.Errorf("%v: two warm hours after noon count %g h", d, got)
		}
	}
}

// Hours that are missing count as the others do; short gaps are bridged; where
// most are missing the day is not told by the hour.
func TestHoursWithGaps(t *testing.T) {
	f := hourly(today, 24, 24, 0, 0, 1)
	f.Celsius[12], f.Celsius[13] = book.Amount{}, book.Amount{}
	if got := at(f).Day(today); math.Abs(got.Hours-4) > 0.003 || strings.Contains(got.Why, "not told") {
		t.Errorf("a gap of two: %+v", got)
	}
	f.Celsius[14] = book.Amount{}
	if got := at(f).Day(today); math.Abs(got.Hours-4) > 0.003 || !strings.Contains(got.Why, "3 h without temperature not told") {
		t.Errorf("a gap of three: %+v", got)
	}
	for i := 11; i < 18; i++ {
		f.Celsius[i] = book.Amount{}
	}
	if got := at(f).Day(today); got.Layer != weather.Assumed {
		t.Errorf("the day's middle missing: %+v", got)
	}
	bare := book.WeatherHours{Yard: hill, Day: today, Celsius: f.Celsius[:0]}
	if got := at(bare).Day(today); got.Layer != weather.Assumed {
		t.Errorf("no hours: %+v", got)
	}
}

// TestHalfADayTold: a day of which hours end at 15:00, 13:43 by the sun, has 1.7 h
// of its 4 h of flight told, less than half, and is not told by the hour; one that
// ends at 16:00 has 2.7 h, and is.
func TestHalfADayTold(t *testing.T) {
	for hours, want := range map[int]weather.Layer{15: weather.Assumed, 16: weather.Seen} {
		f := hourly(today, 24, 24, 0, 0, 1)
		f.Celsius = f.Celsius[:hours]
		if got := at(f).Day(today); got.Layer != want {
			t.Errorf("told up to %d:00: %+v, want layer %v", hours, got, want)
		}
	}
}

// TestAFineDay: about 3 to 4 h, and about 3 are published (Buechler et al. 2013:
// flights of about 3 h a day).
func TestAFineDay(t *testing.T) {
	fine := book.WeatherSeen{Yard: hill, Day: today, Low: book.Said(12), High: book.Said(25), Wind: book.Said(2), Rain: book.Said(0), Sky: book.Said(0.9)}
	if h := at(fine).Hours(today); h < 3 || h > 4 {
		t.Errorf("a fine day has %g h", h)
	}
}

// A day with only some columns says what was taken as usual.
func TestWhatIsNotToldIsSaid(t *testing.T) {
	all := book.WeatherSeen{Yard: hill, Day: today, Low: book.Said(12), High: book.Said(23), Wind: book.Said(3), Rain: book.Said(2), Sky: book.Said(0.6)}
	for name, c := range map[string]struct {
		leave func(*book.WeatherSeen)
		why   string
	}{
		"all":     {func(*book.WeatherSeen) {}, "12 to 23 °C, wind 3 m/s, rain 2 mm, sun 60 %: "},
		"no wind": {func(w *book.WeatherSeen) { w.Wind = book.Amount{} }, "; wind not told, taken as usual"},
		"no low":  {func(w *book.WeatherSeen) { w.Low = book.Amount{} }, "13 to 23 °C"},
		"no high": {func(w *book.WeatherSeen) { w.High = book.Amount{} }, "; high not told, taken as usual"},
		"bare": {func(w *book.WeatherSeen) {
			w.Wind, w.Sky, w.Rain = book.Amount{}, book.Amount{}, book.Amount{}
		}, "; wind, sky, rain not told, taken as usual"},
	} {
		w := all
		c.leave(&w)
		if got := at(w).Day(today); !strings.Contains(got.Why, c.why) || got.Layer != weather.Seen {
			t.Errorf("%s: %q, want %q", name, got.Why, c.why)
		}
	}
	if got := at(book.WeatherSeen{Yard: hill, Day: today, Rain: book.Said(2)}).Day(today); got.Layer != weather.Assumed {
		t.Errorf("rain alone tells no hours: %+v", got)
	}
}

// TestExpectedByChance: the expected hours and the chance are those of a plain
// simulation of the same spreads, 40,000 days of it.
func TestExpectedByChance(t *testing.T) {
	chance := rand.New(rand.NewPCG(3, 5))
	for _, c := range []struct {
		n    book.WeatherNormal
		days int
	}{
		{book.WeatherNormal{Yard: hill, Month: 5, Low: book.Said(8), High: book.Said(19), Spread: book.Said(4), Wind: book.Said(5), Rainy: book.Said(0.4), Sky: book.Said(0.5)}, 40_000},
		{book.WeatherNormal{Yard: hill, Month: 5, Low: book.Said(13), High: book.Said(24), Spread: book.Said(3), Wind: book.Said(3), Rainy: book.Said(0.3), Sky: book.Said(0.6)}, 40_000},
	} {
		got := at(c.n).Day(today)
		var hours, fit float64
		for range c.days {
			warmer, winds := chance.NormFloat64()*c.n.Spread.Or(0), max(0, 1+0.4*chance.NormFloat64())
			h := at1(c.n, warmer, winds)
			if chance.Float64() < c.n.Rainy.Or(0) {
				h *= 0.3
			}
			hours += h / float64(c.days)
			if h >= 1 {
				fit += 1 / float64(c.days)
			}
		}
		if math.Abs(got.Hours-hours) > 0.03 || math.Abs(got.Chance-fit) > 0.03 || got.Layer != weather.Typical {
			t.Errorf("%+v; simulated %.3f h, chance %.3f", got, hours, fit)
		}
	}
}

// at1 is a day of a month by the definitions of an hour's fit share, written
// anew: minute by minute, with the course of temperature as published.
func at1(n book.WeatherNormal, warmer, winds float64) (h float64) {
	const length = 15.66 // h of daylight at 50° on 20 May
	ramp := func(x, a, b float64) float64 { return min(1, max(0, (x-a)/(b-a))) }
	for minute := 11 * 60; minute < 17*60; minute += 5 {
		s := float64(minute)/60 + 2.5/60
		after := s - (12 - length/2 - 0.17)
		c := n.Low.Or(0) + (n.High.Or(0)-n.Low.Or(0))*math.Sin(math.Pi*after/(length+2*1.86)) + warmer
		share := ramp(c, 16, 22) * (1 - ramp(c, 35, 40)) * (1 - ramp(n.Wind.Or(0)*winds*0.748, 4, 6.7)) * min(ramp(s, 11, 13), 1-ramp(s, 15, 17))
		sky := 0.3 + 0.8*n.Sky.Or(0)
		if n.Sky.Or(0) > 0.5 {
			sky = 0.7 + 0.6*(n.Sky.Or(0)-0.5)
		}
		h += share * sky * 5 / 60
	}
	return h
}

// A forecast that errs more says less: its hours lie between those of what is
// foretold and of any day, and one further ahead is less sure.
func TestForecastsFade(t *testing.T) {
	row := func(d calendar.Day) book.Fact {
		return book.WeatherSeen{Yard: hill, Day: d, Low: book.Said(14), High: book.Said(26), Wind: book.Said(2), Rain: book.Said(0), Sky: book.Said(1), Forecast: true}
	}
	y := at(row(today+1), row(today+5), row(today+10))
	if a, b, c := y.Day(today+1), y.Day(today+5), y.Day(today+10); !(a.Hours > b.Hours && b.Hours > c.Hours && a.Chance >= b.Chance && b.Chance >= c.Chance && a.Layer == weather.Forecast) {
		t.Errorf("%+v\n%+v\n%+v", a, b, c)
	}
	const want = "forecast 14 to 26 °C, wind 2 m/s, dry, sun 100 %, give or take 2.7 °C 5 days ahead: "
	if got := y.Day(today + 5).Why; !strings.HasPrefix(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
}

// Whatever was said, hours and chances are numbers within their bounds, and a
// day that is warmer, calmer, drier or sunnier within the bounds has no fewer.
func TestAnyDay(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		said := func(what string, low, high float64) book.Amount {
			if !rapid.Bool().Draw(t, what) {
				return book.Amount{}
			}
			return book.Said(rapid.Float64Range(low, high).Draw(t, what))
		}
		w := book.WeatherSeen{
			Yard: hill, Day: today + calendar.Day(rapid.IntRange(-300, 300).Draw(t, "day")), Low: said("low", -60, 60), High: said("high", -60, 60),
			Wind: said("wind", 0, 100), Rain: said("rain", 0, 2000), Sky: said("sky", 0, 1), Forecast: rapid.Bool().Draw(t, "forecast"),
		}
		n := book.WeatherNormal{
			Yard: hill, Month: rapid.IntRange(1, 12).Draw(t, "month"), Low: said("l", -60, 60), High: said("h", -60, 60), Spread: said("s", 0, 20),
			Wind: said("w", 0, 100), Rainy: said("r", 0, 1), Sky: said("y", 0, 1),
		}
		f := at(w, n).Day(w.Day)
		if !(f.Hours >= 0 && f.Hours <= 6 && f.Chance >= 0 && f.Chance <= 1) || f.Why == "" || f.Layer == 0 || strings.Contains(f.Why, "NaN") {
			t.Fatalf("%+v", f)
		}
		if f.Layer == weather.Seen && f.Chance != 0 && f.Chance != 1 {
			t.Fatalf("a day that was seen has a chance: %+v", f)
		}
		if wind, told := w.Wind.Get(); told && f.Layer != weather.Typical && f.Layer != weather.Assumed {
			w.Wind = book.Said(wind / 2)
			if calmer := at(w, n).Day(w.Day); calmer.Hours < f.Hours-1e-9 {
				t.Fatalf("with half the wind %+v, with it %+v", calmer, f)
			}
		}
	})
}
