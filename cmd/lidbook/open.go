package main

import (
	"fmt"
	"path/filepath"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/line"
	"lidmark/storage"
)

// reading gives a command the flags of all that read, and a view of the book
// to read.
func (a *app) reading(c *cobra.Command, do func(*cobra.Command, *book.View, []string) error) *cobra.Command {
	f := c.Flags()
	f.BoolVar(&a.flags.demo, "demo", false, "read the demo season instead of a book")
	f.StringVar(&a.flags.on, "on", "", "as of a `DAY` or \"DAY TIME\": 2027-05-15, yesterday, +3, \"sat 18:00\"")
	f.StringVar(&a.flags.known, "known", "", "as it was known on a `DAY`")
	f.BoolVar(&a.flags.json, "json", false, "print JSON, with the names that lidbook json lists")
	c.RunE = func(c *cobra.Command, args []string) error {
		s, err := a.season()
		if err != nil {
			return err
		}
		v, err := a.view(s)
		if err != nil {
			return err
		}
		return do(c, v, args)
	}
	return c
}

// season reads the whole book, or makes the demo season as of today.
func (a *app) season() (*book.Season, error) {
	if a.flags.demo {
		return a.demoSeason(), nil
	}
	path, err := a.bookPath()
	if err != nil {
		return nil, err
	}
	b, err := storage.Open(path, storage.Options{ReadOnly: true, Now: a.clock})
	if err != nil {
		return nil, err
	}
	defer b.Close() // nothing was written
	return book.Read(b, time.LoadLocation)
}

func (a *app) demoSeason() *book.Season {
	zone := a.demoZone()
	return book.NewSeason(time.LoadLocation, demo.Season(calendar.DayOf(a.now, zone), zone))
}

func (a *app) clock() time.Time { return a.now }

// view is the season as of --on and --known.
func (a *app) view(s *book.Season) (*book.View, error) {
	on, known := a.now, time.Time{}
	zone := s.At(a.now).Zone()
	if a.flags.on != "" {
		w, err := line.ParseWhen(a.flags.on, calendar.DayOf(a.now, zone), zone)
		if err != nil {
			return nil, fmt.Errorf("--on: %w", err)
		}
		on = w.Instant(a.now, zone)
		if today := calendar.DayOf(a.now, zone); w.Day > today && a.flags.known == "" {
			if w.At.IsZero() {
				return s.Ahead(on, today), nil
			}
			return s.Later(on, today), nil
		}
	}
	if a.flags.known != "" {
		w, err := line.ParseWhen(a.flags.known, calendar.DayOf(a.now, zone), zone)
		if err != nil {
			return nil, fmt.Errorf("--known: %w", err)
		}
		known = w.Instant(a.now, zone)
	}
	return s.AsKnown(on, known), nil
}

// bookPath is the book that is meant: the one named, else that of the
// environment, else the only one in this folder.
func (a *app) bookPath() (string, error) {
	if a.flags.book != "" {
		return a.flags.book, nil
	}
	if path := a.env("LIDMARK_BOOK"); path != "" {
		return path, nil
	}
	found, err := filepath.Glob("*" + storage.Extension)
	if err != nil {
		return "", err
	}
	switch len(found) {
	case 1:
		return found[0], nil
	case 0:
		return "", fmt.Errorf("no book here: name one with --book FILE, begin one with lidbook new FILE, or look around with --demo")
	default:
		return "", fmt.Errorf("%d books here: %s; name one with --book FILE or set LIDMARK_BOOK, and keep copies in a folder of their own", len(found), shortList(found))
	}
}
