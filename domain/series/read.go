package series

import (
	"errors"
	"fmt"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/roll"
)

// Series is what a file says, as facts, the days in their order; what is missing
// between the first and the last; and what was read that can be meant and hardly
// is, as sentences that say what to do.
type Series struct {
	Facts  []book.Fact
	Gaps   Gaps
	Doubts []string
}

// Reading is a file as a choice of its columns reads it: of each row what it is
// in words, or what is wrong with it; what is wrong with the choice; and the
// series, which has facts only where nothing is wrong.
type Reading struct {
	Rows    []roll.RowRead
	Columns []roll.Mistake
	Series
}

// Read reads a file by a choice of its columns.
func (f *File) Read(c Choice, at Where) (r Reading) {
	r.Rows = make([]roll.RowRead, len(f.Rows))
	for i, row := range f.Rows {
		r.Rows[i] = roll.RowRead{Row: row, Skipped: at.Skip[row.Number]}
	}
	if wrong := c.check(); wrong != nil {
		r.Columns = []roll.Mistake{wrong.Mistake}
		return r
	}
	t := taking{
		File: f, choice: c, Where: at,
		days: map[calendar.Day]*day{}, second: map[time.Time]int{}, seen: map[time.Time]int{}, doubts: map[Quantity]string{},
	}
	mistaken := false
	for i := range r.Rows {
		row := &r.Rows[i]
		if row.Skipped {
			continue
		}
		var err error
		if row.Words, err = t.row(row.Row); err != nil {
			row.Mistakes, mistaken = []roll.Mistake{mistakeOf(err, row.Row)}, true
		}
	}
	if !mistaken {
		r.Series = t.series()
	}
	return r
}

// Take makes facts of a file by a choice of its columns. Anything in it that
// cannot be meant is an error with the place, and then nothing is taken.
func (f *File) Take(c Choice, at Where) (Series, error) {
	r := f.Read(c, at)
	if len(r.Columns) > 0 {
		return Series{}, fmt.Errorf("%s: %s", f.Name, r.Columns[0].What)
	}
	for _, row := range r.Rows {
		for _, m := range row.Mistakes {
			return Series{}, fmt.Errorf("%s: %s: %s", f.Name, f.place(row.Row, m.Column-1), m.What)
		}
	}
	if len(r.Facts) == 0 {
		return Series{}, fmt.Errorf("%s: %s", f.Name, Nothing)
	}
	return r.Series, nil
}

// Nothing is what is wrong with a series without facts.
const Nothing = "no row of it tells anything: choose another file, or other columns"

// misread is a mistake as an error.
type misread struct{ roll.Mistake }

// Error is what is wrong.
func (m *misread) Error() string { return m.What }

func mistakeOf(err error, row roll.Row) roll.Mistake {
	var m *misread
	if errors.As(err, &m) {
		return m.Mistake
	}
	return roll.Mistake{Row: row.Number, Column: 1, What: err.Error()}
}

// wrong is a mistake of a row, column from 0.
func (f *File) wrong(row roll.Row, column int, format string, args ...any) error {
	return &misread{roll.Mistake{Row: row.Number, Column: column + 1, What: fmt.Sprintf(format, args...)}}
}

// of says of which hour or day a row is, and whether that is foretold.
func (t *taking) of(d calendar.Day, hour int) string {
	words := d.Short()
	if hour >= 0 {
		words += d.Start(t.Zone).Add(time.Duration(hour) * time.Hour).In(t.Zone).Format(" 15 h")
	}
	if book.Foretold(d, t.Today) {
		return "forecast, " + words
	}
	return words
}

// amount is what was told of a quantity, in metric units.
func amount(q Quantity, v float64) string {
	figure := func(v float64) string {
		return strings.TrimSuffix(strconv.FormatFloat(v, 'f', 1, 64), ".0")
	}
	switch q {
	case Temperature:
		return figure(v) + " °C"
	case Low, High:
		return q.String() + " " + figure(v) + " °C"
	case Wind:
		return "wind " + figure(v) + " m/s"
	case Rain:
		return "rain " + figure(v) + " mm"
	}
	const percent = 100
	return q.String() + " " + strconv.FormatFloat(percent*v, 'f', 0, 64) + " %"
}
