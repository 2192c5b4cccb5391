package main

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/storage"
	"lidmark/ui/state"
)

// opened is a book that is open.
type opened struct {
	file  *storage.Book // nil: the demo season, which is kept nowhere
	stamp string        // of the file, before it was read
	mu    sync.Mutex
	shown *state.Book // with all that was written
}

// is tells whether b is of this opening of the book, as it is or as it was.
func (o *opened) is(b *state.Book) bool {
	return b != nil && o.now().Opening == b.Opening
}

// reads tells whether other is this book, opened anew.
func (o *opened) reads(other *opened) bool {
	return o != nil && o.file != nil && other.file != nil && sameFile(o.file.Path(), other.file.Path())
}

// now is the book as it is.
func (o *opened) now() *state.Book {
	o.mu.Lock()
	defer o.mu.Unlock()
	return o.shown
}

// append writes entries that make sense: all of them or none.
func (o *opened) append(now, saved time.Time, entries []book.Entry) (*state.Book, error) {
	o.mu.Lock()
	defer o.mu.Unlock()
	b := o.shown.With(entries...)
	if err := sense(b.Season, now, entries); err != nil {
		return nil, err
	}
	if o.file != nil {
		if err := o.file.Append(entries...); err != nil {
			return nil, err
		}
		b.Saved = saved
	}
	o.shown = b
	return b, nil
}

// sense tells why one of the entries cannot be meant.
func sense(season *book.Season, now time.Time, entries []book.Entry) error {
	v := season.At(now)
	for _, e := range entries {
		if err := rules.Sense(v, now, e); err != nil {
			return err
		}
	}
	return nil
}

// openFile opens the file of a book for writing, or to read where that cannot
// be, and tells why it cannot.
func openFile(path string, clock func() time.Time) (file *storage.Book, readOnly string, err error) {
	file, err = storage.Open(path, storage.Options{Now: clock})
	if err == nil {
		return file, file.ReadOnly(), nil
	}
	var trouble *storage.FileError
	if !errors.As(err, &trouble) {
		return nil, "", err
	}
	switch trouble.Trouble {
	case storage.InUse:
		readOnly = "another program has this book open" + heldBy(trouble.Holder, clock()) + "; close it there to write here"
	case storage.ReadOnlyFolder, storage.Guarded:
		readOnly = trouble.Trouble.Error() + "; copy the book to a folder of your own to write in it"
	default:
		return nil, "", err
	}
	file, failed := storage.Open(path, storage.Options{ReadOnly: true, Now: clock})
	if failed != nil {
		return nil, "", err
	}
	return file, readOnly, nil
}

// stampOf is the size and the time of the file and of the log beside it, in
// which SQLite keeps what was written last: it changes when somebody writes.
func stampOf(path string) string {
	var stamp strings.Builder
	for _, file := range []string{path, path + "-wal"} {
		if info, err := os.Stat(file); err == nil {
			fmt.Fprintln(&stamp, info.Size(), info.ModTime().UnixNano())
		}
	}
	return stamp.String()
}

// nameOf is a book's name as the window shows it.
func nameOf(path string) string { return strings.TrimSuffix(filepath.Base(path), storage.Extension) }

// heldBy says who has a book open and since when, by the clock of this machine.
func heldBy(h storage.Holder, now time.Time) string {
	if h.PID == 0 {
		return ""
	}
	since, layout := h.Since.In(now.Location()), "15:04"
	if since.Format(time.DateOnly) != now.Format(time.DateOnly) {
		layout = "Mon 2 Jan 15:04"
	}
	return fmt.Sprintf(" (process %d on %s since %s)", h.PID, h.Host, since.Format(layout))
}
