package storage

import (
	"errors"
	"io"
	"os"
	"path/filepath"
	"testing"
)

func TestFileIsWrittenWholeOrNotAtAll(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "sheet.csv")
	say := func(text string, end error) func(io.Writer) error {
		return func(w io.Writer) error {
			_, err := io.WriteString(w, text)
			return errors.Join(err, end)
		}
	}
	check(t, WriteFile(path, say("one", nil)))
	check(t, WriteFile(path, say("two", nil)))
	failed := errors.New("no more paper")
	if err := WriteFile(path, say("three", failed)); err == nil || !errors.Is(err, failed) {
		t.Errorf("got %v, want %v", err, failed)
	}
	if got := string(contents(path)); got != "two" {
		t.Errorf("the file says %q", got)
	}
	if got := listed(t, dir); got != "sheet.csv" {
		t.Errorf("left: %s", got)
	}
	err := WriteFile(filepath.Join(dir, "no", "sheet.csv"), say("x", nil))
	saying(t, err, NoFolder, "sheet.csv: there is no such folder; make the folder first, or choose another")
	check(t, os.Mkdir(filepath.Join(dir, "folder"), 0o777))
	err = WriteFile(filepath.Join(dir, "folder"), say("x", nil))
	saying(t, err, IsFolder, "folder: this is a folder; name a file in it")
}
