package calendar_test

import (
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/calendar"
)

func day(t *testing.T, s string) calendar.Day {
	t.Helper()
	d, err := calendar.ParseDay(s)
	if err != nil {
		t.Fatal(err)
	}
	return d
}

// ISO 8601 gives 2027-01-04 as the Monday of the year's first week.
func TestWeekStart(t *testing.T) {
	for _, c := range []struct {
		day   string
		first time.Weekday
		want  string
	}{
		{"2027-01-04", time.Monday, "2027-01-04"},
		{"2027-01-10", time.Monday, "2027-01-04"},
		{"2027-01-03", time.Monday, "2026-12-28"},
		{"2027-01-03", time.Sunday, "2027-01-03"},
		{"2027-01-09", time.Sunday, "2027-01-03"},
		{"2027-01-08", time.Saturday, "2027-01-02"},
		{"1969-12-31", time.Monday, "1969-12-29"},
	} {
		if got := day(t, c.day).WeekStart(c.first).String(); got != c.want {
			t.Errorf("the week of %s from %v starts on %s, want %s", c.day, c.first, got, c.want)
		}
	}
}

func TestAddMonths(t *testing.T) {
	for _, c := range []struct {
		day  string
		n    int
		want string
	}{
		{"2027-05-15", 1, "2027-06-15"},
		{"2027-05-31", 1, "2027-06-30"},
		{"2027-03-31", -1, "2027-02-28"},
		{"2028-01-31", 1, "2028-02-29"},
		{"2027-12-15", 1, "2028-01-15"},
		{"2027-01-15", -1, "2026-12-15"},
		{"2027-05-31", 0, "2027-05-31"},
		{"2028-02-29", 12, "2029-02-28"},
	} {
		if got := day(t, c.day).AddMonths(c.n).String(); got != c.want {
			t.Errorf("%s and %d months is %s, want %s", c.day, c.n, got, c.want)
		}
	}
}

// A week begins on the weekday asked for, with the day itself or one of the six
// before it.
func TestWeeksBeginAsAsked(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := calendar.Day(rapid.Int32Range(-40_000, 40_000).Draw(t, "day"))
		first := time.Weekday(rapid.IntRange(0, 6).Draw(t, "first"))
		if start := d.WeekStart(first); start.Weekday() != first || start > d || d-start > 6 {
			t.Fatalf("the week of %v begins on %v, asked for %v", d, start, first)
		}
	})
}

// TestMostDays: no day of any year lies beyond the most days of its month, and each
// month reaches them.
func TestMostDays(t *testing.T) {
	reached := map[time.Month]bool{}
	for d := day(t, "2026-01-01"); d <= day(t, "2029-12-31"); d++ {
		_, m, n := d.Date()
		if n > calendar.MostDays(m) {
			t.Fatalf("%s lies beyond the %d days of %s", d, calendar.MostDays(m), m)
		}
		reached[m] = reached[m] || n == calendar.MostDays(m)
	}
	for m := time.January; m <= time.December; m++ {
		if !reached[m] {
			t.Errorf("%s never has %d days", m, calendar.MostDays(m))
		}
	}
	if calendar.MostDays(0) != 0 || calendar.MostDays(13) != 0 {
		t.Error("what is no month has days")
	}
}
