package ics

import (
	"fmt"
	"time"

	ical "github.com/arran4/golang-ical"
)

// timezone is the part of a calendar that tells a zone's rules from the
// instant from to the instant to. Every change of the clocks stands by
// itself, taken from the zone's own table, since a rule that repeats every
// year would be a guess about law-makers.
func timezone(zone *time.Location, from, to time.Time) *ical.VTimezone {
	tz := ical.NewTimezone(zone.String())
	for t := from.In(zone); ; {
		start, end := t.ZoneBounds()
		observe(tz, t, start)
		if end.IsZero() || end.After(to) {
			return tz
		}
		t = end
	}
}

// observe adds the stretch of unchanged clocks that holds t and began at
// start, or always was when start is zero.
func observe(tz *ical.VTimezone, t, start time.Time) {
	before := offset(t)
	if start.IsZero() {
		start = time.Unix(0, 0).Add(-before)
	} else {
		before = offset(start.Add(-time.Second))
	}
	var part *ical.ComponentBase
	if t.IsDST() {
		d := &ical.Daylight{}
		tz.Components = append(tz.Components, d)
		part = &d.ComponentBase
	} else {
		part = &tz.AddStandard().ComponentBase
	}
	name, _ := t.Zone()
	// The start is told on the clock as it stood before the change.
	part.SetProperty(ical.ComponentPropertyDtStart, start.UTC().Add(before).Format(localTime))
	part.SetProperty("TZOFFSETFROM", offsetText(before))
	part.SetProperty("TZOFFSETTO", offsetText(offset(t)))
	part.SetProperty("TZNAME", name)
}

// offset is how far local time is ahead of UTC at t.
func offset(t time.Time) time.Duration {
	_, s := t.Zone()
	return time.Duration(s) * time.Second
}

// offsetText is an offset as RFC 5545 (3.3.14) writes it: +0200, and with
// seconds where a zone of old has them.
func offsetText(d time.Duration) string {
	sign := '+'
	if d < 0 {
		sign, d = '-', -d
	}
	s := int(d / time.Second)
	text := fmt.Sprintf("%c%02d%02d", sign, s/3600, s/60%60)
	if s%60 != 0 {
		text += fmt.Sprintf("%02d", s%60)
	}
	return text
}
