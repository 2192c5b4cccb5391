package roll

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// Order is which stands first in a date of figures, the day or the month.
type Order uint8

// The orders. Asked, the zero value, is not known.
const (
	Asked Order = iota
	DayFirst
	MonthFirst
)

// String is the order in words, as [ParseOrder] reads it.
func (o Order) String() string { return [...]string{"asked", "day-first", "month-first"}[o] }

// ParseOrder reads an order's words.
func ParseOrder(text string) (Order, error) {
	for o := DayFirst; o <= MonthFirst; o++ {
		if strings.EqualFold(text, o.String()) {
			return o, nil
		}
	}
	return Asked, fmt.Errorf("order of dates %q: write %s or %s", text, DayFirst, MonthFirst)
}

// date is a date as its figures stand, before it is known what they mean.
type date struct {
	day, month, year int  // year -1 is not said
	turned           bool // a slash or dash: the month may stand first
	clock            string
}

// likeDays is how to write a day.
const likeDays = "write it like 2027-05-15, 15.5.2027 or 15 May 2027"

// splitDate takes a date apart: "2027-05-15", "15.5.2027", "15/5/27", "15 May
// 2027", "May 15, 2027", each with a weekday before and a time behind it, if
// any.
func splitDate(text string) (d date, ok bool) {
	words := strings.FieldsFunc(text, func(r rune) bool { return r == ' ' || r == ',' || r == '\u00a0' })
	if n := len(words); n > 1 && strings.Contains(words[n-1], ":") {
		d.clock, words = words[n-1], words[:n-1]
	}
	if len(words) > 1 && isWeekday(words[0]) {
		words = words[1:]
	}
	text = strings.Join(words, " ")
	if day, clock, iso := strings.Cut(text, "T"); iso && d.clock == "" && strings.Contains(clock, ":") {
		text, d.clock = day, clock
	}
	sign := strings.IndexAny(text, ".-/")
	if len(words) > 1 || sign < 0 || strings.ContainsFunc(text, isLetter) {
		return d.named(text)
	}
	parts := strings.Split(strings.TrimSuffix(text, "."), text[sign:sign+1])
	switch len(parts) {
	case 3:
		if len(parts[0]) == len("2027") {
			return d.of(parts[2], parts[1], parts[0])
		}
		d.turned = text[sign] != '.'
		return d.of(parts[0], parts[1], parts[2])
	case 2:
		d.turned = text[sign] != '.'
		return d.of(parts[0], parts[1], "")
	}
	return d, false
}

// named is a date whose month is a word.
func (d date) named(text string) (date, bool) {
	parts := strings.FieldsFunc(text, func(r rune) bool { return strings.ContainsRune(" .-/", r) })
	for i, p := range parts {
		month := monthOf(p)
		if month == 0 {
			continue
		}
		rest := append(append([]string{}, parts[:i]...), parts[i+1:]...)
		if i > 1 || len(rest) < 1 || len(rest) > 2 {
			return d, false
		}
		for _, end := range []string{"st", "nd", "rd", "th"} {
			rest[0] = strings.TrimSuffix(rest[0], end)
		}
		return d.of(rest[0], strconv.Itoa(month), strings.Join(rest[1:], ""))
	}
	return d, false
}

func (d date) of(day, month, year string) (date, bool) {
	ok := [3]bool{true, true, true}
	d.day, ok[0] = figure(day)
	d.month, ok[1] = figure(month)
	if d.year = -1; year != "" {
		if d.year, ok[2] = figure(year); len(year) == 2 {
			d.year += 2000
		}
		ok[2] = ok[2] && (len(year) == 2 || len(year) == 4)
	}
	return d, ok[0] && ok[1] && ok[2]
}

// figure is a number of one to four digits.
func figure(text string) (n int, ok bool) {
	if text == "" || len(text) > 4 || strings.Trim(text, "0123456789") != "" {
		return 0, false
	}
	n, _ = strconv.Atoi(text) // digits
	return n, true
}

func isLetter(r rune) bool { return 'a' <= r && r <= 'z' || 'A' <= r && r <= 'Z' }

func isWeekday(word string) bool {
	for d := time.Sunday; d <= time.Saturday; d++ {
		if starts(d.String(), strings.TrimSuffix(word, ".")) {
			return true
		}
	}
	return false
}

func monthOf(word string) int {
	for m := time.January; m <= time.December; m++ {
		if starts(m.String(), word) || strings.EqualFold(word, "sept") && m == time.September {
			return int(m)
		}
	}
	return 0
}

// starts tells whether a word of three letters or more begins a name.
func starts(name, word string) bool {
	return len(word) > 2 && len(word) <= len(name) && strings.EqualFold(name[:len(word)], word)
}

// order is the order that the figures of a date leave open or not; sure is the
// only one that makes a day of them.
func (d date) order() (sure Order, open bool) {
	const months = 12
	switch {
	case !d.turned || d.day == d.month:
		return Asked, false
	case d.day > months && d.month <= months:
		return DayFirst, false
	case d.month > months && d.day <= months:
		return MonthFirst, false
	}
	return Asked, d.day <= months
}

// in is a date in an order, its day and its month each in its place.
func (d date) in(o Order) date {
	if d.turned && o == MonthFirst {
		d.day, d.month = d.month, d.day
	}
	return d
}

// never says why a date is no day in any year.
func (d date) never(text string) fault {
	switch month := time.Month(d.month); {
	case calendar.MostDays(month) == 0 || d.day == 0:
		return faulty(likeDays, "%s is no day of the calendar", text)
	case d.day > calendar.MostDays(month) && month == time.February:
		return faulty("write a day that there is", "%s: February has 28 days, 29 in a leap year", text)
	case d.day > calendar.MostDays(month):
		return faulty("write a day that there is", "%s: %s has %d days", text, month, calendar.MostDays(month))
	}
	return fault{}
}

// calendar is the day that a date means in an order; where it stands in the
// wrong order, has no year or is no day, it says so.
func (d date) calendar(text string, o Order, year int) (calendar.Day, fault) {
	if _, open := d.order(); open && o == Asked {
		return 0, faulty("say whether the day or the month stands first", "%s can be two days", text)
	}
	d = d.in(o)
	if d.year < 0 {
		d.year = year
	}
	if f := d.never(text); f != (fault{}) {
		return 0, f
	}
	if d.year == 0 {
		return 0, faulty("say which year is meant", "%s has no year", text)
	}
	got := calendar.Date(d.year, time.Month(d.month), d.day)
	if _, _, day := got.Date(); day != d.day { // 29 February
		return 0, faulty("write a day that there is", "%s: February %d has 28 days", text, d.year)
	}
	if err := rules.PlausibleDay(text, got); err != nil {
		what, do := cutLast(err.Error())
		return 0, fault{what, do}
	}
	return got, fault{}
}
