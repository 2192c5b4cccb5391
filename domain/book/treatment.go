package book

import (
	"time"

	"lidmark/domain/calendar"
)

// Treatment is what a yard, nuc or colony was treated with, and for how many
// days from then the label asks to wait. The zero Treatment asks for nothing.
type Treatment struct {
	At   calendar.Moment
	With string
	Wait int // days
}

// Until is the day from which nothing of the treatment is waited for; it has
// no meaning for the zero Treatment.
func (t Treatment) Until(zone *time.Location) calendar.Day {
	return t.At.Day(zone) + calendar.Day(t.Wait)
}

// Waits tells whether the label asks to wait on a day.
func (t Treatment) Waits(on calendar.Day, zone *time.Location) bool {
	return !t.At.IsZero() && t.At.Day(zone) <= on && on < t.Until(zone)
}

// take takes a treatment of a subject in; of several the one that asks to wait
// the longest counts, and of those the last.
func (t *Treatment) take(e *Entry, of Subject) {
	f, ok := e.Fact.(Treated)
	if !ok || f.Of != of {
		return
	}
	next := Treatment{e.At, f.With, f.Wait}
	if t.At.IsZero() || !next.ends().Before(t.ends()) {
		*t = next
	}
}

func (t Treatment) ends() time.Time { return t.At.Instant.AddDate(0, 0, t.Wait) }
