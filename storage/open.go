package storage

import (
	"database/sql"
	"errors"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"time"

	"github.com/gofrs/flock"

	"lidmark/domain/book"
)

// Options say how a book is opened. The zero Options open it for writing.
type Options struct {
	ReadOnly bool             // take no lock and write nothing
	Now      func() time.Time // the clock, for the lock and the names of copies; nil is time.Now
	Keep     int              // how many copies are kept; 0 is DefaultKeep
	Patience time.Duration    // how long to wait for a program that has the file locked; 0 is 5 s
}

func (o Options) now() time.Time {
	if o.Now == nil {
		return time.Now()
	}
	return o.Now()
}

// Book is a book on disk. It is a [book.Journal], and may be used by several
// goroutines.
type Book struct {
	path     string
	options  Options
	read     *sql.DB
	write    *sql.DB      // nil when the book is open to read only
	lock     *flock.Flock // nil when the book is open to read only
	readOnly string
	newer    bool // entries that this version does not understand are left out
}

var _ book.Journal = (*Book)(nil)

// Create makes a new, empty book at path and opens it for writing. It never
// replaces a file. Errors are a [*FileError].
func Create(path string) (*Book, error) { return create(path, Options{}, scripts()) }

func create(path string, o Options, scripts []string) (*Book, error) {
	path = resolved(path)
	if folder := filepath.Dir(path); missing(folder) {
		return nil, &FileError{Path: path, Trouble: NoFolder, Detail: folder}
	}
	if _, err := os.Lstat(path); !errors.Is(err, fs.ErrNotExist) {
		return nil, &FileError{Path: path, Trouble: Exists, Cause: err}
	}
	if err := mayBeFile(path); err != nil {
		return nil, err
	}
	lock, err := lockBook(path, o.now())
	if err != nil {
		return nil, err
	}
	// Made under another name, so that a half-made file is never a book.
	draft := path + ".new"
	_ = os.Remove(draft)
	if err := errors.Join(migrate(draft, scripts), syncFile(draft)); err != nil {
		_ = os.Remove(draft)
		_ = lock.Close()
		return nil, trouble(path, err)
	}
	if err := moveInto(draft, path); err != nil {
		_ = lock.Close()
		return nil, trouble(path, err)
	}
	return openLocked(path, o, lock)
}

// Open opens the book at path. A book of an earlier version is brought up to
// date, after a copy was made; one of a newer version is opened to read only.
// Errors are a [*FileError]; what it says of the file has not changed the file.
func Open(path string, o Options) (*Book, error) { return open(path, o, scripts()) }

func open(path string, o Options, scripts []string) (*Book, error) {
	path = resolved(path)
	version, err := peek(path)
	switch {
	case err != nil:
		return nil, err
	case version > len(scripts):
		return openToRead(path, o, Newer)
	case o.ReadOnly && version < len(scripts):
		return nil, &FileError{Path: path, Trouble: Older}
	case o.ReadOnly:
		return openToRead(path, o, OpenedToRead)
	}
	lock, err := lockBook(path, o.now())
	if err != nil {
		return nil, err
	}
	if err := upgrade(path, o, scripts); err != nil {
		_ = lock.Close()
		return nil, err
	}
	return openLocked(path, o, lock)
}

func openLocked(path string, o Options, lock *flock.Flock) (*Book, error) {
	b := &Book{path: path, options: o, lock: lock}
	var err error
	if b.write, err = dial(path, writing.patient(o.Patience), 1, "mode=rw", "_txlock=immediate"); err != nil {
		_ = b.Close()
		return nil, err
	}
	if b.read, err = dial(path, reading, readers, "mode=ro"); err != nil {
		_ = b.Close()
		return nil, err
	}
	return b, nil
}

func openToRead(path string, o Options, why Trouble) (*Book, error) {
	db, err := dialToRead(path, reading)
	if err != nil {
		return nil, err
	}
	b := &Book{path: path, options: o, read: db, newer: why == Newer}
	b.readOnly = filepath.Base(path) + ": " + why.Error() + "; " + why.Do()
	if b.newer {
		b.readOnly += "; entries that this version does not understand are left out"
	}
	return b, nil
}

// dialToRead opens the file to read only. SQLite shares a book between
// programs through files beside it; where it may not make those, the file is
// read as one that nobody changes, unless there are entries in a log beside
// it that would be missed.
func dialToRead(path string, set pragmas) (*sql.DB, error) {
	db, err := dial(path, set, readers, "mode=ro")
	if err == nil {
		if err = readable(db); err == nil {
			return db, nil
		}
		_ = db.Close()
	}
	if !errors.Is(trouble(path, err), ReadOnlyFolder) {
		return nil, trouble(path, err)
	}
	if log, statErr := os.Stat(path + "-wal"); statErr == nil && log.Size() > 0 {
		return nil, trouble(path, err)
	}
	if f, openErr := os.Open(path); openErr != nil {
		return nil, &FileError{Path: path, Trouble: Denied, Cause: openErr}
	} else if err := f.Close(); err != nil {
		return nil, trouble(path, err)
	}
	return dial(path, set, readers, "mode=ro", "immutable=1")
}

// readable reads the header and the list of tables.
func readable(db *sql.DB) error {
	var n int
	return db.QueryRow("SELECT count(*) FROM sqlite_schema").Scan(&n)
}

// peek tells which version of book the file at path is, writing nothing.
func peek(path string) (version int, err error) {
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return 0, statTrouble(path, err)
	case info.IsDir():
		return 0, &FileError{Path: path, Trouble: IsFolder}
	case info.Size() == 0:
		return 0, &FileError{Path: path, Trouble: NotABook, Detail: "it is empty"}
	case !info.Mode().IsRegular():
		return 0, &FileError{Path: path, Trouble: NotABook}
	}
	db, err := dialToRead(path, reading)
	if err != nil {
		return 0, err
	}
	defer func() { _ = db.Close() }()
	var app, tables int
	err = errors.Join(
		db.QueryRow("PRAGMA application_id").Scan(&app),
		db.QueryRow("PRAGMA user_version").Scan(&version),
		db.QueryRow("SELECT count(*) FROM sqlite_schema").Scan(&tables),
	)
	switch {
	case err != nil:
		return 0, trouble(path, err)
	case app != applicationID:
		return 0, &FileError{Path: path, Trouble: Foreign}
	case tables == 0:
		return 0, &FileError{Path: path, Trouble: Damaged, Detail: "it has no tables"}
	case version < 1:
		return 0, &FileError{Path: path, Trouble: Damaged, Detail: "its version does not fit its tables"}
	}
	return version, nil
}

func statTrouble(path string, err error) error {
	if errors.Is(err, fs.ErrPermission) {
		return &FileError{Path: path, Trouble: Denied, Cause: err}
	}
	return trouble(path, err)
}

// Path is where the book is.
func (b *Book) Path() string { return b.path }

// ReadOnly says why nothing can be written in the book and what to do, as a
// sentence; "" when it is open for writing.
func (b *Book) ReadOnly() string { return b.readOnly }

// Close closes the book and frees it for other programs. Everything appended
// is on disk already.
func (b *Book) Close() error {
	var errs []error
	// The writer last: the last connection to close folds the log into the
	// file, and only a writer can.
	if b.read != nil {
		errs = append(errs, b.read.Close())
	}
	if b.write != nil {
		errs = append(errs, b.write.Close())
	}
	if b.lock != nil {
		errs = append(errs, b.lock.Close())
	}
	return errors.Join(errs...)
}

// stem is the book's file name without folder and ending.
func stem(path string) string {
	return strings.TrimSuffix(filepath.Base(path), Extension)
}

// Extension is how the name of a book's file ends.
const Extension = ".lidmark"
