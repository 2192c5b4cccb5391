package main

import (
	"context"
	"os"
	"path/filepath"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/storage"
)

func copyCommand(a *app) *cobra.Command {
	return &cobra.Command{
		Use:     "copy FILE|FOLDER",
		Short:   "Make a checked copy of the book, which can stay open",
		Long:    "Makes a copy and reads it through. Into a folder it gets the book's name and the\nday. Beside the book is no place for it: with two books in a folder every command\nmust be told which is meant.",
		Example: "  lidbook copy /media/stick\n  lidbook copy /media/stick/hill-2027-05-15.lidmark",
		Args:    cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			b, err := a.openToRead()
			if err != nil {
				return err
			}
			defer b.Close() // nothing was written
			to, err := a.copyName(b.Path(), args[0])
			if err != nil {
				return err
			}
			if sameFolder(to, b.Path()) {
				return refuse("%s lies beside the book, and then nobody knows which is meant: name a folder, like %s", to, storage.CopiesFolder(b.Path()))
			}
			if err := b.Copy(context.Background(), to); err != nil {
				return err
			}
			a.line("copied to %s and read through", to)
			return nil
		},
	}
}

// copyName is the file of a copy: in a folder the book's name and the day.
func (a *app) copyName(book, to string) (string, error) {
	info, err := os.Stat(to)
	if err != nil || !info.IsDir() {
		return bookFile(to)
	}
	name := strings.TrimSuffix(filepath.Base(book), storage.Extension)
	return filepath.Join(to, name+a.now.Format("-2006-01-02")+storage.Extension), nil
}

func sameFolder(a, b string) bool {
	x, err := filepath.Abs(filepath.Dir(a))
	y, err2 := filepath.Abs(filepath.Dir(b))
	return err == nil && err2 == nil && x == y
}
