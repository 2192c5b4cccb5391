package main

import (
	"errors"
	"image/png"
	"io"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/storage"
	"lidmark/ui/picture"
	"lidmark/ui/state"
)

// demoBook is the demo season, made for the day of now in the zone of this
// machine.
func demoBook(now time.Time) *state.Book {
	entries := demo.Season(calendar.DayOf(now, time.Local), time.Local)
	return &state.Book{Season: book.NewSeason(time.LoadLocation, entries), Name: "demo season"}
}

// readBook reads a book that is only to be looked at.
func readBook(path string) (*state.Book, error) {
	b, err := storage.Open(path, storage.Options{ReadOnly: true})
	if err != nil {
		return nil, err
	}
	season, err := book.Read(b, time.LoadLocation)
	if err := errors.Join(err, b.Close()); err != nil {
		return nil, err
	}
	return &state.Book{Season: season, Name: nameOf(path), Path: path, ReadOnly: b.ReadOnly()}, nil
}

func paintPicture(o options) error {
	b, err := o.opened()
	if err != nil {
		return err
	}
	s := o.state(state.Prefs{})
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
		return demoBook(o.clock()), nil
	}
	return readBook(o.book)
}
