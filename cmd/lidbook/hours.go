package main

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/book"
)

// person reads "Ida Mon-Fri 18:30-20:30 Sat 08:00-12:00".
func person(text string, id book.PersonID) (book.PersonDescribed, error) {
	name, free, err := splitHours(text)
	switch {
	case err != nil:
		return book.PersonDescribed{}, err
	case name == "":
		return book.PersonDescribed{}, fmt.Errorf("a person needs a name")
	}
	return book.PersonDescribed{Person: id, Name: name, Free: free}, nil
}

// splitHours parts a name from the free hours behind it.
func splitHours(text string) (name string, free [7]book.FreeHours, err error) {
	words := strings.Fields(strings.ReplaceAll(text, ",", " "))
	at := len(words)
	for i, w := range words {
		if _, ok := weekdays(w); ok && i > 0 {
			at = i
			break
		}
	}
	name = strings.Join(words[:at], " ")
	for rest := words[at:]; len(rest) > 0; rest = rest[2:] {
		if len(rest) < 2 {
			return name, free, fmt.Errorf("free hours of %s: add them, like %s 18:30-20:30", rest[0], rest[0])
		}
		days, ok := weekdays(rest[0])
		hours, err := parseHours(rest[1])
		if !ok || err != nil {
			return name, free, fmt.Errorf("free hours %q: write them like Mon-Fri 18:30-20:30", rest[0]+" "+rest[1])
		}
		for _, d := range days {
			free[d] = hours
		}
	}
	return name, free, nil
}

// weekdays reads "Mon", "Mon-Fri", "Sat-Mon".
func weekdays(text string) (days []time.Weekday, ok bool) {
	first, last, span := strings.Cut(text, "-")
	from, ok1 := weekday(first)
	if !span {
		last = first
	}
	to, ok2 := weekday(last)
	if !ok1 || !ok2 {
		return nil, false
	}
	for d := from; ; d = (d + 1) % 7 {
		days = append(days, d)
		if d == to {
			return days, true
		}
	}
}

func weekday(text string) (time.Weekday, bool) {
	for d := range time.Weekday(7) {
		if strings.EqualFold(d.String(), text) || strings.EqualFold(d.String()[:3], text) {
			return d, true
		}
	}
	return 0, false
}

func parseHours(text string) (h book.FreeHours, err error) {
	from, until, _ := strings.Cut(text, "-")
	if h.From, err = minutes(from); err != nil {
		return h, err
	}
	if h.Until, err = minutes(until); err == nil && h.Until <= h.From {
		err = fmt.Errorf("%s is not after %s", until, from)
	}
	return h, err
}

func minutes(text string) (int, error) {
	if text == "24:00" {
		return 24 * 60, nil
	}
	t, err := time.Parse("15:04", text)
	return t.Hour()*60 + t.Minute(), err
}
