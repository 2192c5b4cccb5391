package calendar

import (
	"fmt"
	"time"
)

// Day is a civil day, counted from 1 January 1970. The zero Day means "no
// day"; that one day of 1970 cannot be written, and no book reaches back to it.
type Day int32

const secondsADay = 24 * 60 * 60

// DayOf is the civil day of instant t in zone. A nil zone is UTC.
func DayOf(t time.Time, zone *time.Location) Day {
	y, m, d := t.In(orUTC(zone)).Date()
	return Date(y, m, d)
}

// Date is the day of a year, month and day of the month; values outside their
// ranges are carried over as in [time.Date].
func Date(year int, month time.Month, day int) Day {
	s := time.Date(year, month, day, 0, 0, 0, 0, time.UTC).Unix()
	return Day(floorDiv(s, secondsADay))
}

// ParseDay reads a day as ISO 8601 writes it: 2027-05-15. A day that its month
// does not have is an error that tells how many it has.
func ParseDay(s string) (Day, error) {
	t, err := time.Parse(time.DateOnly, s)
	if err == nil {
		return DayOf(t, time.UTC), nil
	}
	if month, isMonth := time.Parse("2006-01", s[:max(0, len(s)-len("-15"))]); isMonth == nil && endsInDay(s) {
		last := Date(month.Year(), month.Month()+1, 0)
		_, _, days := last.Date()
		return 0, &NoSuchDayError{Typed: s, Month: month.Format("January 2006"), Days: days}
	}
	return 0, fmt.Errorf("day %q: write it as year-month-day, like 2027-05-15", s)
}

func endsInDay(s string) bool {
	n := len(s)
	return n > 3 && s[n-3] == '-' && isDigit(s[n-2]) && isDigit(s[n-1])
}

func isDigit(b byte) bool { return '0' <= b && b <= '9' }

// NoSuchDayError is a day that its month does not have.
type NoSuchDayError struct {
	Typed string
	Month string // in words, like "February 2027"
	Days  int    // that it has
}

// Error tells how many days the month has.
func (e *NoSuchDayError) Error() string {
	return fmt.Sprintf("day %q: %s has %d days", e.Typed, e.Month, e.Days)
}

// IsZero tells whether d is no day.
func (d Day) IsZero() bool { return d == 0 }

// Date is the day's year, month and day of the month.
func (d Day) Date() (year int, month time.Month, day int) { return d.utc().Date() }

// Weekday is the day's day of the week.
func (d Day) Weekday() time.Weekday { return d.utc().Weekday() }

// Start is the first instant of the day in zone. Where the clocks skip
// midnight it is the first instant that exists.
func (d Day) Start(zone *time.Location) time.Time { return d.At(0, 0, zone) }

// At is the instant of a wall clock time on the day in zone. A time that the
// clocks skip is taken an hour on; one that comes twice is taken as
// [time.Date] takes it.
func (d Day) At(hour, minute int, zone *time.Location) time.Time {
	y, m, day := d.Date()
	t := time.Date(y, m, day, hour, minute, 0, 0, orUTC(zone))
	asked := time.Date(y, m, day, hour, minute, 0, 0, time.UTC)
	_, offset := t.Zone()
	if skipped := asked.Sub(t.Add(time.Duration(offset) * time.Second)); skipped > 0 {
		return t.Add(skipped) // [time.Date] took the hour before the gap
	}
	return t
}

// Wall tells how often the clocks of zone show a wall clock time on the day:
// once, mostly; never when they skip it, twice when they go back over it. At is
// then the second of the two where later is set, else the first.
func (d Day) Wall(hour, minute int, zone *time.Location) (times int, at func(later bool) time.Time) {
	t := d.At(hour, minute, zone)
	first, second := t, t
	for _, shift := range [...]time.Duration{-2 * time.Hour, -time.Hour, -time.Hour / 2, time.Hour / 2, time.Hour, 2 * time.Hour} {
		if u := t.Add(shift); shows(u, d, hour, minute) {
			first, second = minTime(first, u), maxTime(second, u)
		}
	}
	switch {
	case !shows(t, d, hour, minute):
		times = 0
	case first.Equal(second):
		times = 1
	default:
		times = 2
	}
	return times, func(later bool) time.Time {
		if later {
			return second
		}
		return first
	}
}

func shows(t time.Time, d Day, hour, minute int) bool {
	return t.Hour() == hour && t.Minute() == minute && DayOf(t, t.Location()) == d
}

func minTime(a, b time.Time) time.Time {
	if b.Before(a) {
		return b
	}
	return a
}

func maxTime(a, b time.Time) time.Time {
	if b.After(a) {
		return b
	}
	return a
}

// Sub is the number of days from e to d; negative when d is earlier.
func (d Day) Sub(e Day) int { return int(d) - int(e) }

// String is the day as ISO 8601 writes it, or "" for no day.
func (d Day) String() string {
	if d.IsZero() {
		return ""
	}
	return d.utc().Format(time.DateOnly)
}

// Short is the day as the window writes it: "Sat 15 May".
func (d Day) Short() string {
	if d.IsZero() {
		return ""
	}
	return d.utc().Format("Mon 2 Jan")
}

// ShortFrom is the day as it is written on another: "Sat 15 May", with its year where that
// is not the year of today.
func (d Day) ShortFrom(today Day) string {
	year, _, _ := d.Date()
	if now, _, _ := today.Date(); year == now || d.IsZero() {
		return d.Short()
	}
	return d.utc().Format("Mon 2 Jan 2006")
}

// MarshalText writes the day as ISO 8601.
func (d Day) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// UnmarshalText reads what MarshalText writes.
func (d *Day) UnmarshalText(b []byte) (err error) {
	if len(b) == 0 {
		*d = 0
		return nil
	}
	*d, err = ParseDay(string(b))
	return err
}

func (d Day) utc() time.Time { return time.Unix(int64(d)*secondsADay, 0).UTC() }

func orUTC(zone *time.Location) *time.Location {
	if zone == nil {
		return time.UTC
	}
	return zone
}

func floorDiv(a, b int64) int64 {
	q := a / b
	if a%b < 0 {
		q--
	}
	return q
}
