package weatherfile

import (
	"bytes"
	"fmt"
	"io"
	"strings"
	"time"

	"lidmark/domain/roll"
	"lidmark/storage/listfile"
)

// File is a series as it lies in a file: headings, and rows below them.
type File struct {
	Name     string // for messages
	Headings []string
	Offset   *time.Location // of times that have none beside them, where the file tells; else nil

	rows  []roll.Row
	where func(row roll.Row, column int) string // a place in words
}

// Open reads a file, of at most [listfile.MostBytes]. Encoding is that of the text
// of a table, or "" where it tells itself. A file that is no series is an error
// that says what to do.
func Open(name string, r io.Reader, encoding string) (*File, error) {
	content, err := io.ReadAll(io.LimitReader(r, listfile.MostBytes+1))
	if err != nil {
		return nil, fmt.Errorf("%s: it cannot be read (%w): check that its disk is there and that you may read it, and choose it again", name, err)
	}
	var f *File
	if isJSON(content) {
		f, err = openJSON(content)
	} else {
		return openTable(name, content, encoding)
	}
	if err != nil {
		return nil, fmt.Errorf("%s: %w", name, err)
	}
	f.Name = name
	return f, nil
}

func openTable(name string, content []byte, encoding string) (*File, error) {
	list, err := listfile.Read(name, bytes.NewReader(content), encoding)
	switch {
	case err != nil:
		return nil, err
	case len(list.Encodings) > 0:
		return nil, fmt.Errorf("%s: nobody can tell how it is written: say the encoding, like %s", name, list.Encodings[0].Name)
	case len(list.Sheets) != 1:
		return nil, fmt.Errorf("%s: it has %d sheets: save the one with the weather alone", name, len(list.Sheets))
	}
	rows := list.Sheets[0].Rows
	at := heading(rows)
	if at+1 >= len(rows) {
		return nil, fmt.Errorf("%s: it has no row below its headings: choose another file", name)
	}
	f := &File{Name: name, rows: rows[at+1:], where: func(row roll.Row, column int) string {
		return fmt.Sprintf("row %d, column %s", row.Number, roll.Letters(column+1))
	}}
	for _, c := range rows[at].Cells {
		f.Headings = append(f.Headings, c.Text)
	}
	return f, nil
}

// heading is the row that has the headings: the first of which two columns are
// something, else the first.
func heading(rows []roll.Row) int {
	const tried = 20 // files of stations begin with words about the place
	for i, row := range rows[:min(tried, len(rows))] {
		known := 0
		for _, c := range row.Cells {
			if col, _ := guessed(c.Text); col.What != Ignored {
				known++
			}
		}
		if known >= 2 {
			return i
		}
	}
	return 0
}

// Key is what a choice is remembered by: the headings, as they stand.
func (f *File) Key() string { return strings.Join(f.Headings, "\t") }

// wrong is an error of a place in the file.
func (f *File) wrong(row roll.Row, column int, format string, args ...any) error {
	return fmt.Errorf("%s: %s: %s", f.Name, f.where(row, column), fmt.Sprintf(format, args...))
}
