package listfile

import (
	"bytes"
	"errors"
	"fmt"
	"io"

	"lidmark/domain/roll"
)

// The most that a list holds. A keeper of 10,000 nucs is far within it.
const (
	MostBytes   = 20 << 20
	MostRows    = 20_000 // in all sheets together
	MostColumns = 200
)

// Read reads a list. Name is the file's, for messages; encoding is the chosen
// one of [roll.List] Encodings, or "" to be told or asked. A file that is no
// table, is damaged, locked or too big is an error that says what to do.
func Read(name string, r io.Reader, encoding string) (roll.List, error) {
	list, err := read(r, encoding)
	if err != nil {
		return roll.List{}, fmt.Errorf("%s: %w", name, err)
	}
	list.File = name
	return list, nil
}

func read(r io.Reader, encoding string) (roll.List, error) {
	content, err := io.ReadAll(io.LimitReader(r, MostBytes+1))
	switch {
	case err != nil:
		return roll.List{}, fmt.Errorf("it cannot be read (%w): check that its disk is there and that you may read it, and choose it again", err)
	case len(content) > MostBytes:
		return roll.List{}, fmt.Errorf("it is bigger than %d MB: save the table alone, without pictures", MostBytes>>20)
	case bytes.HasPrefix(content, []byte("PK\x03\x04")):
		return readBook(content)
	case bytes.HasPrefix(content, []byte("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1")):
		return roll.List{}, oldOrLocked(content)
	}
	return readText(content, encoding)
}

// oldOrLocked says what a compound file is: a workbook under a password, or one
// of the form before XLSX.
func oldOrLocked(content []byte) error {
	const locked = "E\x00n\x00c\x00r\x00y\x00p\x00t\x00e\x00d\x00P\x00a\x00c\x00k\x00a\x00g\x00e\x00"
	if bytes.Contains(content, []byte(locked)) {
		return errors.New("it is locked with a password: take the password off and save it again")
	}
	return errors.New("it is a workbook of the old form XLS: open it and save it as XLSX or CSV")
}

var errEmpty = errors.New("there is no table in it: choose another file")

// errRows says that a list is too long, and where its reading stopped.
func errRows() error {
	return fmt.Errorf("it has more than %d rows: split it into several lists", MostRows)
}

func errColumns(row int) error {
	return fmt.Errorf("row %d has more than %d columns: take out what is no part of the list", row, MostColumns)
}
