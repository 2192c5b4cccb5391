package paper

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// longDay is a day in full: "Tuesday 11 May 2027".
func longDay(d calendar.Day) string {
	year, month, day := d.Date()
	return fmt.Sprintf("%s %d %s %d", d.Weekday(), day, month, year)
}

// hour is an instant by day and clock, "Wed 12 May 06:00"; the last second of a
// day is that day.
func (s *sheet) hour(t time.Time) string {
	if s.endOfDay(t) {
		return t.In(s.zone).Format("Mon 2 Jan")
	}
	return t.In(s.zone).Format("Mon 2 Jan 15:04")
}

// hourFrom is an instant that may lie in another year than the day read, with that.
func (d planSheet) hourFrom(t time.Time) string {
	return calendar.Instantly(t).InFrom(d.Day, d.zone)
}

// soon is the same within a week, "Wed 06:00".
func (s *sheet) soon(t time.Time) string {
	if s.endOfDay(t) {
		return t.In(s.zone).Format("Mon")
	}
	return t.In(s.zone).Format("Mon 15:04")
}

func (s *sheet) endOfDay(t time.Time) bool {
	return calendar.DayOf(t.Add(time.Second), s.zone) != calendar.DayOf(t, s.zone)
}

// minutes are whole minutes: "214 min".
func minutes(v float64) string { return strconv.Itoa(int(math.Round(v))) + " min" }

// plural is a number of things.
func plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return strconv.Itoa(n) + " " + many
}

// figure is a number with as many decimals as it needs, at most one.
func figure(v float64) string {
	return strings.TrimSuffix(strconv.FormatFloat(v, 'f', 1, 64), ".0")
}

func sentence(s string) string { return plan.Sentence(s) }
