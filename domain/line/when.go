package line

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// When is a day, or a time on it, as people type it.
type When struct {
	Day  calendar.Day
	At   time.Time     // zero: the whole day
	Part calendar.Part // of the day, where that was said; At is the hour that stands for it
}

// ParseWhen reads "2027-05-15", "2027-05-15 18:00", "yesterday evening", "3 days ago",
// "+3", "sat", "29 Apr 18:00", "Thu 29 Apr 2027", "29.4.": days are counted from today, and the name of a
// weekday, or a day and month without a year, is the nearest such day gone by, or
// today. "4/5" can be two days and is none. Its error says how to write it.
func ParseWhen(text string, today calendar.Day, zone *time.Location) (When, error) {
	day, clock := dayAndTime(text)
	d, err := ParseDay(day, today)
	if err != nil {
		return When{}, err
	}
	return when(d, clock, zone)
}

// ParseNext reads an instant to come, as [ParseWhen] does, but that the name of
// a weekday, or a day and month, is the coming one. The hour belongs to it.
func ParseNext(text string, now time.Time, zone *time.Location) (time.Time, error) {
	today := calendar.DayOf(now, zone)
	day, clock := dayAndTime(text)
	d, err := parseDay(day, today, coming)
	w := When{Day: d}
	if err == nil {
		w, err = when(d, clock, zone)
	}
	switch {
	case err != nil:
		return time.Time{}, err
	case w.At.IsZero():
		return time.Time{}, fmt.Errorf("%q: say the hour as well, like %q", text, d.String()+" 18:00")
	case !w.At.After(now):
		return time.Time{}, fmt.Errorf("%q is not after %s: say when you come again", text, calendar.Instantly(now).In(zone))
	}
	return w.At, nil
}

// dayAndTime parts a day from the time behind it, at a blank or at the T that
// files write.
func dayAndTime(text string) (day, clock string) {
	text = strings.TrimSpace(text)
	if t := strings.IndexByte(text, 'T'); t > 0 && text[t-1] >= '0' && text[t-1] <= '9' {
		text = text[:t] + " " + text[t+1:]
	}
	words := strings.Fields(text)
	n := dateWords(words)
	if len(words) >= agoWords {
		if _, ok := ago(strings.Join(words[:agoWords], " ")); ok {
			n = agoWords
		}
	}
	return strings.Join(words[:n], " "), strings.ToLower(strings.Join(words[n:], " "))
}

// dateWords is how many words at the beginning are a day: a weekday, day and month, and year.
func dateWords(words []string) int {
	n := min(1, len(words))
	for last := n + 1; last <= min(4, len(words)); last++ {
		if _, _, _, _, ok := splitDated(strings.Join(words[:last], " ")); ok {
			n = last
		}
	}
	return n
}

// when is a day with a time, or a part of the day, as it is typed.
func when(day calendar.Day, clock string, zone *time.Location) (w When, err error) {
	w.Day = day
	if clock == "" {
		return w, nil
	}
	if w.Part = partOf(clock); w.Part != calendar.Exact {
		w.At = calendar.On(day, w.Part, zone).Instant
		return w, nil
	}
	w.At, err = parseClock(day, clock, zone)
	return w, err
}

// partOf is the part of the day of a word; Exact where it is none.
func partOf(word string) calendar.Part {
	switch word {
	case "morning", "am":
		return calendar.Morning
	case "noon", "midday":
		return calendar.Midday
	case "afternoon", "pm":
		return calendar.Afternoon
	case "evening", "eve":
		return calendar.Evening
	case "night":
		return calendar.Night
	}
	return calendar.Exact
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

// ParseComing reads a day as [ParseDay] does, but that the name of a weekday, or
// a day and month, is the coming one.
func ParseComing(word string, today calendar.Day) (calendar.Day, error) {
	return parseDay(word, today, coming)
}

// ParseDay reads a day as [ParseWhen] does, without a time.
func ParseDay(word string, today calendar.Day) (calendar.Day, error) {
	return parseDay(word, today, gone)
}

func parseDay(word string, today calendar.Day, way direction) (calendar.Day, error) {
	switch word = strings.ToLower(strings.TrimSpace(word)); word {
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
	for n := range calendar.Day(7) {
		if d := today + n*calendar.Day(way); begins(d.Weekday().String(), word) {
			return d, nil
		}
	}
	if days, ok := ago(word); ok {
		return inBooks(word, today-days)
	}
	if d, ok, err := dated(word, today, way); ok {
		return d, err
	}
	d, err := calendar.ParseDay(word)
	var missing *calendar.NoSuchDayError
	if errors.As(err, &missing) {
		return 0, err
	}
	if err != nil {
		return 0, unread(word)
	}
	return inBooks(word, d)
}

// inBooks is a day, unless it is in a year in which nobody keeps a book.
func inBooks(word string, d calendar.Day) (calendar.Day, error) {
	return d, rules.PlausibleDay(fmt.Sprintf("day %q", word), d)
}

// Moment is when a thing happened: the very time or part that was said, the
// day, or now when nothing was said.
func (w When) Moment(now time.Time, zone *time.Location) calendar.Moment {
	switch {
	case w.Part != calendar.Exact:
		return calendar.On(w.Day, w.Part, zone)
	case !w.At.IsZero():
		return calendar.Instantly(w.At)
	case w.Day == calendar.DayOf(now, zone):
		return calendar.Instantly(now)
	default:
		return calendar.On(w.Day, calendar.WholeDay, zone)
	}
}

// Instant is the instant that a question about a day is asked for: the time
// that was said; of a day gone by its end, so that all of it counts; of today
// now; of a day to come its noon.
func (w When) Instant(now time.Time, zone *time.Location) time.Time {
	switch today := calendar.DayOf(now, zone); {
	case !w.At.IsZero():
		return w.At
	case w.Day < today:
		return (w.Day + 1).Start(zone).Add(-time.Second)
	case w.Day == today:
		return now
	default:
		return w.Day.At(noon, 0, zone)
	}
}

// noon is the hour at which a day to come is read.
const noon = 12
