package main

import (
	"errors"
	"fmt"
	"image/png"
	"io"
	"os"
	"path/filepath"
	"strings"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/storage"
	"lidmark/ui/picture"
	"lidmark/ui/state"
)

// shelf is where the window gets its books. The demo season is made for the day
// of its clock.
type shelf struct{ clock func() time.Time }

// Demo makes the demo season for today in the zone of this machine.
func (s shelf) Demo() (*state.Book, error) {
	entries := demo.Season(calendar.DayOf(s.clock(), time.Local), time.Local)
	return &state.Book{
		Season: book.NewSeason(time.LoadLocation, entries), Name: "demo season",
		ReadOnly: "this is the demo season, a summer moved to today: nothing is kept",
	}, nil
}

// Open reads a book from its file. The window of this version only looks, so
// the book is opened to read and stays free for others to write in.
func (shelf) Open(path string) (*state.Book, error) {
	b, err := storage.Open(path, storage.Options{ReadOnly: true})
	if err != nil {
		return nil, err
	}
	season, err := book.Read(b, time.LoadLocation)
	if err := errors.Join(err, b.Close()); err != nil {
		return nil, err
	}
	name := strings.TrimSuffix(filepath.Base(path), storage.Extension)
	return &state.Book{Season: season, Name: name, Path: path, ReadOnly: b.ReadOnly()}, nil
}

// Stamp is the size and the time of the file and of the log beside it, in which
// SQLite keeps what was written last.
func (shelf) Stamp(path string) string {
	var stamp strings.Builder
	for _, file := range []string{path, path + "-wal"} {
		if info, err := os.Stat(file); err == nil {
			fmt.Fprintln(&stamp, info.Size(), info.ModTime().UnixNano())
		}
	}
	return stamp.String()
}

func paintPicture(o options) error {
	b, err := o.opened()
	if err != nil {
		return err
	}
	s := o.state()
	s.Book = b
	if s, err = picture.Enter(s, o.room); err != nil {
		return err
	}
	img, err := picture.Of(s, 1)
	if err != nil {
		return err
	}
	return storage.WriteFile(o.picture, func(w io.Writer) error { return png.Encode(w, img) })
}

func (o options) opened() (*state.Book, error) {
	if o.demo {
		return shelf{o.clock}.Demo()
	}
	return shelf{o.clock}.Open(o.book)
}
