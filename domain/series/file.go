package series

import (
	"fmt"
	"strings"
	"time"

	"lidmark/domain/roll"
)

// File is a series as it lies in a file: headings, and rows below them.
type File struct {
	Name     string // for messages
	Headings []string
	Rows     []roll.Row
	Offset   *time.Location // of times that have none beside them, where the file tells; else nil
	List     string         // what parallel lists stand under, as in "hourly"; "" for a table
}

// Key is what a choice is remembered by: the headings, as they stand.
func (f *File) Key() string { return strings.Join(f.Headings, "\t") }

// place is a place in the file in words: column from 0.
func (f *File) place(row roll.Row, column int) string {
	if f.List == "" {
		return fmt.Sprintf("row %d, column %s", row.Number, roll.Letters(column+1))
	}
	key := ""
	if column < len(f.Headings) {
		key, _, _ = strings.Cut(f.Headings[column], " (")
	}
	return fmt.Sprintf("%s.%s, value %d (%s)", f.List, key, row.Number, row.Cell(1).Text)
}

// Heading is the place of the row that has the headings, from 0: the first of
// which two columns are something, else the first.
func Heading(rows []roll.Row) int {
	const tried = 20 // files of stations begin with words about the place
	for i, row := range rows[:min(tried, len(rows))] {
		if known(row) >= 2 {
			return i
		}
	}
	return 0
}

// known is how many cells of a row head columns of a series.
func known(row roll.Row) (n int) {
	for _, c := range row.Cells {
		if col, _ := guessed(c.Text); col.What != Ignored {
			n++
		}
	}
	return n
}

// Is tells whether rows look like a series of weather: above a column of times
// stands one of warmth, wind or rain, and nothing heads them that a list of nucs
// has.
func Is(rows []roll.Row) bool {
	if len(rows) < 2 {
		return false
	}
	var headings []string
	for _, c := range rows[Heading(rows)].Cells {
		headings = append(headings, c.Text)
	}
	c := Guess(headings)
	return c.Has(Time) && (c.Has(Temperature) || c.Has(Low) || c.Has(High) || c.Has(Wind) || c.Has(Rain))
}
