package main

import (
	"path/filepath"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/storage"
	"lidmark/ui/state"
)

// found makes a new book with its first entries and opens it. Where something is
// wrong it leaves nothing.
func (d *desk) found(e state.Found, tell func(state.Msg)) {
	path := e.Path
	if !strings.EqualFold(filepath.Ext(path), storage.Extension) {
		path += storage.Extension
	}
	season := book.NewSeason(time.LoadLocation, e.Entries)
	if err := sense(season, d.clock(), e.Entries); err != nil {
		tell(bad("the book was not begun: " + err.Error()))
		return
	}
	file, err := storage.CreateWith(path, e.Entries...)
	if err != nil {
		tell(bad(err.Error()))
		return
	}
	d.show(&opened{file: file, shown: &state.Book{
		Season: season, Name: nameOf(path), Path: absolute(path), Saved: d.clock(),
	}}, tell)
}
