package yard_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/yard"
)

// TestSunDay: in winter the sun is that of the next mating flights, on both halves of
// the Earth.
func TestSunDay(t *testing.T) {
	var p booktest.Pen
	bare := p.View("2026-11-26 09:00")
	p.At("2026-11-20 09:00").Write(book.BatchPlanned{Batch: booktest.Batch("1"), Day: day("2027-05-01"), Larvae: 30})
	planned := p.View("2026-11-26 09:00")
	for _, c := range []struct {
		v        *book.View
		lat      float64
		on, want string
	}{
		{bare, 52, "2027-05-20", "2027-05-20"},
		{bare, 52, "2026-11-26", "2027-06-15"},
		{bare, 0, "2027-02-01", "2027-06-15"},
		{bare, -35, "2026-11-26", "2026-11-26"},
		{bare, -35, "2027-06-01", "2027-12-15"},
		{planned, 52, "2026-11-26", "2027-05-19"},
		{planned, -35, "2027-04-20", "2027-12-15"}, // its flights would be in autumn
	} {
		y := &book.Yard{}
		y.Lat = c.lat
		if got := yard.SunDay(c.v, y, day(c.on)); got != day(c.want) {
			t.Errorf("latitude %g on %s: %s, want %s", c.lat, c.on, got, c.want)
		}
	}
}

func day(text string) (d calendar.Day) {
	if err := d.UnmarshalText([]byte(text)); err != nil {
		panic(err)
	}
	return d
}
