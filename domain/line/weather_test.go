package line_test

import (
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

func TestWeather(t *testing.T) {
	today := calendar.Date(2027, time.May, 15)
	yard := book.YardID{1}
	got, err := line.Weather("+ ±−h0", today-2, today, yard)
	want := []book.Fact{
		book.WeatherSeen{Yard: yard, Day: today - 2, Sign: book.Flying},
		book.WeatherSeen{Yard: yard, Day: today - 1, Sign: book.HalfFit},
		book.WeatherSeen{Yard: yard, Day: today, Sign: book.NoFlight},
		book.WeatherSeen{Yard: yard, Day: today + 1, Sign: book.HalfFit, Forecast: true},
		book.WeatherSeen{Yard: yard, Day: today + 2, Sign: book.NoFlight, Forecast: true},
	}
	if diff := cmp.Diff(want, got, cmp.AllowUnexported(book.Amount{})); err != nil || diff != "" {
		t.Errorf("%v\n%s", err, diff)
	}
	for text, want := range map[string]string{
		"+?":                    `column 2: '?' is no sign of weather; write + ± − a day`,
		strings.Repeat("+", 18): `column 18: Tue 1 Jun is more than 16 days ahead, no forecast reaches so far`,
	} {
		if facts, err := line.Weather(text, today, today, yard); err == nil || err.Error() != want || facts != nil {
			t.Errorf("Weather(%q) = %v, %v, want %s", text, facts, err, want)
		}
	}
}

// What is typed of cages and weather is read or refused, and what is read makes
// sense.
func FuzzCagesAndWeather(f *testing.F) {
	for _, s := range []string{"1-5,7", "++±−−0h", "-", "3 ", "1-1000"} {
		f.Add(s)
	}
	today := calendar.Date(2027, time.May, 15)
	f.Fuzz(func(t *testing.T, text string) {
		labels, err := line.Cages(text)
		seen := map[string]bool{}
		for _, label := range labels {
			seen[label] = true
		}
		if err == nil && (len(labels) == 0 || len(seen) != len(labels)) {
			t.Errorf("Cages(%q) = %q", text, labels)
		}
		facts, err := line.Weather(text, today, today, book.YardID{1})
		for i, fact := range facts {
			if w := fact.(book.WeatherSeen); err != nil || w.Sign == 0 || w.Day != today+calendar.Day(i) || w.Forecast != (i > 0) {
				t.Errorf("Weather(%q) = %+v, %v", text, w, err)
			}
		}
	})
}
