package roll

import "strings"

// List is a keeper's table as it was read from a file: its sheets, of which a
// text file has one. Where nobody can tell how a text is written, there are no
// sheets but Encodings to choose from.
type List struct {
	File      string // its name, for messages
	Sheets    []Sheet
	Encoding  string // how its text was read; "" for a workbook
	Encodings []Encoding
}

// Encoding is one way in which a text may be written: its registered name, for
// whom it is usual, and what some words of the text are in it.
type Encoding struct{ Name, Words, Preview string }

// Sheet is one table of a list. Rows without any text are left out.
type Sheet struct {
	Name string
	Rows []Row
}

// Row is one row of a sheet: its number, counted from 1 as a spreadsheet
// counts, its cells from column A on, and what is wrong with it as a row.
type Row struct {
	Number  int
	Cells   []Cell
	Trouble string
}

// Cell is one cell: its text, and what the file says that it is. A day is
// written 2027-05-15 or 2027-05-15 18:00, a number with a point.
type Cell struct {
	Text string
	Kind CellKind
}

// CellKind is what a file says that a cell is.
type CellKind uint8

// The kinds of cell. In a text file all are Text.
const (
	Text CellKind = iota
	Number
	Day
)

// Cell is the cell of a column, counted from 1; empty where the row is short.
func (r Row) Cell(column int) Cell {
	if column < 1 || column > len(r.Cells) {
		return Cell{}
	}
	return r.Cells[column-1]
}

// Letters are the letters of a column, counted from 1, as spreadsheets write
// them: A, B, … Z, AA.
func Letters(column int) string {
	const letters = 'Z' - 'A' + 1
	var back []byte
	for ; column > 0; column = (column - 1) / letters {
		back = append(back, byte('A'+(column-1)%letters))
	}
	var out strings.Builder
	for i := range back {
		out.WriteByte(back[len(back)-1-i])
	}
	return out.String()
}
