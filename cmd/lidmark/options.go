package main

import (
	"errors"
	"flag"
	"fmt"
	"strings"
	"time"

	"lidmark/domain/calendar"
	"lidmark/ui/picture"
	"lidmark/ui/state"
)

// options are what the command line asks for.
type options struct {
	book          string
	demo          bool
	on            calendar.Day
	picture, room string
	width, height float64
	dark          bool
	text          float64 // per cent
	clock         func() time.Time
}

func parse(args []string) (o options, err error) {
	f := flag.NewFlagSet("lidmark", flag.ContinueOnError)
	f.Usage = func() {
		_, _ = fmt.Fprintln(f.Output(), "lidmark [flags] [BOOK]\n\nOpens a book in the window, or paints a room of it with -picture.\n\nflags:")
		f.PrintDefaults()
	}
	f.BoolVar(&o.demo, "demo", false, "open the demo season, made anew for today")
	f.Func("on", "the `day` looked at, like 2027-05-20 (default today)", func(s string) (err error) {
		o.on, err = calendar.ParseDay(s)
		return err
	})
	f.Func("now", "take this `time` for that of the clock, like \"2027-05-11 07:30\"", func(s string) error {
		at, err := time.ParseInLocation("2006-01-02 15:04", s, time.Local)
		o.clock = func() time.Time { return at }
		return err
	})
	f.StringVar(&o.picture, "picture", "", "paint a room into this PNG `file` and open no window")
	f.StringVar(&o.room, "room", "yard", "the `room` painted: "+strings.Join(picture.Rooms(), ", "))
	f.Func("size", "`width x height` of window or picture, like 1440x900 (the default)", func(s string) error {
		_, err := fmt.Sscanf(s, "%fx%f", &o.width, &o.height)
		if err != nil || o.width < state.LeastWidth || o.height < state.LeastHeight {
			return fmt.Errorf("write it like 1440x900, at least %gx%g", state.LeastWidth, state.LeastHeight)
		}
		return nil
	})
	f.BoolVar(&o.dark, "dark", false, "dark instead of light")
	f.Float64Var(&o.text, "text", 100, "text size in `per cent`, 100 to 200")
	o.width, o.height, o.clock = 1440, 900, time.Now
	if err := f.Parse(args); err != nil {
		return o, err
	}
	o.book = f.Arg(0)
	return o, o.check(f.NArg())
}

func (o options) check(books int) error {
	switch {
	case books > 1:
		return errors.New("one book at a time: name one file")
	case books == 1 && o.demo:
		return errors.New("-demo opens the demo season; leave out the book, or leave out -demo")
	case o.text < 100 || o.text > 200:
		return fmt.Errorf("-text %g: use 100 to 200", o.text)
	case o.picture != "" && books == 0 && !o.demo:
		return errors.New("-picture: name a book, or use -demo")
	}
	return nil
}
