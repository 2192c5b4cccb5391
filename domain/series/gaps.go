package series

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Gaps are what is missing of the temperature between the first that was told and
// the last: days of which none was, and on other days hours.
type Gaps struct {
	Days  []calendar.Day
	Hours int
	On    []calendar.Day // days on which hours are missing
}

// Words say what is missing with its dates; "" where nothing is.
func (g Gaps) Words() string { return strings.Join(g.Lines(), "; ") }

// Lines are those words of whole days, and of hours.
func (g Gaps) Lines() (all []string) {
	if n := len(g.Days); n > 0 {
		all = append(all, count(n, "whole day")+" missing: "+runs(g.Days))
	}
	if g.Hours > 0 {
		all = append(all, "temperature is missing of "+count(g.Hours, "hour")+" between the first and the last, on "+runs(g.On))
	}
	return all
}

func count(n int, thing string) string {
	if n == 1 {
		return "1 " + thing
	}
	return fmt.Sprintf("%d %ss", n, thing)
}

// runs are days as one says them, those that follow on each other together, and
// how many more there are than one can read.
func runs(days []calendar.Day) string {
	const most = 4
	var all []string
	more := 0
	for i := 0; i < len(days); {
		last := i
		for last+1 < len(days) && days[last+1] == days[last]+1 {
			last++
		}
		words := days[i].Short()
		if last > i {
			words += " to " + days[last].Short()
		}
		if len(all) < most {
			all = append(all, words)
		} else {
			more += last - i + 1
		}
		i = last + 1
	}
	if more > 0 {
		all = append(all, count(more, "more day"))
	}
	return strings.Join(all, ", ")
}

// told is how much of the temperature of a day was told: of its hours each, the
// whole of it by one of low and high.
type told struct {
	day         calendar.Day
	first, last int // hours, of those told
	hours, of   int // told, and of how many between midnights
}

// gapsOf are the gaps of days in their order.
func gapsOf(facts []book.Fact, zone *time.Location) (g Gaps) {
	var days []told
	for _, f := range facts {
		if t := toldOf(f, zone); t.hours > 0 {
			days = append(days, t)
		}
	}
	for i, t := range days {
		from, until := 0, t.of-1
		if i == 0 {
			from = t.first
		}
		if i == len(days)-1 {
			until = t.last
		}
		if missing := until - from + 1 - t.hours; missing > 0 {
			g.Hours, g.On = g.Hours+missing, append(g.On, t.day)
		}
		for d := t.day + 1; i+1 < len(days) && d < days[i+1].day; d++ {
			g.Days = append(g.Days, d)
		}
	}
	return g
}

func toldOf(f book.Fact, zone *time.Location) told {
	switch f := f.(type) {
	case book.WeatherSeen:
		if !f.Low.IsZero() || !f.High.IsZero() {
			return told{day: f.Day, hours: 1, of: 1}
		}
	case book.WeatherHours:
		t := told{day: f.Day, first: -1, of: int((f.Day + 1).Start(zone).Sub(f.Day.Start(zone)) / time.Hour)}
		for i, a := range f.Celsius {
			if a.IsZero() {
				continue
			}
			if t.hours++; t.first < 0 {
				t.first = i
			}
			t.last = i
		}
		return t
	}
	return told{}
}
