package view

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/ui/state"
)

// thousands writes a whole number with a space before every three figures.
func thousands(n int) string {
	s := strconv.Itoa(n)
	for i := len(s) - 3; i > 0 && s[i-1] != '-'; i -= 3 {
		s = s[:i] + " " + s[i:]
	}
	return s
}

// plural writes a number of things.
func plural(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return thousands(n) + " " + many
}

// needWords says how many need the keeper on the day looked at.
func needWords(n int, s state.State) string { return thousands(n) + " " + needVerb(n, s) }

// needVerb is what so many do then.
func needVerb(n int, s state.State) string { return s.NeedVerb(n) }

// dotted puts a dot between words, those left out that say nothing.
func dotted(words ...string) string {
	return strings.Join(slices.DeleteFunc(words, func(w string) bool { return w == "" }), " · ")
}

// batchWord is a batch by its number and its line, where that was said.
func batchWord(b *book.Batch) string { return dotted(fmt.Sprintf("Batch %d", b.Number), b.Line) }

// figure writes a number with as many decimals as it needs, at most one.
func figure(v float64) string {
	whole, decimal, _ := strings.Cut(strconv.FormatFloat(v, 'f', 1, 64), ".")
	if n, err := strconv.Atoi(whole); err == nil {
		whole = thousands(n)
	}
	if decimal == "0" {
		return whole
	}
	return whole + "." + decimal
}

// minutes writes a time, "246 min".
func minutes(v float64) string { return thousands(int(math.Round(v))) + " min" }

// shortDay is a day without its weekday: "15 May".
func shortDay(d calendar.Day) string {
	_, m, day := d.Date()
	return fmt.Sprintf("%d %s", day, m.String()[:3])
}

// longDay is a day with its weekday in full: "Tuesday 11 May".
func longDay(d calendar.Day) string {
	_, m, day := d.Date()
	return fmt.Sprintf("%s %d %s", d.Weekday(), day, m)
}

// hour is an instant by day and clock, "Wed 12 May 06:00"; the last second of
// a day is that day.
func hour(t time.Time, zone *time.Location) string {
	if endOfDay(t, zone) {
		return t.In(zone).Format("Mon 2 Jan")
	}
	return t.In(zone).Format("Mon 2 Jan 15:04")
}

// weekdayHour is an instant within a week, "Wed 06:00"; the last second of a
// day is that day.
func weekdayHour(t time.Time, zone *time.Location) string {
	if endOfDay(t, zone) {
		return t.In(zone).Format("Mon")
	}
	return t.In(zone).Format("Mon 15:04")
}

func endOfDay(t time.Time, zone *time.Location) bool {
	return calendar.DayOf(t.Add(time.Second), zone) != calendar.DayOf(t, zone)
}

// bearing is a direction in words.
func bearing(degrees float64) string {
	names := []string{"north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west"}
	i := int(degrees/45+0.5) % 8
	if i < 0 {
		i += 8
	}
	return names[i]
}

// daysAway is how far a day lies from today in words.
func daysAway(n int) string {
	switch {
	case n == 0:
		return "today"
	case n == 1:
		return "1 day ahead"
	case n > 1:
		return thousands(n) + " days ahead"
	case n == -1:
		return "1 day back"
	default:
		return thousands(-n) + " days back"
	}
}

func sentence(s string) string { return plan.Sentence(s) }

// firstKey is the first of a command's keys as it is printed.
func firstKey(keys string) string {
	key, _, _ := strings.Cut(keys, " ")
	for _, r := range []struct{ key, printed string }{
		{"PageDown", "Page Down"},
		{"PageUp", "Page Up"},
		{"Escape", "Esc"},
		{"-", "−"},
		{"Left", "←"},
		{"Right", "→"},
		{"Up", "↑"},
		{"Down", "↓"},
	} {
		if rest, ok := strings.CutSuffix(key, r.key); ok {
			return rest + r.printed
		}
	}
	return key
}
