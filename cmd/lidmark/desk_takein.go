package main

import (
	"context"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
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
	before := o.now().Season
	var err error
	d.writes.wait(func() { err = d.takenIn(ctx, o, path, tell) }) // deeds sent meanwhile are written behind it
	if err != nil {
		tell(bad(err.Error()))
		return
	}
	tell(good("taken in from " + name + ": " + state.TakenIn(before, o.now().Season, d.clock())))
}

// takenIn adds what a file holds to the open book, and shows the book with it.
func (d *desk) takenIn(ctx context.Context, o *opened, path string, tell func(state.Msg)) error {
	if err := taken(o.file, path, d); err != nil {
		return err
	}
	b := o.now()
	// What is in the file is shown: this is not stopped any more.
	season, err := book.Read(told{o.file, context.WithoutCancel(ctx), "reading " + b.Name, tell}, time.LoadLocation)
	if err != nil {
		return fmt.Errorf("%s is shown as it was before: %w; open it anew", b.Name, err)
	}
	next := &state.Book{Season: season, Name: b.Name, Path: b.Path, Saved: d.clock(), Opening: b.Opening}
	o.mu.Lock()
	o.shown = next
	o.mu.Unlock()
	next.On(d.clock(), calendar.DayOf(d.clock(), next.Zone(d.clock())))
	tell(state.TookIn{Book: next, IDs: newIDs(d.clock(), season)})
	return nil
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
		return fmt.Errorf("%s cannot be read (%w): check that its disk is there and that you may read it, and choose it again", filepath.Base(path), err)
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
