package main

import (
	"context"
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/storage"
)

func checkCommand(a *app) *cobra.Command {
	return &cobra.Command{
		Use:   "check",
		Short: "Read the whole book and list what is wrong with the file",
		Args:  cobra.NoArgs,
		RunE: func(*cobra.Command, []string) error {
			b, err := a.openToRead()
			if err != nil {
				return err
			}
			defer b.Close() // nothing was written
			problems := b.Verify(context.Background())
			for _, p := range problems {
				a.line("%s", p)
			}
			if len(problems) > 0 {
				return fmt.Errorf("%s: %s; go on with a copy, they stand in %s", b.Path(), plural(len(problems), "problem"), storage.CopiesFolder(b.Path()))
			}
			n, err := b.Count()
			a.line("%s: %s, nothing is wrong", b.Path(), plural(n, "entry"))
			return err
		},
	}
}

func (a *app) openToRead() (*storage.Book, error) {
	path, err := a.bookPath()
	if err != nil {
		return nil, err
	}
	return storage.Open(path, storage.Options{ReadOnly: true, Now: a.clock})
}
