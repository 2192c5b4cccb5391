package main

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// when is a day, or a time on it, as a flag says it.
type when struct {
	day  calendar.Day
	at   time.Time // zero: the whole day
	part calendar.Part
}

var parts = map[string]calendar.Part{
	"morning": calendar.Morning, "am": calendar.Morning, "noon": calendar.Midday, "midday": calendar.Midday,
	"afternoon": calendar.Afternoon, "pm": calendar.Afternoon, "evening": calendar.Evening, "eve": calendar.Evening, "night": calendar.Night,
}

// parseWhen reads "2027-05-15", "2027-05-15 18:00", "yesterday evening", "+3",
// "sat": days are counted from today, and the name of a weekday is the nearest
// such day gone by, or today.
func parseWhen(text string, today calendar.Day, zone *time.Location) (w when, err error) {
	day, rest, _ := strings.Cut(strings.TrimSpace(strings.ReplaceAll(text, "T", " ")), " ")
	if w.day, err = parseDay(strings.ToLower(day), today); err != nil {
		return w, err
	}
	switch rest = strings.ToLower(strings.TrimSpace(rest)); {
	case rest == "":
		return w, nil
	case parts[rest] != 0:
		w.part = parts[rest]
		w.at = calendar.On(w.day, w.part, zone).Instant
		return w, nil
	}
	w.at, err = parseClock(w.day, rest, zone)
	return w, err
}

// parseClock reads "18:00", and where the clocks go back over an hour which of
// the two is meant: "02:30 first".
func parseClock(day calendar.Day, text string, zone *time.Location) (time.Time, error) {
	typed, which, _ := strings.Cut(text, " ")
	clock, err := time.Parse("15:04", typed)
	if err != nil || which != "" && which != "first" && which != "second" {
		return time.Time{}, fmt.Errorf("time %q: write it like 18:00, or morning, noon, afternoon, evening, night", text)
	}
	times, at := day.Wall(clock.Hour(), clock.Minute(), zone)
	switch {
	case times == 0:
		return time.Time{}, fmt.Errorf("time %s on %s: the clocks skip it, write %s where they go on", typed, day.Short(), at(false).Format("15:04"))
	case times == 2 && which == "":
		return time.Time{}, fmt.Errorf("time %s on %s: it comes twice, write \"%s first\" or \"%s second\"", typed, day.Short(), typed, typed)
	}
	return at(which == "second"), nil
}

func parseDay(word string, today calendar.Day) (calendar.Day, error) {
	switch word {
	case "today", "now":
		return today, nil
	case "yesterday":
		return today - 1, nil
	case "tomorrow":
		return today + 1, nil
	}
	if n, err := strconv.Atoi(word); err == nil && (word[0] == '+' || word[0] == '-') {
		const most = 400 * 366 // more days than any book spans
		return inBooks(word, today+calendar.Day(min(max(n, -most), most)))
	}
	for back := range calendar.Day(7) {
		if name := strings.ToLower((today - back).Weekday().String()); len(word) >= 3 && strings.HasPrefix(name, word) {
			return today - back, nil
		}
	}
	d, err := calendar.ParseDay(word)
	var missing *calendar.NoSuchDayError
	if errors.As(err, &missing) {
		return 0, err
	}
	if err != nil {
		return 0, fmt.Errorf("day %q: write it like 2027-05-15, today, yesterday, +3 or sat", word)
	}
	return inBooks(word, d)
}

// inBooks is a day, unless it is in a year in which nobody keeps a book.
func inBooks(word string, d calendar.Day) (calendar.Day, error) {
	return d, rules.PlausibleDay(fmt.Sprintf("day %q", word), d)
}

// moment is when a thing happened: the very time or part that was said, the
// day, or now when nothing was said.
func (w when) moment(now time.Time, zone *time.Location) calendar.Moment {
	switch {
	case w.part != calendar.Exact:
		return calendar.On(w.day, w.part, zone)
	case !w.at.IsZero():
		return calendar.Instantly(w.at)
	case w.day == calendar.DayOf(now, zone):
		return calendar.Instantly(now)
	default:
		return calendar.On(w.day, calendar.WholeDay, zone)
	}
}

// instant is the instant that a question about a day is asked for: the time
// that was said; of a day gone by its end, so that all of it counts; of today
// now; of a day to come its beginning.
func (w when) instant(now time.Time, zone *time.Location) time.Time {
	switch today := calendar.DayOf(now, zone); {
	case !w.at.IsZero():
		return w.at
	case w.day < today:
		return (w.day + 1).Start(zone).Add(-time.Second)
	case w.day == today:
		return now
	default:
		return w.day.Start(zone)
	}
}
