package storage

import (
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"runtime"
	"strings"

	"github.com/natefinch/atomic"
)

// WriteFile writes a file that is not a book, such as an export or a printed
// sheet, so that under its name stands either the whole new file or what was
// there before: it is written beside, synced, closed and renamed. Errors name
// the file. It follows a link to what the link names, writes straight into
// what is no plain file, such as a pipe, and never over a book.
func WriteFile(path string, write func(io.Writer) error) error {
	path = resolved(path)
	if isBook(path) {
		return &FileError{Path: path, Trouble: IsBook}
	}
	if err := mayBeFile(path); err != nil {
		return err
	}
	if info, err := os.Stat(path); err == nil && !info.Mode().IsRegular() {
		return trouble(path, writeStraight(path, write))
	}
	draft := path + draftEnding
	if err := writeSynced(draft, write); err != nil {
		_ = os.Remove(draft)
		return trouble(path, err)
	}
	return trouble(path, moveInto(draft, path))
}

// writeSynced writes a file that has reached the disk when it returns nil.
func writeSynced(path string, write func(io.Writer) error) error {
	f, err := os.Create(path)
	if err != nil {
		return err
	}
	err = write(f)
	if err == nil {
		err = f.Sync()
	}
	return errors.Join(err, f.Close())
}

// writeStraight writes into what is there already and is no plain file.
func writeStraight(path string, write func(io.Writer) error) error {
	f, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	return errors.Join(write(f), f.Close())
}

// mayBeFile tells why nothing can be written under a path: its folder is
// missing, it is a folder, or it may not be written.
func mayBeFile(path string) error {
	if folder := filepath.Dir(path); missing(folder) {
		return &FileError{Path: path, Trouble: NoFolder, Detail: folder}
	}
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return nil // it is not there yet
	case info.IsDir():
		return &FileError{Path: path, Trouble: IsFolder}
	case info.Mode().IsRegular() && info.Mode().Perm()&0o200 == 0:
		return &FileError{Path: path, Trouble: Guarded}
	}
	return nil
}

func missing(path string) bool {
	_, err := os.Stat(path)
	return errors.Is(err, fs.ErrNotExist)
}

// isBook tells a book by its name, which only books have, or by the first
// bytes of an SQLite file.
func isBook(path string) bool {
	if strings.EqualFold(filepath.Ext(path), Extension) {
		return true
	}
	info, err := os.Stat(path)
	if err != nil || !info.Mode().IsRegular() {
		return false
	}
	f, err := os.Open(path)
	if err != nil {
		return false
	}
	defer func() { _ = f.Close() }()
	head := make([]byte, len(sqliteHead))
	_, err = io.ReadFull(f, head)
	return err == nil && string(head) == sqliteHead
}

// sqliteHead is how every SQLite file begins (sqlite.org, Database File Format,
// section 1.3).
const sqliteHead = "SQLite format 3\x00"

// resolved is a path with its links followed, as far as it exists: a book has
// one lock, whatever it is called by.
func resolved(path string) string {
	if real, err := filepath.EvalSymlinks(path); err == nil {
		return real
	}
	if folder, err := filepath.EvalSymlinks(filepath.Dir(path)); err == nil {
		return filepath.Join(folder, filepath.Base(path))
	}
	return path
}

// moveInto gives a finished and synced file its name.
func moveInto(from, to string) error {
	if err := atomic.ReplaceFile(from, to); err != nil {
		return err
	}
	return syncFolder(to)
}

// syncFile makes sure that what was written to a file has reached the disk.
func syncFile(path string) error {
	f, err := os.OpenFile(path, os.O_RDWR, 0)
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}

// syncFolder makes sure that a new name in the folder of path has reached the
// disk. Windows has no such call and keeps names by itself.
func syncFolder(path string) error {
	if runtime.GOOS == "windows" {
		return nil
	}
	f, err := os.Open(filepath.Dir(path))
	if err != nil {
		return err
	}
	return errors.Join(f.Sync(), f.Close())
}
