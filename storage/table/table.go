// Package table writes tables for a spreadsheet, as CSV (RFC 4180) and as workbooks.
package table

import (
	"encoding/csv"
	"fmt"
	"io"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Table is a head and rows of as many cells.
type Table struct {
	Columns []Column
	Rows    [][]Cell
}

// Column is the head of a column: its name, and its unit if it has one.
type Column struct{ Name, Unit string }

// String is the head as it is written: "brood (dm²)".
func (c Column) String() string {
	if c.Unit == "" {
		return c.Name
	}
	return c.Name + " (" + c.Unit + ")"
}

// Cell is the content of one cell. The zero Cell is empty.
type Cell struct {
	text   string
	number bool
}

// Text is a cell of words.
func Text(s string) Cell { return Cell{text: s} }

// Count is a cell with a whole number.
func Count(n int) Cell { return Cell{strconv.Itoa(n), true} }

// Number is a cell with a number, as short as it can be told exactly.
func Number(v float64) Cell { return Cell{strconv.FormatFloat(v, 'f', -1, 64), true} }

// Amount is a cell with a number, empty when it is unsaid.
func Amount(a book.Amount) Cell { return Cell{a.String(), true} }

// Yes is a cell with "yes", or empty.
func Yes(b bool) Cell {
	if b {
		return Text("yes")
	}
	return Cell{}
}

// Day is a cell with a day, as 2027-05-15.
func Day(d calendar.Day) Cell { return Text(d.String()) }

// Time is a cell with an instant in zone to the minute, as 2027-05-15 18:00;
// empty for the zero time.
func Time(t time.Time, zone *time.Location) Cell {
	if t.IsZero() {
		return Cell{}
	}
	if zone == nil {
		zone = time.UTC
	}
	return Text(t.In(zone).Format("2006-01-02 15:04"))
}

// Format is how a table is written. The zero Format separates by commas and
// writes decimals with a point.
type Format struct {
	Separator    rune // 0 is a comma; spreadsheets of many countries want a semicolon
	DecimalComma bool
}

// Write writes the table. Lines end in CR LF. Text that a spreadsheet would
// take for a formula is written after an apostrophe. A row of another length
// than the head, and a separator that is a decimal comma, are errors.
func (t Table) Write(w io.Writer, f Format) error {
	out := csv.NewWriter(w)
	out.UseCRLF = true
	if f.Separator != 0 {
		out.Comma = f.Separator
	}
	if f.DecimalComma && out.Comma == ',' {
		return fmt.Errorf("a comma cannot both separate cells and stand in numbers; separate by semicolons")
	}
	line := make([]string, len(t.Columns))
	for i, c := range t.Columns {
		line[i] = safe(c.String())
	}
	if err := out.Write(line); err != nil {
		return err
	}
	for n, row := range t.Rows {
		if len(row) != len(t.Columns) {
			return fmt.Errorf("row %d has %d cells, the head %d", n+1, len(row), len(t.Columns))
		}
		for i, c := range row {
			line[i] = c.in(f)
		}
		if err := out.Write(line); err != nil {
			return err
		}
	}
	out.Flush()
	return out.Error()
}

func (c Cell) in(f Format) string {
	switch {
	case !c.number:
		return safe(c.text)
	case f.DecimalComma:
		return strings.Replace(c.text, ".", ",", 1)
	}
	return c.text
}

// safe is text that no spreadsheet runs: one that begins like a formula gets
// an apostrophe before it.
func safe(s string) string {
	if s != "" && strings.ContainsRune("=+-@\t\r", rune(s[0])) {
		return "'" + s
	}
	return s
}
