package weatherfile

import (
	"bytes"
	"fmt"
	"io"

	"lidmark/domain/roll"
	"lidmark/domain/series"
	"lidmark/storage/listfile"
)

// Open reads a file, of at most [listfile.MostBytes]. Encoding is that of the text
// of a table, or "" where it tells itself. A file that is no series is an error
// that says what to do.
func Open(name string, r io.Reader, encoding string) (*series.File, error) {
	content, err := io.ReadAll(io.LimitReader(r, listfile.MostBytes+1))
	if err != nil {
		return nil, fmt.Errorf("%s: it cannot be read (%w): check that its disk is there and that you may read it, and choose it again", name, err)
	}
	var f *series.File
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

func openTable(name string, content []byte, encoding string) (*series.File, error) {
	list, err := listfile.Read(name, bytes.NewReader(content), encoding)
	switch {
	case err != nil:
		return nil, err
	case len(list.Encodings) > 0:
		return nil, &Undecided{name, list.Encodings}
	case len(list.Sheets) != 1:
		return nil, fmt.Errorf("%s: it has %d sheets: save the one with the weather alone", name, len(list.Sheets))
	}
	rows := list.Sheets[0].Rows
	at := series.Heading(rows)
	if at+1 >= len(rows) {
		return nil, fmt.Errorf("%s: it has no row below its headings: choose another file", name)
	}
	f := &series.File{Name: name, Rows: rows[at+1:]}
	for _, c := range rows[at].Cells {
		f.Headings = append(f.Headings, c.Text)
	}
	return f, nil
}

// Undecided says that nobody can tell how the text of a table is written: it is
// one of these ways.
type Undecided struct {
	Name      string
	Encodings []roll.Encoding
}

// Error says what to do.
func (e *Undecided) Error() string {
	return fmt.Sprintf("%s: nobody can tell how it is written: say the encoding, like %s", e.Name, e.Encodings[0].Name)
}
