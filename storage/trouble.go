package storage

import (
	"errors"
	"fmt"
	"io/fs"
	"path/filepath"
	"syscall"

	"modernc.org/sqlite"
	lib "modernc.org/sqlite/lib"
)

// Trouble is what is wrong with a file. It is the part of a [FileError] to
// ask for: errors.Is(err, storage.DiskFull).
type Trouble uint8

// The troubles a book can have.
const (
	Missing Trouble = iota + 1
	NoFolder
	IsFolder
	Exists
	NotABook
	Foreign
	Damaged
	InUse
	Locked
	ReadOnlyFolder
	Denied
	DiskFull
	DiskFault
	Unsafe
	Newer
	Older
	OpenedToRead
	IsBook
	Guarded
)

// troubles has for each trouble what is wrong and what to do about it.
var troubles = [...]struct{ why, do string }{
	Missing:        {"there is no such file", "check the name, or make a new book of that name"},
	NoFolder:       {"there is no such folder", "make the folder first, or choose another"},
	IsFolder:       {"this is a folder", "name a file in it"},
	Exists:         {"a file of this name is there already", "open it, or choose another name"},
	NotABook:       {"this is not a book", "choose a file that ends in .lidmark"},
	Foreign:        {"this file belongs to another program", "choose a file that ends in .lidmark"},
	Damaged:        {"the file is damaged", "leave it as it is and open the newest copy in the folder beside it that ends in .copies"},
	InUse:          {"the book is open in another program", "close it there, or open it here to read only"},
	Locked:         {"another program keeps the file locked", "close that program and try again"},
	ReadOnlyFolder: {"nothing may be written in this folder", "copy the book to a folder of your own, or open it to read only"},
	Denied:         {"you may not read this file", "ask its owner for leave, or choose another"},
	DiskFull:       {"the disk is full", "make room and do it again; what was saved before is safe"},
	DiskFault:      {"the disk could not be read or written", "check that it is still connected and do it again; what was saved before is safe"},
	Unsafe:         {"a book cannot be kept safely in this folder", "keep it on a disk of this computer and not on a network drive"},
	Newer:          {"the book was written by a newer version of Lidmark", "it may be read; to write in it, install that version"},
	Older:          {"the book was written by an earlier version of Lidmark", "open it once for writing, which brings it up to date and keeps a copy"},
	IsBook:         {"this is a book, and nothing else may be written over it", "choose another name"},
	Guarded:        {"the file may not be written", "choose another name, or lift its protection"},
	OpenedToRead:   {"the book was opened to read only", "close it and open it for writing"},
}

// Error is what is wrong, without the file and without advice.
func (t Trouble) Error() string { return troubles[t].why }

// Do is what a keeper can do about the trouble.
func (t Trouble) Do() string { return troubles[t].do }

// FileError is a trouble with a file: the file's path, the trouble, and what
// the system said, if anything. Both are found by [errors.Is].
type FileError struct {
	Path    string
	Trouble Trouble
	Detail  string // more of what is wrong, such as who has the book open
	Holder  Holder // who has it open; the zero Holder where nobody is known
	Cause   error
}

// Error names the file without its folder, says what is wrong and what to do.
func (e *FileError) Error() string {
	s := filepath.Base(e.Path) + ": " + e.Trouble.Error()
	if e.Detail != "" {
		s += " (" + e.Detail + ")"
	}
	return s + "; " + e.Trouble.Do()
}

// Unwrap gives the trouble and the cause to [errors.Is] and [errors.As].
func (e *FileError) Unwrap() []error {
	if e.Cause == nil {
		return []error{e.Trouble}
	}
	return []error{e.Trouble, e.Cause}
}

// trouble puts an error of SQLite or of the system into words, naming the
// file. Other errors come back as they are, with the file's name.
func trouble(path string, err error) error {
	var known *FileError
	if err == nil || errors.As(err, &known) {
		return err
	}
	var d damage
	if errors.As(err, &d) {
		return &FileError{Path: path, Trouble: Damaged, Detail: d.Error(), Cause: err}
	}
	if t := troubleOf(err); t != 0 {
		return &FileError{Path: path, Trouble: t, Cause: err}
	}
	var pe *fs.PathError
	if errors.As(err, &pe) {
		err = pe.Err // without the folder
	}
	return fmt.Errorf("%s: %w", filepath.Base(path), err)
}

func troubleOf(err error) Trouble {
	var se *sqlite.Error
	if errors.As(err, &se) {
		return sqliteTroubles[se.Code()&0xff]
	}
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return Missing
	case errors.Is(err, fs.ErrPermission), errors.Is(err, syscall.EROFS):
		return ReadOnlyFolder
	case errors.Is(err, syscall.ENOSPC):
		return DiskFull
	}
	return 0
}

// sqliteTroubles are the primary result codes that tell a trouble of the file.
// What is asked of SQLite is always the same, so that what it cannot make sense of
// is the file.
var sqliteTroubles = map[int]Trouble{
	lib.SQLITE_ERROR:    Damaged,
	lib.SQLITE_BUSY:     Locked,
	lib.SQLITE_LOCKED:   Locked,
	lib.SQLITE_READONLY: ReadOnlyFolder,
	lib.SQLITE_CANTOPEN: ReadOnlyFolder,
	lib.SQLITE_IOERR:    DiskFault,
	lib.SQLITE_CORRUPT:  Damaged,
	lib.SQLITE_NOTADB:   NotABook,
	lib.SQLITE_FULL:     DiskFull,
	lib.SQLITE_PERM:     Denied,
	lib.SQLITE_AUTH:     Denied,
}

// damage is something in a book that should not be so.
type damage struct{ error }

func (d damage) Unwrap() error { return d.error }
