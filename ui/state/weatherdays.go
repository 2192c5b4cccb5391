package state

import (
	"fmt"
	"strconv"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/unit"
)

// weatherDays is a table of days typed at once, a line each.
var weatherDays = Record{
	Name: "weather days", Word: "Weather of several days", Of: fromYard, Asks: askDays,
	Facts: func(s State, a *Answers) (facts []book.Fact) {
		for d := s.Today() - daysBehind; d <= s.Today()+daysAhead; d++ {
			if f, said := a.dayTyped(d); said {
				f.Forecast = book.Foretold(d, s.Today())
				facts = append(facts, f)
			}
		}
		if len(facts) == 0 && len(a.Mistakes) == 0 {
			a.Wrong(dayField(s.Today()), "write one day at least: low and high, like 8 19")
		}
		return facts
	},
}

// daysBehind and daysAhead are how many days about today the table has.
const daysBehind, daysAhead = 3, 5

func dayField(d calendar.Day) string { return "day." + d.String() }

func askDays(s State) (all []Ask) {
	r, yard := s.Present(), s.yardMeant(s.Selection)
	for d := s.Today() - daysBehind; d <= s.Today()+daysAhead; d++ {
		note := ""
		if d == s.Today()-daysBehind {
			note = s.howDaysAreTyped()
		}
		label := d.Short()
		switch {
		case d == s.Today():
			label += ", today"
		case d > s.Today():
			label += ", forecast"
		}
		if f := r.FlightOn(yard, d); !f.Usual() && note == "" {
			note = "in the book: " + f.Why
		}
		all = append(all, askWords(dayField(d), label, "", note))
	}
	return all
}

// howDaysAreTyped says it in the keeper's units.
func (s State) howDaysAreTyped() string {
	_, warmth := s.Units.Of(0, "°C")
	_, wind := s.Units.Of(0, "m/s")
	_, rain := s.Units.Of(0, "mm")
	like := "8 19 3 0 60"
	if s.Units == unit.US {
		like = "46 66 7 0 60"
	}
	return fmt.Sprintf("low and high in %s, wind in %s, rain in %s, sun in %%, like %s; - where not known", warmth, wind, rain, like)
}

// dayTyped reads the line of a day.
func (a *Answers) dayTyped(d calendar.Day) (f book.WeatherSeen, said bool) {
	name := dayField(d)
	words := strings.Fields(a.Text(name))
	if len(words) == 0 {
		return f, false
	}
	f = book.WeatherSeen{Yard: a.Yard(), Day: d}
	into := []struct {
		amount *book.Amount
		unit   string
	}{{&f.Low, "°C"}, {&f.High, "°C"}, {&f.Wind, "m/s"}, {&f.Rain, "mm"}, {&f.Sky, ""}}
	if len(words) > len(into) {
		a.Wrong(name, "write five figures at most: low, high, wind, rain, sun")
		return f, false
	}
	for i, word := range words {
		if word == "-" || word == "–" {
			continue
		}
		v, err := strconv.ParseFloat(strings.ReplaceAll(word, ",", "."), 64)
		if err != nil || v != v || v > 1e9 || v < -1e9 {
			a.Wrong(name, "%q is no number: write low, high, wind, rain, sun, like 8 19 3 0 60", word)
			return f, false
		}
		*into[i].amount = book.Said(a.s.Units.Back(v, into[i].unit))
	}
	return a.dayChecked(f, name)
}

// dayChecked is a day that was typed, its sun as a share.
func (a *Answers) dayChecked(f book.WeatherSeen, name string) (book.WeatherSeen, bool) {
	const all = 100
	low, lowSaid := f.Low.Get()
	high, highSaid := f.High.Get()
	sun, sunSaid := f.Sky.Get()
	switch {
	case !lowSaid && !highSaid:
		a.Wrong(name, "write the low or the high, or both")
	case lowSaid && highSaid && low > high:
		a.Wrong(name, "the low lies above the high: turn them round")
	case sunSaid && (sun < 0 || sun > all):
		a.Wrong(name, "write the sun in per cent, 0 to 100")
	default:
		if sunSaid {
			f.Sky = book.Said(sun / all)
		}
		return f, true
	}
	return f, false
}
