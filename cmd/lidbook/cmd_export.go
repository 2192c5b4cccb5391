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
		Use:       "export jsonl|nucs|batches|looks|plans|orders",
		Short:     "The book in open forms: all entries as JSON Lines, or a table as CSV or XLSX",
		Example:   "  lidbook export jsonl --to hill.jsonl\n  lidbook export nucs > nucs.csv\n  lidbook export looks --to looks.xlsx",
		Args:      cobra.ExactArgs(1),
		ValidArgs: []string{"jsonl", "nucs", "batches", "looks", "plans", "orders"},
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		write, err := exporter(v, args[0], to)
		if err != nil {
			return err
		}
		if to == "" {
			return write(a.file)
		}
		return storage.WriteFile(to, write)
	})
	c.Flags().StringVar(&to, "to", "", "write to `FILE` instead of here; a table as a workbook if it ends in .xlsx")
	return c
}

// exporter writes the season in a form, to a file of a name or here for none.
// JSON Lines have every entry, whatever day is looked at; tables are as of that
// day.
func exporter(v *book.View, form, to string) (func(io.Writer) error, error) {
	if form == "jsonl" {
		return func(w io.Writer) error { return jsonl.WriteSeason(w, v.Season()) }, nil
	}
	tables := map[string]func(*book.View) table.Table{
		"nucs": table.Nucs, "batches": table.Batches, "looks": table.Looks, "plans": table.Plans, "orders": table.Orders,
	}
	made, ok := tables[form]
	if !ok {
		return nil, &usageError{err: fmt.Errorf("export %q: choose jsonl, nucs, batches, looks, plans or orders", form)}
	}
	return func(w io.Writer) error { return made(v).WriteAs(to, form, w) }, nil
}
