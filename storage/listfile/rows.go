package listfile

import (
	"encoding/csv"
	"errors"
	"io"
	"math"
	"strings"

	"lidmark/domain/roll"
)

// separators are what may stand between cells, in the order in which equals
// are preferred.
var separators = []rune{',', ';', '\t', '|'}

// readRows reads the rows of a text. A row that is not well written is kept as
// it stands with its trouble, and reading goes on in the line below it.
func readRows(text string) ([]roll.Row, error) {
	sign := separator(text)
	in, from := reader(text, sign), int64(0)
	var rows []roll.Row
	for number := 1; ; number++ {
		number += blankLines(text[from:])
		cells, err := in.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		row := roll.Row{Number: number, Trouble: trouble(err)}
		if row.Trouble != "" {
			line, rest, _ := strings.Cut(strings.TrimLeft(text[from:], "\r\n"), "\n")
			cells, text = strings.Split(line, string(sign)), rest
			in, from = reader(text, sign), 0
		} else {
			from = in.InputOffset()
		}
		for _, c := range cells {
			row.Cells = append(row.Cells, roll.Cell{Text: strings.TrimSpace(c)})
		}
		switch {
		case len(row.Cells) > MostColumns:
			return nil, errColumns(number)
		case blank(row):
			continue
		case len(rows) == MostRows:
			return nil, errRows()
		}
		rows = append(rows, row)
	}
	if len(rows) == 0 {
		return nil, errEmpty
	}
	return rows, nil
}

func reader(text string, separator rune) *csv.Reader {
	in := csv.NewReader(strings.NewReader(text))
	in.Comma, in.FieldsPerRecord = separator, -1
	return in
}

// blankLines counts the empty lines that begin a text: the reader passes over
// them, a spreadsheet counts them.
func blankLines(text string) (n int) {
	for {
		text = strings.TrimPrefix(text, "\r")
		if !strings.HasPrefix(text, "\n") {
			return n
		}
		text = text[1:]
		n++
	}
}

func trouble(err error) string {
	var where *csv.ParseError
	if !errors.As(err, &where) {
		return ""
	}
	if errors.Is(err, csv.ErrBareQuote) {
		return "a quotation mark stands inside a cell: put the whole cell in quotation marks and write it twice, or take it out"
	}
	return "a quotation mark is not closed where its cell ends: close it, or take it out"
}

func blank(row roll.Row) bool {
	for _, c := range row.Cells {
		if c.Text != "" {
			return false
		}
	}
	return true
}

// separator is what stands between the cells of a text: that by which its rows
// are most alike in length, and longer than one cell.
func separator(text string) rune {
	best, least := separators[0], math.Inf(1)
	for _, s := range separators {
		if v := unlike(text, s); v < least {
			best, least = s, v
		}
	}
	return best
}

// unlike is how much the first rows differ in length: the variance of their
// counts of cells by the square of their mean; infinite where all have one.
func unlike(text string, separator rune) float64 {
	const enough = 50
	in := reader(text, separator)
	var n, sum, squares float64
	for n < enough {
		cells, err := in.Read()
		if errors.Is(err, io.EOF) {
			break
		}
		k := float64(len(cells))
		n, sum, squares = n+1, sum+k, squares+k*k
	}
	mean := sum / n
	if !(mean > 1) {
		return math.Inf(1)
	}
	return (squares/n - mean*mean) / (mean * mean)
}
