package main

import (
	"errors"
	"image/png"
	"io"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/storage"
	"lidmark/ui/picture"
	"lidmark/ui/state"
)

func pictureCommand(a *app) *cobra.Command {
	var room, size string
	var dark bool
	var text float64
	c := a.reading(&cobra.Command{
		Use:     "picture FILE.png",
		Short:   "Paint a room of the window as a picture",
		Long:    "Paints what the window would show into a PNG file. It needs no display.",
		Example: "  lidbook picture yard.png --demo\n  lidbook picture today.png --room today --on +3 --dark --text 150",
		Args:    cobra.ExactArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		s := state.State{Book: &state.Book{Season: v.Season(), Name: a.bookName()}, Now: a.now}
		if !a.flags.demo {
			s.Book.Path, _ = a.bookPath() // the book was opened: there is one
		}
		s.Dark = dark
		if v.On() != a.now {
			s.Day = v.Today()
		}
		var err, errText error
		s.Width, s.Height, err = picture.Size(size)
		s.Text, errText = picture.TextSize(text)
		if err := errors.Join(err, errText); err != nil {
			return &usageError{err: err}
		}
		return paintRoom(s, room, args[0])
	})
	f := c.Flags()
	f.StringVar(&room, "room", "yard", "the `ROOM`: "+strings.Join(picture.Rooms(), ", "))
	f.StringVar(&size, "size", "1440x900", "`WIDTHxHEIGHT`")
	f.BoolVar(&dark, "dark", false, "dark instead of light")
	amount(c, &text, "text", 100, "text size in per cent")
	hideFlags(c, "json", "known")
	return c
}

func paintRoom(s state.State, room, file string) error {
	s, err := picture.Enter(s, room)
	if err != nil {
		return &usageError{err: err}
	}
	img, err := picture.Of(s, 1)
	if err != nil {
		return err
	}
	return storage.WriteFile(file, func(w io.Writer) error { return png.Encode(w, img) })
}

// bookName is the book as the foot of the window names it.
func (a *app) bookName() string {
	if a.flags.demo {
		return "demo season"
	}
	path, err := a.bookPath()
	if err != nil {
		return ""
	}
	return strings.TrimSuffix(filepath.Base(path), storage.Extension)
}

func hideFlags(c *cobra.Command, names ...string) {
	for _, name := range names {
		if err := c.Flags().MarkHidden(name); err != nil {
			panic(err) // the flags were defined by reading
		}
	}
}
