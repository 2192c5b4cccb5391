package weatherfile

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/roll"
	"lidmark/domain/weather"
)

// Where is what a series is of: the yard, its zone, and the day on which it is
// taken in. Days before that are seen, it and later ones foretold.
type Where struct {
	Yard  book.YardID
	Zone  *time.Location
	Today calendar.Day
}

// Series is what a file says, as facts, the days in their order; and of how many
// hours between the first and the last the temperature is missing.
type Series struct {
	Facts   []book.Fact
	Missing int
}

// Take makes facts of a file by a choice of its columns. Anything in it that
// cannot be meant is an error with the place, and then nothing is taken.
func (f *File) Take(c Choice, at Where) (Series, error) {
	if err := c.check(); err != nil {
		return Series{}, fmt.Errorf("%s: %w", f.Name, err)
	}
	t := taking{File: f, choice: c, Where: at, days: map[calendar.Day]*day{}, second: map[time.Time]int{}, seen: map[time.Time]int{}}
	for _, row := range f.rows {
		if row.Trouble != "" {
			return Series{}, f.wrong(row, 0, "%s", row.Trouble)
		}
		if err := t.row(row); err != nil {
			return Series{}, err
		}
	}
	return t.series()
}

// taking is a file while its rows are taken in.
type taking struct {
	*File
	Where
	choice Choice
	days   map[calendar.Day]*day
	second map[time.Time]int // wall times that the clocks show twice, by the row of the first
	seen   map[time.Time]int // instants, by their rows
}

// day is what was told of one day: sums and counts by the slot of an hour, or
// of the whole day in slot 0.
type day struct {
	whole bool
	slots [mostHours]slot
	last  int // the last slot with anything in it
}

// mostHours is how many hours a day has on which the clocks go back.
const mostHours = 25

// slot is what was told of an hour, by quantity: the sum, and how many times.
type slot struct {
	sum   [Sun + 1]float64
	times [Sun + 1]int
}

// row takes one row in.
func (t *taking) row(row roll.Row) error {
	d, hour, err := t.when(row)
	if err != nil {
		return err
	}
	told := t.days[d]
	if told == nil {
		told = &day{whole: hour < 0}
		t.days[d] = told
	}
	if told.whole != (hour < 0) {
		return t.wrong(row, t.column(Time), "%s is told by the day and by the hour: keep the one or the other", d.Short())
	}
	hour = max(hour, 0)
	told.last = max(told.last, hour)
	for i, col := range t.choice.Columns {
		if col.What <= Clock {
			continue
		}
		v, said, err := t.value(row, i, col, told.whole)
		if err != nil {
			return err
		}
		if said {
			told.slots[hour].sum[col.What] += v
			told.slots[hour].times[col.What]++
		}
	}
	return nil
}

// column is that of a quantity, from 0.
func (t *taking) column(q Quantity) int {
	return slices.IndexFunc(t.choice.Columns, func(c Column) bool { return c.What == q })
}

// nothing are the ways in which files write that a value is missing.
var nothing = []string{"", "-", "--", "na", "n/a", "nan", "null", "none", "m", "-99", "-999", "-9999", "-99.9", "-999.9"}

// value is a cell in metric units, or none.
func (t *taking) value(row roll.Row, column int, c Column, whole bool) (float64, bool, error) {
	text := strings.TrimSpace(row.Cell(column + 1).Text)
	if slices.Contains(nothing, strings.ToLower(text)) {
		return 0, false, nil
	}
	v, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	if err != nil || math.IsNaN(v) || math.IsInf(v, 0) {
		return 0, false, t.wrong(row, column, "%q is no number: write the %s in %s, or leave it empty", text, c.What, c.Unit)
	}
	m := c.Unit.metric(v)
	if why := absurd(c, v, m, whole); why != "" {
		return 0, false, t.wrong(row, column, "%s", why)
	}
	if c.What == Wind && t.choice.Height != 0 {
		m = weather.At10m(m, t.choice.Height)
	}
	return m, true, nil
}

// when is the day and the hour of it, counted from its start, that a row is of; the
// hour is -1 for a whole day.
func (t *taking) when(row roll.Row) (calendar.Day, int, error) {
	column, clock := t.column(Time), ""
	if c := t.column(Clock); c >= 0 {
		clock = row.Cell(c + 1).Text
	}
	w, err := readTime(row.Cell(column+1).Text, clock)
	if err != nil {
		return 0, 0, t.wrong(row, column, "%v", err)
	}
	at, hour := w.instant, -1
	switch {
	case !w.timed && !t.choice.daily() && t.choice.has(Temperature):
		return 0, 0, t.wrong(row, column, "%q has no time of day: say which column is the clock, or name low and high", row.Cell(column+1).Text)
	case !w.timed || t.choice.daily():
		if !w.instant.IsZero() {
			w.day = calendar.DayOf(w.instant, t.Zone)
		}
		at = time.Unix(int64(w.day)*24*3600, 0)
	default:
		if at, err = t.instant(row, w); err != nil {
			return 0, 0, err
		}
		w.day = calendar.DayOf(at, t.Zone)
		hour = int(at.Sub(w.day.Start(t.Zone)) / time.Hour)
	}
	if year, _, _ := w.day.Date(); year < firstYear || year > lastYear || hour >= mostHours {
		return 0, 0, t.wrong(row, column, "the year %d: write a year from %d to %d", year, firstYear, lastYear)
	}
	if was, twice := t.seen[at.UTC()]; twice {
		return 0, 0, t.wrong(row, column, "%s is there twice, in row %d too: take one out", row.Cell(column+1).Text, was)
	}
	t.seen[at.UTC()] = row.Number
	return w.day, hour, nil
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
