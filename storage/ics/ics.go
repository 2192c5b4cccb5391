// Package ics writes events with alarms as an iCalendar file (RFC 5545), for
// any calendar on a telephone or a computer.
package ics

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"
	"time"
	"unicode"

	ical "github.com/arran4/golang-ical"

	"lidmark/domain/calendar"
)

// Event is one event: of a whole day, or from an instant to another.
type Event struct {
	ID     string       // names the event for good: a calendar that reads it again replaces it
	Day    calendar.Day // the day of an all-day event; then Start and End are not used
	Start  time.Time
	End    time.Time // the zero time means that the event takes no time
	Title  string
	Text   string
	Alarms []time.Time // when to remind
	Hard   bool        // it cannot be put off: first priority, and shown as busy
	Off    bool        // it is cancelled: a calendar that has it strikes it

	Sequence int // rises with every change of the event: a calendar keeps the later one
}

const (
	localTime = "20060102T150405"
	utcTime   = "20060102T150405Z"
	dayOnly   = "20060102"
)

// Write writes the events to w in the order of time. Instants are written as
// local times of zone, together with the zone's rules; in UTC when zone is
// nil, UTC or [time.Local], which has no name that another machine knows.
// Stamp is when the file is made. An event without an id, with the id of
// another, or that ends before it starts is an error, and then nothing is
// written.
func Write(w io.Writer, events []Event, zone *time.Location, stamp time.Time) error {
	if err := check(events); err != nil {
		return err
	}
	if zone == nil || zone == time.Local {
		zone = time.UTC
	}
	events = slices.SortedFunc(slices.Values(events), func(a, b Event) int {
		return cmp.Or(a.begins(zone).Compare(b.begins(zone)), cmp.Compare(a.ID, b.ID))
	})
	c := ical.NewCalendarFor("Lidmark")
	c.SetProductId("-//Lidmark//Lidmark//EN")
	c.SetCalscale("GREGORIAN")
	if from, to, timed := span(events); timed && zone != time.UTC {
		c.AddVTimezone(timezone(zone, from, to))
	}
	for _, e := range events {
		c.AddVEvent(e.component(zone, stamp))
	}
	return c.SerializeTo(w, ical.WithNewLineWindows)
}

func check(events []Event) error {
	ids := map[string]bool{}
	for _, e := range events {
		switch {
		case e.ID == "":
			return fmt.Errorf("event %q: it has no id; give it one that stays", e.Title)
		case ids[e.ID]:
			return fmt.Errorf("event %q: its id %q belongs to another event; give it one of its own", e.Title, e.ID)
		case e.Day.IsZero() && e.Start.IsZero():
			return fmt.Errorf("event %q: it has neither a day nor a start; give it one", e.Title)
		case e.Day.IsZero() && !e.End.IsZero() && e.End.Before(e.Start):
			return fmt.Errorf("event %q: it ends before it starts; swap the two", e.Title)
		}
		ids[e.ID] = true
	}
	return nil
}

// begins is the instant by which the event is sorted.
func (e Event) begins(zone *time.Location) time.Time {
	if !e.Day.IsZero() {
		return e.Day.Start(zone)
	}
	return e.Start
}

// span is the first and the last instant at which a timed event starts or
// ends, and whether there is a timed event at all.
func span(events []Event) (from, to time.Time, timed bool) {
	for _, e := range events {
		if !e.Day.IsZero() {
			continue
		}
		for _, t := range []time.Time{e.Start, e.End} {
			if t.IsZero() {
				continue
			}
			if !timed || t.Before(from) {
				from = t
			}
			if !timed || t.After(to) {
				to = t
			}
			timed = true
		}
	}
	return from, to, timed
}

func (e Event) component(zone *time.Location, stamp time.Time) *ical.VEvent {
	v := ical.NewEvent(clean(e.ID))
	v.SetDtStampTime(stamp)
	v.SetSequence(e.Sequence)
	if e.Off {
		v.SetStatus(ical.ObjectStatusCancelled)
	}
	if e.Day.IsZero() {
		setTime(v, ical.ComponentPropertyDtStart, e.Start, zone)
		if !e.End.IsZero() {
			setTime(v, ical.ComponentPropertyDtEnd, e.End, zone)
		}
	} else {
		asDay := ical.WithValue(string(ical.ValueDataTypeDate))
		v.SetProperty(ical.ComponentPropertyDtStart, dayText(e.Day), asDay)
		v.SetProperty(ical.ComponentPropertyDtEnd, dayText(e.Day+1), asDay) // the first day that is not in it
	}
	v.SetSummary(clean(e.Title))
	if e.Text != "" {
		v.SetDescription(clean(e.Text))
	}
	priority, busy := 5, ical.TransparencyTransparent
	if e.Hard {
		priority, busy = 1, ical.TransparencyOpaque
	}
	v.SetPriority(priority)
	v.SetTimeTransparency(busy)
	for _, t := range e.Alarms {
		a := v.AddAlarm()
		a.SetAction(ical.ActionDisplay)
		a.SetTrigger(t.UTC().Format(utcTime), ical.WithValue(string(ical.ValueDataTypeDateTime)))
		a.SetDescription(clean(e.Title))
	}
	return v
}

// setTime sets a property to an instant. When the clocks go back an hour of
// local time comes twice, and RFC 5545 (3.3.5) reads it as the first; an
// instant of the second is written in UTC.
func setTime(v *ical.VEvent, p ical.ComponentProperty, t time.Time, zone *time.Location) {
	if zone == time.UTC || second(t.In(zone)) {
		v.SetProperty(p, t.UTC().Format(utcTime))
		return
	}
	v.SetProperty(p, t.In(zone).Format(localTime), ical.WithTZID(zone.String()))
}

// second tells whether t's wall clock time has been there before.
func second(t time.Time) bool {
	start, _ := t.ZoneBounds()
	if start.IsZero() {
		return false
	}
	return t.Sub(start) < offset(start.Add(-time.Second))-offset(start)
}

func dayText(d calendar.Day) string {
	y, m, day := d.Date()
	return time.Date(y, m, day, 0, 0, 0, 0, time.UTC).Format(dayOnly)
}

// clean is s without what a line of text cannot carry: control characters
// other than line breaks, and bytes that are no character.
func clean(s string) string {
	s = strings.ToValidUTF8(strings.ReplaceAll(s, "\r\n", "\n"), "\ufffd")
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\r':
			return '\n'
		case r == '\t':
			return ' '
		case unicode.IsControl(r) && r != '\n':
			return -1
		}
		return r
	}, s)
}
