package main

import (
	"context"
	"crypto/rand"
	"errors"
	"fmt"
	"iter"
	"os"
	"path/filepath"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/storage"
	"lidmark/ui/state"
)

// openDemo opens the demo season. What is written in it is kept nowhere.
func (d *desk) openDemo(_ context.Context, tell func(state.Msg)) {
	d.show(&opened{shown: demoBook(d.clock())}, tell)
}

// openBook opens the book in a file. What is open already stays as it is, unless
// it can be written in now and could not before.
func (d *desk) openBook(ctx context.Context, path string, tell func(state.Msg)) {
	path = absolute(path)
	old := d.opened()
	if old != nil && sameFile(old.now().Path, path) && old.now().ReadOnly == "" {
		tell(good(old.now().Name + " is open already"))
		return
	}
	tell(state.Working{Words: "opening " + nameOf(path), Share: -1})
	stamp := stampOf(path)
	file, readOnly, err := openFile(path, d.clock)
	if err != nil {
		tell(bad(err.Error()))
		return
	}
	d.read(ctx, &opened{file: file, stamp: stamp}, readOnly, tell)
}

// read reads a book that was opened, and shows it.
func (d *desk) read(ctx context.Context, o *opened, readOnly string, tell func(state.Msg)) {
	path := o.file.Path()
	season, err := book.Read(told{o.file, ctx, "opening " + nameOf(path), tell}, time.LoadLocation)
	if err != nil {
		_ = o.file.Close() // nothing was written
		tell(bad(stopped(ctx, err, nameOf(path)+" was not opened").Error()))
		return
	}
	o.shown = &state.Book{Season: season, Name: nameOf(path), Path: path, ReadOnly: readOnly}
	d.show(o, tell)
	if readOnly != "" {
		tell(good(readOnly))
		return
	}
	if _, err := o.file.CopyIfDue(ctx, d.clock()); err != nil && ctx.Err() == nil {
		tell(bad("no copy was made: " + err.Error()))
	}
}

// show puts a book into the window, read already, in the place of the one that
// is open. Deeds sent before are written first.
func (d *desk) show(o *opened, tell func(state.Msg)) {
	d.openings++
	b, now := o.shown, d.clock()
	b.Opening = d.openings
	b.On(now, calendar.DayOf(now, b.Zone(now)))
	ids := newIDs(now, b.Season)
	draft, trouble := d.draftOf(b)
	var old *opened
	d.writes.wait(func() { old = d.swap(o) })
	tell(state.Opened{Book: b, Again: old.reads(o), IDs: ids, Draft: draft})
	if trouble.Text == "" {
		trouble, d.trouble = d.trouble, state.Note{}
	}
	if trouble.Text != "" {
		tell(state.Worked{Note: trouble})
	}
	d.shut(old, tell)
}

// swap puts a book in the place of the one that is open.
func (d *desk) swap(o *opened) (old *opened) {
	d.mu.Lock()
	defer d.mu.Unlock()
	old, d.open = d.open, o
	return old
}

// shut closes a book that was open, with the copy that is due.
func (d *desk) shut(o *opened, tell func(state.Msg)) {
	if o == nil || o.file == nil {
		return
	}
	if o.file.ReadOnly() == "" {
		if _, err := o.file.CopyIfDue(context.Background(), d.clock()); err != nil {
			tell(bad("no copy was made: " + err.Error()))
		}
	}
	if err := o.file.Close(); err != nil {
		tell(bad(err.Error()))
	}
}

// newIDs makes ids above those of a season, with chance of this run alone.
func newIDs(now time.Time, s *book.Season) book.IDs {
	var seed [32]byte
	_, _ = rand.Read(seed[:]) // it never fails, says its documentation
	return book.NewIDs(now, s, seed)
}

// absolute is a path that names the file from wherever the program is started.
func absolute(path string) string {
	if real, err := filepath.EvalSymlinks(path); err == nil {
		path = real
	}
	if abs, err := filepath.Abs(path); err == nil {
		path = abs
	}
	return path
}

// sameFile tells whether two paths name one file that is there.
func sameFile(a, b string) bool {
	x, err := os.Stat(a)
	if err != nil {
		return false
	}
	y, err := os.Stat(b)
	return err == nil && os.SameFile(x, y)
}

// told is a book that tells how far it is read, and can be stopped.
type told struct {
	*storage.Book
	ctx   context.Context
	words string
	tell  func(state.Msg)
}

// steps is how often reading tells how far it is, at most.
const steps = 50

// Entries are those of the book until the reading is stopped.
func (t told) Entries() iter.Seq2[book.Entry, error] {
	return func(yield func(book.Entry, error) bool) {
		n, _ := t.Count() // without it nobody knows how far it is
		step := max(n/steps, 2000)
		i := 0
		for e, err := range t.Book.Entries() {
			if i++; i%step == 0 {
				t.tell(state.Working{Words: t.words, Share: float64(i) / float64(max(n, i))})
				if t.ctx.Err() != nil {
					yield(book.Entry{}, t.ctx.Err())
					return
				}
			}
			if !yield(e, err) {
				return
			}
		}
	}
}

// stopped is why something was not done: because it was stopped, or else err.
func stopped(ctx context.Context, err error, what string) error {
	if errors.Is(err, context.Canceled) && ctx.Err() != nil {
		return fmt.Errorf("stopped: %s", what)
	}
	return err
}
