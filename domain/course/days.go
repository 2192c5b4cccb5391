package course

import (
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// asked is one question: a nuc, the view's instant in the nuc's yard, and the
// keeper's numbers.
type asked struct {
	*Course
	nuc     *book.Nuc
	numbers practice.Numbers
	zone    *time.Location
	today   calendar.Day
	yard    *yardDays
	loss    float64 // factor on that of virgins at the nuc's spot
}

func (c *Course) ask(n *book.Nuc) asked {
	zone := c.Zone(n.Yard)
	return asked{c, n, c.view.Numbers(), zone, calendar.DayOf(c.view.On(), zone), c.yardDays(n.Yard), c.SpotOf(n).loss()}
}

// Zone is the time zone in which the days of a yard are counted: its own, or
// the home yard's for what stands nowhere.
func (c *Course) Zone(id book.YardID) *time.Location {
	if id.IsZero() {
		return c.view.Zone()
	}
	return c.view.Yard(id).Zone
}

func (a asked) day(t time.Time) calendar.Day { return calendar.DayOf(t, a.zone) }

func (a asked) days(k practice.Key) calendar.Day { return calendar.Day(a.numbers.Days(k)) }

func (a asked) start(d calendar.Day) time.Time { return d.Start(a.zone) }

// lookOn sets the window of the next look, in days.
func (a asked) lookOn(p *Presumption, from, best, by calendar.Day) {
	p.LookFrom, p.LookBest, p.LookBy = Days(from, best, by, a.zone)
}

// Days turns a window of days into instants: the start of the first, noon of
// the best, the last second of the last.
func Days(from, best, by calendar.Day, zone *time.Location) (f, b, l time.Time) {
	return from.Start(zone), best.At(noon, 0, zone), (by + 1).Start(zone).Add(-time.Second)
}

// noon is the hour that stands for a best day.
const noon = 12
