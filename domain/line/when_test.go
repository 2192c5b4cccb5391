package line_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

func in(t testing.TB, zone string) *time.Location {
	t.Helper()
	z, err := time.LoadLocation(zone)
	if err != nil {
		t.Fatal(err)
	}
	return z
}

func TestParseWhen(t *testing.T) {
	berlin := in(t, "Europe/Berlin")
	now := time.Date(2027, time.May, 15, 20, 0, 0, 0, berlin) // a Saturday
	today := calendar.DayOf(now, berlin)
	for _, c := range []struct{ text, moment, instant string }{
		{"2027-05-10", "Mon 10 May", "Mon 10 May 23:59"},
		{"today", "Sat 15 May 20:00", "Sat 15 May 20:00"},
		{"Today", "Sat 15 May 20:00", "Sat 15 May 20:00"},
		{"yesterday 18:00", "Fri 14 May 18:00", "Fri 14 May 18:00"},
		{"yesterday evening", "Fri 14 May, evening", "Fri 14 May 19:00"},
		{"3 days ago", "Wed 12 May", "Wed 12 May 23:59"},
		{"3 Days ago 18:00", "Wed 12 May 18:00", "Wed 12 May 18:00"},
		{"1 day ago evening", "Fri 14 May, evening", "Fri 14 May 19:00"},
		{"a week ago 7:30", "Sat 8 May 07:30", "Sat 8 May 07:30"},
		{"2 weeks ago", "Sat 1 May", "Sat 1 May 23:59"},
		{"fri", "Fri 14 May", "Fri 14 May 23:59"},
		{"sat", "Sat 15 May 20:00", "Sat 15 May 20:00"},
		{"sunday am", "Sun 9 May, morning", "Sun 9 May 09:00"},
		{"Tue 7:30", "Tue 11 May 07:30", "Tue 11 May 07:30"},
		{"THU Night", "Thu 13 May, night", "Thu 13 May 23:00"},
		{"+3", "Tue 18 May", "Tue 18 May 12:00"},
		{"-1", "Fri 14 May", "Fri 14 May 23:59"},
		{"-9 18:00", "Thu 6 May 18:00", "Thu 6 May 18:00"},
		{"tomorrow noon", "Sun 16 May, midday", "Sun 16 May 13:00"},
		{"2027-05-05T18:00", "Wed 5 May 18:00", "Wed 5 May 18:00"},
		{"29 Apr 18:00", "Thu 29 Apr 18:00", "Thu 29 Apr 18:00"},
		{"29 April", "Thu 29 Apr", "Thu 29 Apr 23:59"},
		{"apr. 29  evening", "Thu 29 Apr, evening", "Thu 29 Apr 19:00"},
		{"29.4. 18:00", "Thu 29 Apr 18:00", "Thu 29 Apr 18:00"},
		{"1.05", "Sat 1 May", "Sat 1 May 23:59"},
		{"15 may", "Sat 15 May 20:00", "Sat 15 May 20:00"},
		{"16 May 18:00", "Sat 16 May 18:00", "Sat 16 May 18:00"}, // of the year before
		{"29 Feb", "Thu 29 Feb", "Thu 29 Feb 23:59"},             // of 2024
		{"25 Oct 02:30 second", "Sun 25 Oct 02:30", "Sun 25 Oct 02:30"},
		{"2026-10-25 02:30 second", "Sun 25 Oct 02:30", "Sun 25 Oct 02:30"}, // an hour that comes twice
	} {
		w, err := line.ParseWhen(c.text, today, berlin)
		if err != nil {
			t.Errorf("ParseWhen(%q): %v", c.text, err)
			continue
		}
		if got := w.Moment(now, berlin).In(berlin); got != c.moment {
			t.Errorf("moment of %q = %s, want %s", c.text, got, c.moment)
		}
		if got := calendar.Instantly(w.Instant(now, berlin)).In(berlin); got != c.instant {
			t.Errorf("instant of %q = %s, want %s", c.text, got, c.instant)
		}
	}
}

func TestParseWhenRefuses(t *testing.T) {
	berlin := in(t, "Europe/Berlin")
	today := calendar.Date(2027, time.May, 15)
	for text, want := range map[string]string{
		"2027-03-28 02:30": "time 02:30 on Sun 28 Mar: the clocks skip it, write 03:30 where they go on",
		"2026-10-25 02:30": `time 02:30 on Sun 25 Oct: it comes twice, write "02:30 first" or "02:30 second"`,
		"2027-02-29":       `day "2027-02-29": February 2027 has 28 days`,
		"1027-05-15":       `day "1027-05-15" in the year 1027: write a year from 1900 to 2200`,
		"soon":             `day "soon": write it like 2027-05-15, 29 Apr, today, yesterday, +3 or sat`,
		"4/5":              `day "4/5": a slash leaves open which is the month, write it as a word, like 4 May`,
		"29/4 18:00":       `day "29/4": a slash leaves open which is the month, write it as a word, like 4 May`,
		"30 Feb":           `day "30 feb": February has 29 days`,
		"31.4.":            `day "31.4.": April has 30 days`,
		"12.13.":           `day "12.13.": there is no month 13, write it like 29 Apr or 2027-05-15`,
		"28 Mar 02:30":     "time 02:30 on Sun 28 Mar: the clocks skip it, write 03:30 where they go on",
		"fri soon":         `time "soon": write it like 18:00, or morning, noon, afternoon, evening, night`,
	} {
		if _, err := line.ParseWhen(text, today, berlin); err == nil || err.Error() != want {
			t.Errorf("ParseWhen(%q): %v, want %s", text, err, want)
		}
	}
	for _, text := range []string{"", "someday", "fr", "2027-02-30", "today 25:00", "5/5/2027", "T", "+", "+99999999999", "0 May", "May", "5 Ma", "5.", "Apr Apr", "0 days ago", "-3 days ago", "three days ago", "3 days", "days ago", "3 months ago"} {
		if _, err := line.ParseWhen(text, today, berlin); err == nil {
			t.Errorf("ParseWhen(%q): no error", text)
		}
	}
}

// TestParseNext: the name of a weekday is the coming one, and a time gone by is
// no time to come again.
func TestParseNext(t *testing.T) {
	berlin := in(t, "Europe/Berlin")
	now := time.Date(2027, time.May, 15, 20, 0, 0, 0, berlin) // a Saturday
	for text, want := range map[string]string{
		"mon 18:00": "Mon 17 May 18:00", "sat 21:00": "Sat 15 May 21:00", "Fri evening": "Fri 21 May 19:00",
		"tomorrow 18:00": "Sun 16 May 18:00", "+9 6:00": "Mon 24 May 06:00", "2027-06-01T18:00": "Tue 1 Jun 18:00",
		"1 Jun 18:00": "Tue 1 Jun 18:00", "12.5. 18:00": "Fri 12 May 18:00", "15 May 21:00": "Sat 15 May 21:00", "29 Feb noon": "Tue 29 Feb 13:00",
	} {
		at, err := line.ParseNext(text, now, berlin)
		if got := calendar.Instantly(at).In(berlin); err != nil || got != want {
			t.Errorf("ParseNext(%q) = %s, %v, want %s", text, got, err, want)
		}
	}
	for text, want := range map[string]string{
		"tomorrow":         `"tomorrow": say the hour as well, like "2027-05-16 18:00"`,
		"today 18:00":      `"today 18:00" is not after Sat 15 May 20:00: say when you come again`,
		"yesterday 18:00":  `"yesterday 18:00" is not after Sat 15 May 20:00: say when you come again`,
		"2026-05-01 18:00": `"2026-05-01 18:00" is not after Sat 15 May 20:00: say when you come again`,
		"soon":             `day "soon": write it like 2027-05-15, 29 Apr, today, yesterday, +3 or sat`,
	} {
		if _, err := line.ParseNext(text, now, berlin); err == nil || err.Error() != want {
			t.Errorf("ParseNext(%q): %v, want %s", text, err, want)
		}
	}
}

// What is read as a time lies on the day that was read with it, and what is to
// come lies ahead.
func FuzzParseWhen(f *testing.F) {
	for _, s := range []string{"2027-05-15 18:00", "sat evening", "+3", "-9 18:00", "2026-10-25 02:30 second", "2027-05-05T18:00", "T", "-", "tomorrow noon", "29 Apr 18:00", "April 29", "29.4. 18:00", "29 Feb", "4/5", "31.6.", "3 days ago", "a week ago 18:00", "0 days ago", "99 weeks ago evening"} {
		f.Add(s)
	}
	zone := in(f, "Europe/Berlin")
	now := time.Date(2027, time.May, 15, 20, 0, 0, 0, zone)
	today := calendar.DayOf(now, zone)
	f.Fuzz(func(t *testing.T, text string) {
		if w, err := line.ParseWhen(text, today, zone); err == nil && !w.At.IsZero() && calendar.DayOf(w.At, zone) != w.Day {
			t.Errorf("ParseWhen(%q) = %v on %v", text, w.At, w.Day)
		}
		if at, err := line.ParseNext(text, now, zone); err == nil && !at.After(now) {
			t.Errorf("ParseNext(%q) = %v, which is gone by", text, at)
		}
		if d, err := line.ParseDay(text, today); err == nil && len(text) < len("2027-05-15") && !strings.ContainsAny(text, "-+tT") && d > today {
			t.Errorf("ParseDay(%q) = %v, which is to come", text, d)
		}
	})
}
