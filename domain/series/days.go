package series

import (
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
// taken in: see [book.Foretold]. Rows of a
// number in Skip are left out.
type Where struct {
	Yard  book.YardID
	Zone  *time.Location
	Today calendar.Day
	Skip  map[int]bool
}

// taking is a file while its rows are taken in.
type taking struct {
	*File
	Where
	choice Choice
	days   map[calendar.Day]*day
	second map[time.Time]int   // wall times that the clocks show twice, by the row of the first
	seen   map[time.Time]int   // instants, by their rows
	doubts map[Quantity]string // what can be meant and hardly is, by quantity
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

// row takes one row in, and says it in words.
func (t *taking) row(row roll.Row) (string, error) {
	if row.Trouble != "" {
		return "", t.wrong(row, 0, "%s", row.Trouble)
	}
	d, hour, err := t.when(row)
	if err != nil {
		return "", err
	}
	told := t.days[d]
	if told == nil {
		told = &day{whole: hour < 0}
		t.days[d] = told
	}
	if told.whole != (hour < 0) {
		return "", t.wrong(row, t.column(Time), "%s is told by the day and by the hour: keep the one or the other", d.Short())
	}
	words := t.of(d, hour)
	hour = max(hour, 0)
	told.last = max(told.last, hour)
	var all []string
	for i, col := range t.choice.Columns {
		if col.What <= Clock {
			continue
		}
		v, said, err := t.value(row, i, col, told.whole)
		if err != nil {
			return "", err
		}
		if said {
			told.slots[hour].sum[col.What] += v
			told.slots[hour].times[col.What]++
			all = append(all, amount(col.What, v))
			t.doubt(row, col, v)
		}
	}
	if len(all) == 0 {
		return words + ": nothing told", nil
	}
	return words + ": " + strings.Join(all, ", "), nil
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
