package listfile

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"github.com/xuri/excelize/v2"

	"lidmark/domain/roll"
)

// workbook reads the cells of an open workbook.
type workbook struct {
	*excelize.File
	from1904 bool         // its days count from 1904
	dates    map[int]bool // which styles show a number as a date
	left     int          // rows that may still be read
}

// lowestRow is how far down a list may reach, empty rows included.
const lowestRow = 5 * MostRows

var errLow = fmt.Errorf("it has rows below row %d: delete the empty rows under the table and save it again", lowestRow)

func newWorkbook(f *excelize.File) *workbook {
	b := &workbook{File: f, dates: map[int]bool{}, left: MostRows}
	if p, err := f.GetWorkbookProps(); err == nil && p.Date1904 != nil {
		b.from1904 = *p.Date1904
	}
	return b
}

func (b *workbook) rows(sheet string) ([]roll.Row, error) {
	in, err := b.Rows(sheet)
	if err != nil {
		if strings.Contains(err.Error(), "not a worksheet") {
			return nil, nil // a sheet with a chart
		}
		return nil, errDamaged
	}
	defer in.Close() // nothing was written
	var rows []roll.Row
	for number := 1; in.Next(); number++ {
		texts, err := in.Columns()
		switch {
		case err != nil:
			return nil, errDamaged
		case len(texts) > MostColumns:
			return nil, errColumns(number)
		case number > lowestRow:
			return nil, errLow
		}
		row := roll.Row{Number: number}
		for _, text := range texts {
			row.Cells = append(row.Cells, roll.Cell{Text: strings.TrimSpace(text)})
		}
		if blank(row) {
			continue
		}
		if b.left--; b.left < 0 {
			return nil, errRows()
		}
		rows = append(rows, row)
	}
	if in.Error() != nil {
		return nil, errDamaged
	}
	b.tell(sheet, rows)
	return rows, nil
}

// tell says of each cell what it is, once it is known that the sheet is no
// bigger than a list: the library fills a sheet down to its lowest row.
func (b *workbook) tell(sheet string, rows []roll.Row) {
	for _, row := range rows {
		for i, c := range row.Cells {
			row.Cells[i] = b.cell(sheet, i+1, row.Number, c.Text)
		}
	}
}

// cell is a cell by its raw text: only numbers can be more than words.
func (b *workbook) cell(sheet string, column, row int, text string) roll.Cell {
	words := roll.Cell{Text: text}
	value, err := strconv.ParseFloat(text, 64)
	if err != nil || math.IsNaN(value) || math.IsInf(value, 0) {
		return words
	}
	at, err := excelize.CoordinatesToCellName(column, row)
	if err != nil {
		return words
	}
	kind, err := b.GetCellType(sheet, at)
	switch {
	case err != nil:
		return words
	case kind == excelize.CellTypeBool:
		return roll.Cell{Text: map[bool]string{true: "yes", false: "no"}[value != 0]}
	case kind != excelize.CellTypeUnset && kind != excelize.CellTypeNumber:
		return words
	}
	if style, err := b.GetCellStyle(sheet, at); err == nil && b.showsDate(style) {
		if t, err := excelize.ExcelDateToTime(value, b.from1904); err == nil {
			return roll.Cell{Text: dayText(t), Kind: roll.Day}
		}
	}
	return roll.Cell{Text: strconv.FormatFloat(value, 'f', -1, 64), Kind: roll.Number}
}

// dayText is a day, with the time where there is one.
func dayText(t time.Time) string {
	t = t.Round(time.Minute)
	if t.Hour() == 0 && t.Minute() == 0 {
		return t.Format(time.DateOnly)
	}
	return t.Format("2006-01-02 15:04")
}

// showsDate tells whether a style shows a number as a date.
func (b *workbook) showsDate(style int) bool {
	is, known := b.dates[style]
	if !known {
		s, err := b.GetStyle(style)
		is = err == nil && (isDateFormat(s.NumFmt) || s.CustomNumFmt != nil && isDateCode(*s.CustomNumFmt))
		b.dates[style] = is
	}
	return is
}

// isDateFormat tells the built-in formats that show a day (ECMA-376 part 1,
// 18.8.30), those of East Asian languages included.
func isDateFormat(id int) bool {
	return id >= 14 && id <= 17 || id == 22 || id >= 27 && id <= 31 || id == 36 || id >= 50 && id <= 58
}

// isDateCode tells whether a format code shows a day or a year, outside what it
// quotes, escapes or puts in brackets.
func isDateCode(code string) bool {
	const plain, quoted, bracketed = 0, '"', ']'
	in := rune(plain)
	for i, r := range code {
		switch {
		case i > 0 && in == plain && (code[i-1] == '\\' || code[i-1] == '_' || code[i-1] == '*'):
		case in != plain:
			if r == in {
				in = plain
			}
		case r == '"':
			in = quoted
		case r == '[':
			in = bracketed
		case strings.ContainsRune("dDyY", r):
			return true
		case r == ';':
			return false
		}
	}
	return false
}
