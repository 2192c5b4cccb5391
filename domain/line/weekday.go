package line

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/calendar"
)

// dated reads a day and month, "29 Apr", with the weekday before it and the year behind it where
// these are said; ok is false where the text is none. A weekday that is not the day's is an error.
func dated(word string, today calendar.Day, way direction) (d calendar.Day, ok bool, err error) {
	weekday, day, month, year, ok := splitDated(word)
	if !ok {
		return 0, false, nil
	}
	if year == "" {
		d, err = nearest(word, day, month, today, way)
	} else if d, err = calendar.ParseDay(fmt.Sprintf("%s-%02d-%02d", year, month, day)); err == nil {
		d, err = inBooks(word, d)
	}
	if err == nil && weekday != "" && !begins(d.Weekday().String(), weekday) {
		year, _, _ := d.Date()
		err = fmt.Errorf("day %q: %s %d is a %s, write another weekday, none, or the year that is meant, like 29 Apr %d", word, dayMonth(d), year, d.Weekday(), year+1)
	}
	return d, true, err
}

// splitDated reads "Thu 29 Apr 2027" and what stands for less of it: the weekday and the year are ""
// where they are not said. It does not ask whether there is such a day.
func splitDated(text string) (weekday string, day int, month time.Month, year string, ok bool) {
	weekday, rest := cutWeekday(text)
	date, year := cutYear(rest)
	day, month, ok = splitDate(date)
	return weekday, day, month, year, ok
}

// dayMonth is a day without its weekday: "29 Apr".
func dayMonth(d calendar.Day) string {
	_, said, _ := strings.Cut(d.Short(), " ")
	return said
}

// cutWeekday parts the name of a weekday from what follows it; "" where none stands there.
func cutWeekday(text string) (weekday, rest string) {
	first, rest, _ := strings.Cut(text, " ")
	first = strings.TrimRight(first, ".,")
	for d := time.Sunday; d <= time.Saturday && rest != ""; d++ {
		if begins(d.String(), first) {
			return first, strings.TrimSpace(rest)
		}
	}
	return "", text
}

// cutYear parts a year from the day and month before it; "" where none stands there.
func cutYear(text string) (date, year string) {
	at := strings.LastIndexAny(text, " .") + 1
	if last := text[at:]; at == 0 || len(last) != len("2027") || strings.Trim(last, "0123456789") != "" {
		return text, ""
	}
	return strings.TrimSpace(text[:at]), text[at:]
}
