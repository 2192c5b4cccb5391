package ics

import (
	"time"

	"lidmark/domain/calendar"
)

// Deadline is a mark in the calendar: an hour by which something has to be done,
// or a day.
type Deadline struct {
	ID     string
	Day    calendar.Day
	At     time.Time // the hour, when Hard
	Hard   bool
	Off    bool // it does not stand any more
	What   string
	Do     string
	Alarms []time.Time
	Lines  int // of the book it follows from: the more, the later it was said
}

// shownFor is how long an hour is in a calendar, which shows what takes time.
const shownFor = 15 * time.Minute

// Event is the deadline as an event: one of a whole day, or of the quarter of an
// hour before the hour, which stands in its title to the minute in the time of zone.
func (d Deadline) Event(zone *time.Location) Event {
	e := Event{ID: d.ID, Title: d.What, Text: d.Do, Alarms: d.Alarms, Hard: d.Hard, Off: d.Off, Sequence: d.Lines}
	if d.Off {
		e.Title, e.Text = "Off: "+d.What, ""
	}
	if !d.Hard {
		e.Day = d.Day
		return e
	}
	at := d.At.Truncate(time.Minute)
	e.Title = "By " + at.In(zone).Format("Mon 2 Jan 15:04") + ": " + d.What
	e.Start, e.End = at.Add(-shownFor), at
	return e
}
