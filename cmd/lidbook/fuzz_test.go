package main

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// What is typed as a day, free hours, cages or weather is read or refused, and
// what is read makes sense.
func FuzzTyped(f *testing.F) {
	for _, s := range []string{"2027-05-15 18:00", "sat evening", "+3", "Ida Mon-Fri 18:30-20:30", "1-5,7", "++±−−0h", "A1-A12, B3", "T", "-", "Sat-Mon 0:00-24:00"} {
		f.Add(s)
	}
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		f.Fatal(err)
	}
	now := time.Date(2027, time.May, 15, 20, 0, 0, 0, zone)
	today := calendar.DayOf(now, zone)
	f.Fuzz(func(t *testing.T, text string) {
		if labels, err := cages(text); err == nil && len(labels) == 0 {
			t.Errorf("cages(%q): none and no error", text)
		}
		facts, err := weather(text, today, today, book.YardID{1})
		for i, fact := range facts {
			if w := fact.(book.WeatherSeen); err == nil && (w.Sign == 0 || w.Day != today+calendar.Day(i)) {
				t.Errorf("weather(%q) = %+v", text, w)
			}
		}
		_, _ = parsePoint(text)
	})
}
