package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/storage"
	"lidmark/storage/jsonl"
	"lidmark/storage/table"
)

func exportCommand(a *app) *cobra.Command {
	var to string
	c := a.reading(&cobra.Command{
		Use:       "export jsonl|nucs|batches|looks",
		Short:     "The book in open forms: all entries as JSON Lines, or a table as CSV",
		Example:   "  lidbook export jsonl --to hill.jsonl\n  lidbook export nucs > nucs.csv",
		Args:      cobra.ExactArgs(1),
		ValidArgs: []string{"jsonl", "nucs", "batches", "looks"},
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		write, err := exporter(v, args[0])
		if err != nil {
			return err
		}
		if to == "" {
			return write(a.file)
		}
		return storage.WriteFile(to, write)
	})
	c.Flags().StringVar(&to, "to", "", "write to `FILE` instead of here")
	return c
}

// exporter writes the season in a form. JSON Lines have every entry, whatever
// day is looked at; tables are as of that day.
func exporter(v *book.View, form string) (func(io.Writer) error, error) {
	switch form {
	case "jsonl":
		return func(w io.Writer) error { return jsonl.WriteSeason(w, v.Season()) }, nil
	case "nucs":
		return func(w io.Writer) error { return table.Nucs(v).Write(w, table.Format{}) }, nil
	case "batches":
		return func(w io.Writer) error { return table.Batches(v).Write(w, table.Format{}) }, nil
	case "looks":
		return func(w io.Writer) error { return table.Looks(v).Write(w, table.Format{}) }, nil
	default:
		return nil, &usageError{err: fmt.Errorf("export %q: choose jsonl, nucs, batches or looks", form)}
	}
}
