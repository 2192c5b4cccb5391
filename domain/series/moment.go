package series

import (
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/roll"
)

// when is the day and the hour of it, counted from its start, that a row is of; the
// hour is -1 for a whole day.
func (t *taking) when(row roll.Row) (calendar.Day, int, error) {
	column, clock := t.column(Time), ""
	if c := t.column(Clock); c >= 0 {
		clock = row.Cell(c + 1).Text
	}
	text := row.Cell(column + 1).Text
	w, err := readTime(text, clock)
	if err != nil {
		return 0, 0, t.wrong(row, column, "%v", err)
	}
	if !w.timed && !t.choice.daily() && t.choice.Has(Temperature) {
		return 0, 0, t.wrong(row, column, "%q has no time of day: say which column is the clock, or name low and high", text)
	}
	at, hour, err := t.slot(row, w)
	if err != nil {
		return 0, 0, err
	}
	day := calendar.DayOf(at, t.Zone)
	if year, _, _ := day.Date(); year < firstYear || year > lastYear || hour >= mostHours {
		return 0, 0, t.wrong(row, column, "the year %d: write a year from %d to %d", year, firstYear, lastYear)
	}
	if was, twice := t.seen[at.UTC()]; twice {
		return 0, 0, t.wrong(row, column, "%s is there twice, in row %d too: take one out", text, was)
	}
	t.seen[at.UTC()] = row.Number
	return day, hour, nil
}

// slot is the instant that a row is of, and the hour of its day; of a whole day its
// start, and -1.
func (t *taking) slot(row roll.Row, w wall) (time.Time, int, error) {
	if w.timed && !t.choice.daily() {
		at, err := t.instant(row, w)
		return at, int(at.Sub(calendar.DayOf(at, t.Zone).Start(t.Zone)) / time.Hour), err
	}
	if !w.instant.IsZero() {
		w.day = calendar.DayOf(w.instant, t.Zone)
	}
	return w.day.Start(t.Zone), -1, nil
}

const firstYear, lastYear = 1900, 2200

// instant is when a wall time was. One that the clocks show twice is first the
// first, then the second.
func (t *taking) instant(row roll.Row, w wall) (time.Time, error) {
	if !w.instant.IsZero() {
		return w.instant, nil
	}
	zone := t.Zone
	if t.Offset != nil {
		zone = t.Offset
	}
	times, at := w.day.Wall(w.hour, w.minute, zone)
	first := at(false)
	switch {
	case times == 0:
		return first, t.wrong(row, t.column(Time), "the clocks skip %02d:%02d on %s: write times with their offset from UTC, like 2027-05-15T14:00Z", w.hour, w.minute, w.day.Short())
	case times == 2:
		if _, again := t.second[first]; again {
			return at(true), nil
		}
		t.second[first] = row.Number
	}
	return first, nil
}
