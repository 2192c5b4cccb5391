// Command lidmark is the window where a keeper of mating nucs looks at the book:
// the day's work, the yard, the nucs and the batches.
//
//	lidmark [flags] [BOOK]
//
// Without a book it opens the demo season with -demo, and else an empty window
// that says what to do first. With -picture it paints a room into a PNG file
// and needs no display.
package main

import (
	"errors"
	"flag"
	"fmt"
	"os"
	_ "time/tzdata" // zones on machines that have none

	"fyne.io/fyne/v2/app"

	"lidmark/ui/state"
	"lidmark/ui/window"
)

func main() {
	if err := run(os.Args[1:]); err != nil {
		if !errors.Is(err, flag.ErrHelp) {
			fmt.Fprintln(os.Stderr, "lidmark:", err)
		}
		os.Exit(2)
	}
}

func run(args []string) error {
	o, err := parse(args)
	if err != nil {
		return err
	}
	if o.picture != "" {
		return paintPicture(o)
	}
	return openWindow(o)
}

func openWindow(o options) error {
	a := app.NewWithID("lidmark.desktop")
	a.Settings().SetTheme(window.Theme{})
	s := o.state()
	w, err := window.New(a, s, shelf{o.clock})
	if err != nil {
		return err
	}
	switch {
	case o.demo:
		w.OpenDemo()
	case o.book != "":
		w.OpenFile(o.book)
	}
	w.Run(float32(s.Width), float32(s.Height), o.clock)
	return nil
}

// state is what the window begins with, before any book is open.
func (o options) state() state.State {
	return state.State{
		Now: o.clock(), Day: o.on, Width: o.width, Height: o.height,
		Text: o.text / 100, Dark: o.dark, Room: state.Yard,
	}
}
