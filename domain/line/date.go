package line

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/calendar"
)

// direction is where a day lies that is named without its year.
type direction calendar.Day

const (
	gone   direction = -1 // or today
	coming direction = +1 // or today
)

// splitDate reads a day and a month without a year: "29 Apr", "April 29",
// "29.4.", "29.4". It does not ask whether there is such a day.
func splitDate(text string) (day int, month time.Month, ok bool) {
	if first, second, two := strings.Cut(text, " "); two {
		first, second = strings.TrimSuffix(first, "."), strings.TrimSuffix(second, ".")
		if monthOf(first) != 0 {
			first, second = second, first
		}
		day, month = dateFigure(first), monthOf(second)
		return day, month, day > 0 && month > 0
	}
	first, second, _ := strings.Cut(strings.TrimSuffix(text, "."), ".")
	day, month = dateFigure(first), time.Month(dateFigure(second))
	return day, month, day > 0 && month > 0
}

// dateFigure is a number of one or two digits; 0 where it is none.
func dateFigure(text string) int {
	if len(text) > 2 || strings.Trim(text, "0123456789") != "" {
		return 0
	}
	n, _ := strconv.Atoi(text) // digits, or nothing
	return n
}

// monthOf is the month that a word begins or names; 0 where it is none.
func monthOf(word string) time.Month {
	for m := time.January; m <= time.December; m++ {
		if begins(m.String(), word) {
			return m
		}
	}
	return 0
}

// begins tells whether a word of three letters or more begins a name.
func begins(name, word string) bool {
	return len(word) > 2 && len(word) <= len(name) && strings.EqualFold(name[:len(word)], word)
}

// nearest is the day of a month next to today: the last one gone by or the next
// to come, today included.
func nearest(word string, day int, month time.Month, today calendar.Day, way direction) (calendar.Day, error) {
	const years = 8 // 29 Feb can be so far away
	switch last := calendar.MostDays(month); {
	case last == 0:
		return 0, fmt.Errorf("day %q: there is no month %d, write it like 29 Apr or 2027-05-15", word, month)
	case day > last:
		return 0, &calendar.NoSuchDayError{Typed: word, Month: month.String(), Days: last}
	}
	year, _, _ := today.Date()
	for n := range years + 1 {
		d := calendar.Date(year+n*int(way), month, day)
		_, m, on := d.Date()
		if m == month && on == day && (d-today)*calendar.Day(way) >= 0 {
			return inBooks(word, d)
		}
	}
	return 0, fmt.Errorf("day %q: there is no such day within %d years, write it with its year, like 2028-02-29", word, years)
}

// unread says how to write a day that could not be read.
func unread(word string) error {
	if day, month, slash := strings.Cut(word, "/"); slash && dateFigure(day) > 0 && dateFigure(month) > 0 {
		return fmt.Errorf("day %q: a slash leaves open which is the month, write it as a word, like 4 May", word)
	}
	return fmt.Errorf("day %q: write it like 2027-05-15, 29 Apr, today, yesterday, +3 or sat", word)
}
