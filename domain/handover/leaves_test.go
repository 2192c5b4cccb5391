package handover

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// An order whose day is past was to be fetched on its own day, and not on the one on which it is read.
func TestWhenQueensLeave(t *testing.T) {
	by := calendar.Date(2027, time.December, 30)
	for _, c := range []struct {
		today calendar.Day
		sent  bool
		want  string
	}{
		{by - 5, false, "to be fetched Thu 30 Dec"},
		{by + 3, false, "was to be fetched Thu 30 Dec 2027"},
		{by - 5, true, "to be sent Tue 28 Dec, there Thu 30 Dec"},
		{by + 3, true, "was to be sent Tue 28 Dec 2027, there Thu 30 Dec 2027"},
	} {
		o := Served{Order: &book.Order{OrderTaken: book.OrderTaken{By: by, Sent: c.sent}}}
		o.On, o.Arrive = max(by, c.today), max(by, c.today)
		if c.sent {
			o.On, o.Arrive = max(by-2, c.today), max(by, c.today+2)
		}
		if got := o.LeavesSaid(c.today); got != c.want {
			t.Errorf("on %s: %q, want %q", c.today, got, c.want)
		}
	}
}
