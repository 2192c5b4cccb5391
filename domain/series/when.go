package series

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/calendar"
)

// wall is a time as a row tells it: a day, with a time of day unless it is of
// days, and with an offset where it has one.
type wall struct {
	day          calendar.Day
	hour, minute int
	timed        bool
	instant      time.Time // zero where it has no offset
}

// dayForms are how a day may be written without doubt; days like 5/6/2027 could be
// either and are refused.
var dayForms = []string{"2006-01-02", "2.1.2006", "2006/01/02", "20060102", "2 Jan 2006", "2006.01.02"}

// readTime reads a day with or without a time: "2027-05-15T14:00",
// "15.5.2027 14:00", "2027-05-15T12:00Z", or the seconds since 1970.
func readTime(text, clock string) (w wall, err error) {
	text = strings.TrimSpace(text)
	if seconds, err := strconv.ParseInt(text, 10, 64); err == nil && len(text) >= 9 && clock == "" {
		const last = 1 << 33 // in the year 2242
		if seconds < 0 || seconds > last {
			return wall{}, fmt.Errorf("%q: a time far off, write it like 2027-05-15 14:00", text)
		}
		return wall{timed: true, instant: time.Unix(seconds, 0)}, nil
	}
	if at, err := time.Parse(time.RFC3339, withSeconds(text)); err == nil && clock == "" {
		return wall{timed: true, instant: at}, nil
	}
	day, rest := text, clock
	if i := strings.LastIndexAny(text, "T "); clock == "" && i > 0 && strings.Contains(text[i:], ":") {
		day, rest = text[:i], text[i+1:]
	}
	if w.day, err = readDay(day); err != nil || rest == "" {
		return w, err
	}
	w.timed = true
	w.hour, w.minute, err = readClock(rest)
	if w.hour == 24 {
		w.day, w.hour = w.day+1, 0
	}
	return w, err
}

// withSeconds puts in the seconds that RFC 3339 wants.
func withSeconds(text string) string {
	const upToMinutes = len("2027-05-15T14:00")
	if len(text) > upToMinutes && text[upToMinutes] != ':' {
		text = text[:upToMinutes] + ":00" + text[upToMinutes:]
	}
	return strings.Replace(text, " ", "T", 1)
}

func readDay(text string) (calendar.Day, error) {
	text = strings.TrimSpace(text)
	for _, form := range dayForms {
		if t, err := time.Parse(form, text); err == nil {
			return calendar.DayOf(t, time.UTC), nil
		}
	}
	if strings.Count(text, "/") == 2 {
		return 0, fmt.Errorf("%q: nobody can tell whether day or month stands first, write days like 2027-05-15", text)
	}
	return 0, fmt.Errorf("%q is no day, write it like 2027-05-15 or 15.5.2027", text)
}

var errClock = errors.New("write the time like 14:00 or 14")

// readClock reads a time of day: "14:00", "14:00:00", "14", "1400", up to 24:00.
func readClock(text string) (hour, minute int, err error) {
	text = strings.TrimSpace(text)
	h, rest, parted := strings.Cut(text, ":")
	if !parted && len(text) == 4 {
		h, rest, parted = text[:2], text[2:], true
	}
	m := "0"
	if parted {
		m, _, _ = strings.Cut(rest, ":")
	}
	hour, err1 := strconv.Atoi(h)
	minute, err2 := strconv.Atoi(m)
	if err1 != nil || err2 != nil || hour < 0 || minute < 0 || minute > 59 || hour > 24 || hour == 24 && minute > 0 {
		return 0, 0, fmt.Errorf("%q is no time of day: %w", text, errClock)
	}
	return hour, minute, nil
}
