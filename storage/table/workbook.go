package table

import (
	"fmt"
	"io"
	"path/filepath"
	"strconv"
	"strings"

	"github.com/xuri/excelize/v2"
)

// WriteAs writes the table as the ending of its file's name asks for: a workbook
// with one sheet of a name where it ends in .xlsx, else CSV.
func (t Table) WriteAs(file, sheet string, w io.Writer) error {
	if strings.EqualFold(filepath.Ext(file), ".xlsx") {
		return t.WriteXLSX(w, sheet)
	}
	return t.Write(w, Format{})
}

// WriteXLSX writes the table as a workbook with one sheet of a name, its head in
// bold and kept in sight. Numbers are numbers, all else is text: days as
// 2027-05-15, and what begins like a formula is never run. A row of another
// length than the head, and more rows than a sheet holds, are errors.
func (t Table) WriteXLSX(w io.Writer, sheet string) (err error) {
	f := excelize.NewFile()
	defer func() {
		if shut := f.Close(); err == nil {
			err = shut
		}
	}()
	if err := f.SetSheetName(f.GetSheetName(0), sheet); err != nil {
		return fmt.Errorf("a sheet cannot be called %q: %w", sheet, err)
	}
	if err := t.stream(f, sheet); err != nil {
		return err
	}
	_, err = f.WriteTo(w)
	return err
}

// stream writes the rows one by one, so that a long table takes little memory.
func (t Table) stream(f *excelize.File, sheet string) error {
	out, err := f.NewStreamWriter(sheet)
	if err != nil {
		return err
	}
	bold, err := f.NewStyle(&excelize.Style{Font: &excelize.Font{Bold: true}})
	if err != nil {
		return err
	}
	if err := out.SetPanes(&excelize.Panes{Freeze: true, YSplit: 1, TopLeftCell: "A2", ActivePane: "bottomLeft"}); err != nil {
		return err
	}
	line := make([]any, len(t.Columns))
	for i, c := range t.Columns {
		line[i] = excelize.Cell{StyleID: bold, Value: c.String()}
	}
	if err := out.SetRow("A1", line); err != nil {
		return err
	}
	for n, row := range t.Rows {
		if len(row) != len(t.Columns) {
			return fmt.Errorf("row %d has %d cells, the head %d", n+1, len(row), len(t.Columns))
		}
		for i, c := range row {
			line[i] = c.value()
		}
		if err := out.SetRow("A"+strconv.Itoa(n+2), line); err != nil {
			return fmt.Errorf("row %d does not go into a workbook: %w; write the table as CSV", n+1, err)
		}
	}
	return out.Flush()
}

// value is what a workbook is given for a cell: nil, a number or text.
func (c Cell) value() any {
	if c.text == "" {
		return nil
	}
	if c.number {
		if v, err := strconv.ParseFloat(c.text, 64); err == nil {
			return v
		}
	}
	return c.text
}
