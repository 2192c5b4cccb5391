package main

import (
	"errors"
	"flag"
	"io"
	"strconv"
	"strings"
	"time"

	"lidmark/domain/calendar"
	"lidmark/ui/picture"
)

// options are what the command line asks for.
type options struct {
	book          string
	demo          bool
	on            calendar.Day
	picture, room string
	config        string  // where what the keeper chose is kept; "": where the system keeps such things
	width, height float64 // 0: as the window was last
	dark          bool    // else: as it was last
	text          float64 // 1 to 2; 0: as it was last
	clock         func() time.Time
}

func parse(args []string) (o options, err error) {
	f := flag.NewFlagSet("lidmark", flag.ContinueOnError)
	f.SetOutput(io.Discard) // what is wrong is said once, by main
	f.BoolVar(&o.demo, "demo", false, "open the demo season, made anew for today")
	f.Func("on", "the `day` looked at, like 2027-05-20 (default today)", func(s string) (err error) {
		o.on, err = calendar.ParseDay(s)
		return err
	})
	f.Func("now", "take this `time` for that of the clock, like \"2027-05-11 07:30\"", func(s string) error {
		at, err := time.ParseInLocation("2006-01-02 15:04", s, time.Local)
		if err != nil {
			return errors.New(`write it like "2027-05-11 07:30"`)
		}
		o.clock = func() time.Time { return at }
		return nil
	})
	f.StringVar(&o.picture, "picture", "", "paint a room into this PNG `file` and open no window")
	f.StringVar(&o.room, "room", "yard", "the `room` painted: "+strings.Join(picture.Rooms(), ", "))
	f.Func("size", "`width x height` of window or picture, like 1440x900 (else as it was last)", func(s string) (err error) {
		o.width, o.height, err = picture.Size(s)
		return err
	})
	f.StringVar(&o.config, "config", "", "the `folder` of what you chose for the window, and of drafts")
	f.BoolVar(&o.dark, "dark", false, "dark instead of light")
	f.Func("text", "text size in `per cent`, 100 to 200 (else as it was last)", func(s string) error {
		percent, err := strconv.ParseFloat(s, 64)
		if err != nil {
			return errors.New("write it as a number, like 150")
		}
		o.text, err = picture.TextSize(percent)
		return err
	})
	o.clock = time.Now
	books, err := parseAll(f, args)
	if err != nil {
		return o, err
	}
	if len(books) > 0 {
		o.book = books[0]
	}
	return o, o.check(f, len(books))
}

// parseAll reads flags before and behind the book, as people type them.
func parseAll(f *flag.FlagSet, args []string) (rest []string, err error) {
	for {
		switch err := f.Parse(args); {
		case errors.Is(err, flag.ErrHelp):
			usage(f)
			return nil, err
		case err != nil:
			return nil, misread(err)
		}
		if f.NArg() == 0 {
			return rest, nil
		}
		rest, args = append(rest, f.Arg(0)), f.Args()[1:]
	}
}

func (o options) check(f *flag.FlagSet, books int) error {
	asked := map[string]bool{}
	f.Visit(func(f *flag.Flag) { asked[f.Name] = true })
	switch {
	case books > 1:
		return errors.New("one book at a time: name one file")
	case books == 1 && o.demo:
		return errors.New("--demo opens the demo season; leave out the book, or leave out --demo")
	case books == 1 && o.book == "", asked["picture"] && o.picture == "":
		return errors.New("a file needs a name")
	case o.picture != "" && books == 0 && !o.demo:
		return errors.New("--picture: name a book, or use --demo")
	}
	return nil
}
