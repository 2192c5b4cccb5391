// Command lidmark is the window where a keeper of mating nucs keeps the book: the
// day's work, the yard, the nucs and the batches.
//
//	lidmark [flags] [BOOK]
//
// Without a book it opens the demo season with --demo, and else an empty window
// that says what to do first. With --picture it paints a room into a PNG file
// and needs no display.
package main

import (
	"errors"
	"flag"
	"fmt"
	"os"
	"runtime"
	_ "time/tzdata" // zones on machines that have none

	"fyne.io/fyne/v2/app"

	"lidmark/ui/state"
	"lidmark/ui/window"
)

func main() {
	err := run(os.Args[1:])
	if err != nil && !errors.Is(err, flag.ErrHelp) {
		fmt.Fprintln(os.Stderr, "lidmark:", err)
	}
	os.Exit(exitCode(err))
}

// usageError is a command line that was not understood.
type usageError struct{ error }

// exitCode is as with lidbook: 0 all is well, 1 something is wrong with what
// was asked, 2 the command line was not understood.
func exitCode(err error) int {
	var usage usageError
	switch {
	case err == nil, errors.Is(err, flag.ErrHelp):
		return 0
	case errors.As(err, &usage):
		return 2
	default:
		return 1
	}
}

func run(args []string) error {
	o, err := parse(args)
	if errors.Is(err, flag.ErrHelp) {
		return err
	}
	if err != nil {
		return usageError{err}
	}
	if o.picture != "" {
		return paintPicture(o)
	}
	return openWindow(o)
}

func openWindow(o options) error {
	if !hasDisplay(runtime.GOOS, os.Getenv) {
		return errors.New("there is no display here; paint a room with --picture FILE, or use lidbook")
	}
	a := app.NewWithID("lidmark.desktop")
	d := newDesk(configFolder(o.config), o.clock)
	defer d.Close(os.Stderr)
	prefs, note := d.prefs()
	s := o.state(prefs)
	s.Note, s.Machine = note, machine(s.Now)
	w, err := window.New(a, s, d)
	if err != nil {
		return err
	}
	switch {
	case o.demo:
		w.Perform(state.OpenDemo{})
	case o.book != "":
		w.Perform(state.OpenBook{Path: o.book})
	}
	w.Run(float32(s.Width), float32(s.Height), o.clock)
	return nil
}

// state is what the window begins with, before any book is open: what the
// command line asks for, else what the keeper chose before.
func (o options) state(p state.Prefs) state.State {
	width, height := windowSize(p)
	if o.width > 0 {
		width, height = o.width, o.height
	}
	p.Dark = p.Dark || o.dark
	if o.text > 0 {
		p.Text = o.text
	}
	return state.State{Now: o.clock(), Day: o.on, Width: width, Height: height, Prefs: p, Room: state.Yard}
}

// hasDisplay tells whether a window can be shown: elsewhere than on macOS and
// Windows the environment names the display.
func hasDisplay(system string, env func(string) string) bool {
	return system == "darwin" || system == "windows" || env("DISPLAY")+env("WAYLAND_DISPLAY") != ""
}
