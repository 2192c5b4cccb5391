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

func TestMonthHasItsWeeks(t *testing.T) {
	for _, c := range []struct {
		day   string
		first time.Weekday
		weeks int
		start string
	}{
		{"2027-05-15", time.Monday, 6, "2027-04-26"},
		{"2027-05-15", time.Sunday, 6, "2027-04-25"},
		{"2027-02-10", time.Monday, 4, "2027-02-01"}, // 28 days from a Monday
		{"2027-02-10", time.Sunday, 5, "2027-01-31"},
	} {
		m := calendar.MonthOf(day(t, c.day), c.first)
		if len(m.Weeks) != c.weeks || m.Weeks[0][0].String() != c.start {
			t.Errorf("the month of %s from %v has %d weeks from %v, want %d from %s", c.day, c.first, len(m.Weeks), m.Weeks[0][0], c.weeks, c.start)
		}
	}
}

// A month's weeks follow each other day by day, hold every day of it, begin
// on the day asked for, and none lies wholly outside.
func TestEveryMonthIsWhole(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := calendar.Day(rapid.Int32Range(-40_000, 40_000).Draw(t, "day"))
		first := time.Weekday(rapid.IntRange(0, 6).Draw(t, "first"))
		m := calendar.MonthOf(d, first)
		held, next := 0, m.Weeks[0][0]
		for _, week := range m.Weeks {
			if week[0].Weekday() != first || week[0] != week[6].WeekStart(first) {
				t.Fatalf("a week begins on %v, want %v", week[0].Weekday(), first)
			}
			inside := 0
			for _, day := range week {
				if day != next {
					t.Fatalf("%v does not follow", day)
				}
				next++
				if m.Holds(day) {
					inside++
				}
			}
			if inside == 0 {
				t.Fatalf("the week of %v lies outside %v %d", week[0], m.Month, m.Year)
			}
			held += inside
		}
		if _, _, last := calendar.Date(m.Year, m.Month+1, 0).Date(); held != last || !m.Holds(d) {
			t.Fatalf("%v %d holds %d days, want %d", m.Month, m.Year, held, last)
		}
	})
}
