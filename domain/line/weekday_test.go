package line_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

// A day is read with its weekday and its year too, and with an hour behind it; a weekday that is
// not that day's is refused, with the day that it was read as.
func TestADayWithItsWeekdayAndYear(t *testing.T) {
	today := calendar.Date(2028, time.April, 2)
	for text, want := range map[string]string{
		"Sun 20 May 2029": "2029-05-20", "20 May 2029": "2029-05-20", "May 20 2029": "2029-05-20", "20.5.2029": "2029-05-20",
		"Sat 20 May": "2028-05-20", "saturday 20 may": "2028-05-20", "Sat 20.5.": "2028-05-20", "Mon 31 Jan 2028": "2028-01-31",
		"Tue 29 Feb 2028": "2028-02-29",
	} {
		if got, err := line.ParseComing(text, today); err != nil || got.String() != want {
			t.Errorf("%q is read as %s, %v, not %s", text, got, err, want)
		}
	}
	for text, want := range map[string]string{"Sun 20 May 2029 18:00": "2029-05-20", "Thu 20 May 18:00": "2027-05-20", "20 May 2029 18:00": "2029-05-20", "Sun 18:00": "2028-04-02"} {
		if w, err := line.ParseWhen(text, today, time.UTC); err != nil || w.Day.String() != want || w.At.Hour() != 18 {
			t.Errorf("%q is read as %v, %v", text, w, err)
		}
	}
	for text, want := range map[string]string{
		"Sun 20 May":      "20 May 2028 is a Saturday",
		"Mon 20 May 2029": "20 May 2029 is a Sunday",
		"Thu 29 Feb 2029": "February 2029 has 28 days",
		"20 May 1029":     "1029",
		"20 May 029":      "write it like",
	} {
		if got, err := line.ParseComing(text, today); err == nil || !strings.Contains(err.Error(), want) {
			t.Errorf("%q is read as %s, %v; want %q", text, got, err, want)
		}
	}
}
