package calendar_test

import (
	"testing"
	"time"
	_ "time/tzdata"

	"pgregory.net/rapid"

	"lidmark/domain/calendar"
)

func zone(t *testing.T, name string) *time.Location {
	t.Helper()
	z, err := time.LoadLocation(name)
	if err != nil {
		t.Fatal(err)
	}
	return z
}

func TestDayPrintsAndReadsBack(t *testing.T) {
	for _, want := range []string{"2028-02-29", "2027-12-31", "1969-12-31", "2100-03-01"} {
		d, err := calendar.ParseDay(want)
		if err != nil || d.String() != want {
			t.Errorf("ParseDay(%q) = %v, %v", want, d, err)
		}
	}
	for _, bad := range []string{"2027-02-29", "15.5.2027", "", "today"} {
		if d, err := calendar.ParseDay(bad); err == nil {
			t.Errorf("ParseDay(%q) = %v, want an error", bad, d)
		}
	}
}

// A night when the clocks change has 23 or 25 hours; Berlin 2027, by the rule
// of the last Sundays of March and October (Directive 2000/84/EC).
func TestDaysWhenTheClocksChange(t *testing.T) {
	berlin := zone(t, "Europe/Berlin")
	for day, hours := range map[string]float64{"2027-03-28": 23, "2027-10-31": 25, "2027-05-15": 24} {
		d, _ := calendar.ParseDay(day)
		if got := (d + 1).Start(berlin).Sub(d.Start(berlin)).Hours(); got != hours {
			t.Errorf("%s has %v h, want %v", day, got, hours)
		}
	}
}

// The hours that the clocks skip and those that come twice, by the same rule;
// Lord Howe moves its clocks by half an hour (tz database, Australia/Lord_Howe).
func TestWallTimes(t *testing.T) {
	for _, c := range []struct {
		zone, day    string
		hour, minute int
		times        int
		apart        time.Duration
	}{
		{"Europe/Berlin", "2027-03-28", 2, 30, 0, 0},
		{"Europe/Berlin", "2027-03-28", 3, 0, 1, 0},
		{"Europe/Berlin", "2027-10-31", 2, 30, 2, time.Hour},
		{"Europe/Berlin", "2027-10-31", 3, 0, 1, 0},
		{"America/New_York", "2027-11-07", 1, 59, 2, time.Hour},
		{"Australia/Lord_Howe", "2027-04-04", 1, 45, 2, 30 * time.Minute},
		{"UTC", "2027-10-31", 2, 30, 1, 0},
	} {
		d, _ := calendar.ParseDay(c.day)
		times, at := d.Wall(c.hour, c.minute, zone(t, c.zone))
		if apart := at(true).Sub(at(false)); times != c.times || apart != c.apart {
			t.Errorf("%02d:%02d on %s in %s comes %d times, %v apart, want %d, %v", c.hour, c.minute, c.day, c.zone, times, apart, c.times, c.apart)
		}
	}
}

func TestDaysThatAMonthDoesNotHave(t *testing.T) {
	for text, want := range map[string]string{
		"2027-02-29": `day "2027-02-29": February 2027 has 28 days`,
		"2028-02-30": `day "2028-02-30": February 2028 has 29 days`,
		"2027-04-00": `day "2027-04-00": April 2027 has 30 days`,
		"2027-13-01": `day "2027-13-01": write it as year-month-day, like 2027-05-15`,
		"29":         `day "29": write it as year-month-day, like 2027-05-15`,
	} {
		if _, err := calendar.ParseDay(text); err == nil || err.Error() != want {
			t.Errorf("ParseDay(%q) = %v, want %s", text, err, want)
		}
	}
}

func TestADayBelongsToItsZone(t *testing.T) {
	at := time.Date(2027, 5, 15, 22, 30, 0, 0, time.UTC)
	if got := calendar.DayOf(at, zone(t, "Pacific/Auckland")).String(); got != "2027-05-16" {
		t.Errorf("in Auckland it is %s, want the 16th", got)
	}
	if got := calendar.DayOf(at, nil).String(); got != "2027-05-15" {
		t.Errorf("in UTC it is %s, want the 15th", got)
	}
}

// Where the clocks skip midnight a day starts at the first instant there is, and a
// skipped time is an hour on, whichever side of the gap the library takes.
func TestADayWithoutMidnight(t *testing.T) {
	for _, c := range []struct{ zone, day, start string }{
		{"America/Sao_Paulo", "1995-10-15", "1995-10-15T01:00:00-02:00"},
		{"America/Sao_Paulo", "2017-10-15", "2017-10-15T01:00:00-02:00"},
		{"Europe/Berlin", "2027-03-28", "2027-03-28T00:00:00+01:00"},
	} {
		d, err := calendar.ParseDay(c.day)
		if got := d.Start(zone(t, c.zone)).Format(time.RFC3339); err != nil || got != c.start {
			t.Errorf("%s in %s starts %s, want %s", c.day, c.zone, got, c.start)
		}
	}
	if got := calendar.Date(2027, 3, 28).At(2, 30, zone(t, "Europe/Berlin")).Format("15:04"); got != "03:30" {
		t.Errorf("02:30 of a night that skips it is %s, want 03:30", got)
	}
}

func TestEveryDayStartsOnItself(t *testing.T) {
	zones := []*time.Location{zone(t, "Europe/Berlin"), zone(t, "America/Sao_Paulo"), zone(t, "Pacific/Auckland")}
	rapid.Check(t, func(t *rapid.T) {
		d := calendar.Day(rapid.Int32Range(1, 40000).Draw(t, "day"))
		z := rapid.SampledFrom(zones).Draw(t, "zone")
		if got := calendar.DayOf(d.Start(z), z); got != d {
			t.Fatalf("the start of %v in %v is on %v", d, z, got)
		}
		for p := calendar.WholeDay; p <= calendar.Night; p++ {
			if got := calendar.On(d, p, z).Day(z); got != d {
				t.Fatalf("%v of %v falls on %v", p, d, got)
			}
		}
	})
}

func TestMomentInWords(t *testing.T) {
	berlin := zone(t, "Europe/Berlin")
	d, _ := calendar.ParseDay("2027-05-15")
	for want, m := range map[string]calendar.Moment{
		"Sat 15 May 18:00":   calendar.Instantly(d.At(18, 0, berlin)),
		"Sat 15 May, midday": calendar.On(d, calendar.Midday, berlin),
		"Sat 15 May":         calendar.On(d, calendar.WholeDay, berlin),
	} {
		if got := m.In(berlin); got != want {
			t.Errorf("In = %q, want %q", got, want)
		}
	}
}

// A day of another year is told with its year, a moment too.
func TestDaysOfAnotherYearHaveTheirYear(t *testing.T) {
	berlin := zone(t, "Europe/Berlin")
	read := func(s string) calendar.Day {
		d, err := calendar.ParseDay(s)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	d := read("2027-05-15")
	for today, want := range map[string]string{"2027-01-01": "Sat 15 May", "2027-12-31": "Sat 15 May", "2028-01-01": "Sat 15 May 2027", "2026-12-31": "Sat 15 May 2027"} {
		if got := d.ShortFrom(read(today)); got != want {
			t.Errorf("from %s: %q, want %q", today, got, want)
		}
		if got := calendar.On(d, calendar.Midday, berlin).InFrom(read(today), berlin); got != want+", midday" {
			t.Errorf("a moment from %s: %q", today, got)
		}
	}
	if got := calendar.Day(0).ShortFrom(d); got != "" {
		t.Errorf("no day: %q", got)
	}
}

func TestPartsReadBack(t *testing.T) {
	for p := calendar.Exact; p <= calendar.Night; p++ {
		if got, err := calendar.ParsePart(p.String()); err != nil || got != p {
			t.Errorf("ParsePart(%q) = %v, %v", p.String(), got, err)
		}
	}
	if _, err := calendar.ParsePart("teatime"); err == nil {
		t.Error("teatime read as a part of the day")
	}
}
