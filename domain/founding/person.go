package founding

import (
	"fmt"
	"strings"
	"time"
	"unicode"

	"lidmark/domain/book"
)

// Person reads a name with the free hours behind it, if any: "Ida Mon-Fri
// 18:30-20:30 Sat 08:00-12:00".
func Person(text string, id book.PersonID) (book.PersonDescribed, error) {
	words := strings.Fields(strings.ReplaceAll(text, ",", " "))
	at := len(words)
	for i, w := range words {
		if _, ok := weekdays(w); ok && i > 0 {
			at = i
			break
		}
	}
	free, err := FreeHours(strings.Join(words[at:], " "))
	switch {
	case err != nil:
		return book.PersonDescribed{}, err
	case at == 0:
		return book.PersonDescribed{}, fmt.Errorf("a person needs a name, write it like Ida")
	}
	for i, w := range words[:at] {
		if isHours(w) || i == 0 && !hasLetter(w) {
			return book.PersonDescribed{}, fmt.Errorf("%q is no name: write a name, then the weekdays with their hours, like Ida Mon-Fri 18:30-20:30", w)
		}
	}
	return book.PersonDescribed{Person: id, Name: strings.Join(words[:at], " "), Free: free}, nil
}

// isHours tells whether a word of figures is meant as hours of a day, like "-9" and
// "18:00-20:00".
func isHours(word string) bool {
	return !hasLetter(word) && strings.ContainsAny(word, ":-–0123456789")
}

func hasLetter(word string) bool { return strings.ContainsFunc(word, unicode.IsLetter) }

// FreeHours reads the hours in which somebody is free, by weekday: "Mon-Fri
// 18:30-20:30 Sat and Sun 8-18". No text is no hours told.
func FreeHours(text string) (free [7]book.FreeHours, err error) {
	var days []time.Weekday
	said := true // the hours of these days
	for word := range strings.FieldsSeq(strings.ReplaceAll(text, ",", " ")) {
		more, ok := weekdays(word)
		switch {
		case strings.EqualFold(word, "and"):
			continue
		case ok && said:
			days, said = more, false
			continue
		case ok:
			days = append(days, more...)
			continue
		}
		hours, err := Hours(word)
		if len(days) == 0 || err != nil {
			return free, fmt.Errorf("free hours %q: write them like Mon-Fri 18:30-20:30 or Sat and Sun 9-18", word)
		}
		for _, d := range days {
			free[d] = hours
		}
		said = true
	}
	if !said {
		return free, fmt.Errorf("free hours of %s: add them, like %[1]s 18:30-20:30", days[len(days)-1].String()[:3])
	}
	return free, nil
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

// Hours reads the free hours of a day: "18:30-20:30" and "9-18".
func Hours(text string) (h book.FreeHours, err error) {
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
	if text == "24:00" || text == "24" {
		return 24 * 60, nil
	}
	if !strings.Contains(text, ":") {
		text += ":00"
	}
	t, err := time.Parse("15:04", text)
	return t.Hour()*60 + t.Minute(), err
}
