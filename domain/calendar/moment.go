package calendar

import (
	"fmt"
	"strings"
	"time"
)

// Part is how much of a day a keeper names when writing up: the very minute,
// a part of the day, or only the day.
type Part uint8

// The parts of a day. Exact, the zero value, is the instant itself.
const (
	Exact Part = iota
	WholeDay
	Morning
	Midday
	Afternoon
	Evening
	Night
)

var parts = [...]struct {
	word string
	hour int // the wall clock hour that stands for the part; common practice, no source
}{
	Exact:     {"", 0},
	WholeDay:  {"day", 12},
	Morning:   {"morning", 9},
	Midday:    {"midday", 13},
	Afternoon: {"afternoon", 16},
	Evening:   {"evening", 19},
	Night:     {"night", 23},
}

// String is the part's word, "" for Exact.
func (p Part) String() string { return parts[p].word }

// ParsePart reads a part's word.
func ParsePart(word string) (Part, error) {
	for p, row := range parts {
		if row.word == word {
			return Part(p), nil
		}
	}
	return 0, fmt.Errorf("part of the day %q: use morning, midday, afternoon, evening, night or day", word)
}

// MarshalText writes the part's word.
func (p Part) MarshalText() ([]byte, error) { return []byte(p.String()), nil }

// UnmarshalText reads what MarshalText writes.
func (p *Part) UnmarshalText(b []byte) (err error) {
	*p, err = ParsePart(string(b))
	return err
}

// Moment is when something happened. With the part Exact, Instant is the
// instant; with any other part it is the hour that stands for the part on
// that day, in the zone where it was written, and only the day and the part
// are meant. The zero Moment means "no moment".
type Moment struct {
	Instant time.Time
	Part    Part
}

// Instantly is the moment of an instant, to the second.
func Instantly(t time.Time) Moment {
	return Moment{Instant: t.UTC().Truncate(time.Second)}
}

// On is the moment of a part of a day in zone.
func On(d Day, p Part, zone *time.Location) Moment {
	return Moment{Instant: d.At(parts[p].hour, 0, zone).UTC(), Part: p}
}

// IsZero tells whether m is no moment.
func (m Moment) IsZero() bool { return m.Instant.IsZero() }

// Day is the moment's civil day in zone.
func (m Moment) Day(zone *time.Location) Day { return DayOf(m.Instant, zone) }

// Before tells whether m stands before n in the book's order of time.
func (m Moment) Before(n Moment) bool { return m.Instant.Before(n.Instant) }

// InFrom says the moment as [Moment.In] does, with its year where that is not the year of
// today.
func (m Moment) InFrom(today Day, zone *time.Location) string {
	day := m.Day(zone)
	return day.ShortFrom(today) + strings.TrimPrefix(m.In(zone), day.Short())
}

// In says the moment in words in zone: "Sat 15 May 18:00", "Sat 15 May,
// morning", "Sat 15 May".
func (m Moment) In(zone *time.Location) string {
	switch m.Part {
	case Exact:
		return m.Instant.In(orUTC(zone)).Format("Mon 2 Jan 15:04")
	case WholeDay:
		return m.Day(zone).Short()
	default:
		return m.Day(zone).Short() + ", " + m.Part.String()
	}
}
