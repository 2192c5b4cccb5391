package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/storage"
	"lidmark/storage/jsonl"
	"lidmark/ui/state"
)

// takeIn adds the entries of another book, or of JSON Lines, and shows the book
// anew. All of them are taken in, or none.
func (d *desk) takeIn(ctx context.Context, path string, tell func(state.Msg)) {
	o, ok := d.ofFile(tell)
	if !ok {
		return
	}
	name := filepath.Base(path)
	tell(state.Working{Words: "taking in " + name, Share: -1})
	before, err := o.file.Count()
	if err == nil {
		d.writes.wait(func() { err = taken(o.file, path, d) })
	}
	if err != nil {
		tell(bad(err.Error()))
		return
	}
	after, err := o.file.Count()
	if err != nil {
		tell(bad(err.Error()))
		return
	}
	d.readAnew(ctx, o, tell)
	tell(good(fmt.Sprintf("taken in from %s: %d entries that were not in the book", name, after-before)))
}

// taken adds what a file holds to a book.
func taken(to *storage.Book, path string, d *desk) error {
	if strings.EqualFold(filepath.Ext(path), storage.Extension) {
		from, err := storage.Open(path, storage.Options{ReadOnly: true, Now: d.clock})
		if err != nil {
			return err
		}
		defer func() { _ = from.Close() }() // it was only read
		return to.Merge(from)
	}
	f, err := os.Open(path)
	if err != nil {
		return fmt.Errorf("%s cannot be read: %w", filepath.Base(path), err)
	}
	defer func() { _ = f.Close() }() // it was only read
	entries, refused, err := jsonl.Read(f, filepath.Base(path), func(e book.Entry) error { return rules.Plausible(e.Fact) })
	if err != nil {
		return err
	}
	if len(refused) > 0 {
		return fmt.Errorf("%w; %d such lines, nothing was taken in: mend the file and take it in again", refused[0], len(refused))
	}
	return to.Append(entries...)
}

// readAnew shows the book that is open with all that is in its file.
func (d *desk) readAnew(ctx context.Context, o *opened, tell func(state.Msg)) {
	b := o.now()
	season, err := book.Read(told{o.file, ctx, "reading " + b.Name, tell}, time.LoadLocation)
	if err != nil {
		tell(bad(stopped(ctx, err, "the book is shown as it was; open it anew").Error()))
		return
	}
	next := &state.Book{Season: season, Name: b.Name, Path: b.Path, ReadOnly: b.ReadOnly, Saved: d.clock()}
	o.mu.Lock()
	o.shown = next
	o.mu.Unlock()
	tell(state.Opened{Book: next, IDs: newIDs(d.clock(), season)})
}
