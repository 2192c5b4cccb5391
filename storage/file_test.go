package storage

import (
	"bytes"
	"errors"
	"io"
	"os"
	"path/filepath"
	"testing"
)

func TestFileIsWrittenWholeOrNotAtAll(t *testing.T) {
	dir := t.TempDir()
	path := filepath.Join(dir, "sheet.csv")
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
	saying(t, err, NoFolder, "sheet.csv: there is no such folder ("+filepath.Join(dir, "no")+"); make the folder first, or choose another")
	check(t, os.Mkdir(filepath.Join(dir, "folder"), 0o777))
	err = WriteFile(filepath.Join(dir, "folder"), say("x", nil))
	saying(t, err, IsFolder, "folder: this is a folder; name a file in it")
}

func TestNothingIsWrittenOverABook(t *testing.T) {
	path := written(t)
	before := contents(path)
	other := filepath.Join(t.TempDir(), "letter.txt") // a book under another name
	check(t, os.WriteFile(other, before, 0o666))
	for _, p := range []string{path, other, filepath.Join(t.TempDir(), "new.LIDMARK")} {
		err := WriteFile(p, say("a picture", nil))
		saying(t, err, IsBook, filepath.Base(p)+": this is a book, and nothing else may be written over it; choose another name")
	}
	if !bytes.Equal(contents(path), before) || !bytes.Equal(contents(other), before) {
		t.Error("a book was written over")
	}
}

func TestAProtectedFileIsLeftAlone(t *testing.T) {
	path := filepath.Join(t.TempDir(), "letter.txt")
	check(t, os.WriteFile(path, []byte("dear"), 0o444))
	saying(t, WriteFile(path, say("x", nil)), Guarded, "letter.txt: the file may not be written; choose another name, or lift its protection")
	if got := string(contents(path)); got != "dear" {
		t.Errorf("the file says %q", got)
	}
}

func TestALinkIsFollowed(t *testing.T) {
	dir := t.TempDir()
	target, link := filepath.Join(dir, "target.csv"), filepath.Join(dir, "link.csv")
	check(t, os.WriteFile(target, []byte("old"), 0o666))
	check(t, os.Symlink(target, link))
	check(t, WriteFile(link, say("new", nil)))
	if got := string(contents(target)); got != "new" {
		t.Errorf("behind the link it says %q", got)
	}
	if info, err := os.Lstat(link); err != nil || info.Mode()&os.ModeSymlink == 0 {
		t.Errorf("the link is gone: %v, %v", info, err)
	}
}

func TestABookHasOneLockUnderAllItsNames(t *testing.T) {
	path := written(t)
	link := filepath.Join(t.TempDir(), "link.lidmark")
	check(t, os.Symlink(path, link))
	b, err := Open(path, Options{})
	check(t, err)
	defer func() { check(t, b.Close()) }()
	if _, err := Open(link, Options{}); !errors.Is(err, InUse) {
		t.Errorf("through a link: %v, want %v", err, InUse)
	}
}

// say writes a text, then fails with err.
func say(text string, end error) func(io.Writer) error {
	return func(w io.Writer) error {
		_, err := io.WriteString(w, text)
		return errors.Join(err, end)
	}
}
