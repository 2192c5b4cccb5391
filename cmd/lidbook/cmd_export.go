package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/plan"
	"lidmark/storage"
	"lidmark/storage/jsonl"
	"lidmark/storage/table"
)

func exportCommand(a *app) *cobra.Command {
	var to string
	c := a.reading(&cobra.Command{
		Use:       "export jsonl|nucs|batches|looks|plans|plan|orders [BATCH]",
		Short:     "The book in open forms: all entries as JSON Lines, or a table as CSV or XLSX",
		Example:   "  lidbook export jsonl --to hill.jsonl\n  lidbook export nucs > nucs.csv\n  lidbook export looks --to looks.xlsx\n  lidbook export plan 2027-04-19 --to plan.xlsx",
		Args:      cobra.RangeArgs(1, 2),
		ValidArgs: []string{"jsonl", "nucs", "batches", "looks", "plans", "plan", "orders"},
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		write, err := exporter(v, args, to)
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
func exporter(v *book.View, args []string, to string) (func(io.Writer) error, error) {
	form := args[0]
	if len(args) > 1 && form != "plan" {
		return nil, &usageError{err: fmt.Errorf("export %s: it takes no batch", form)}
	}
	switch form {
	case "plan":
		all, err := plannedOf(v, args[1:])
		return func(w io.Writer) error { return table.Plan(v, all...).WriteAs(to, form, w) }, err
	case "jsonl":
		return func(w io.Writer) error { return jsonl.WriteSeason(w, v.Season()) }, nil
	}
	tables := map[string]func(*book.View) table.Table{
		"nucs": table.Nucs, "batches": table.Batches, "looks": table.Looks, "plans": table.Plans, "orders": table.Orders,
	}
	made, ok := tables[form]
	if !ok {
		return nil, &usageError{err: fmt.Errorf("export %q: choose jsonl, nucs, batches, looks, plans, plan or orders", form)}
	}
	return func(w io.Writer) error { return made(v).WriteAs(to, form, w) }, nil
}

// plannedOf is the planned batch of a name with all that is reckoned of it; without a
// name all of them.
func plannedOf(v *book.View, names []string) (all []plan.Planned, err error) {
	p := plan.New(course.New(v))
	if len(names) > 0 {
		b, err := finder{View: v}.plan(names[0])
		if err != nil {
			return nil, err
		}
		return []plan.Planned{p.Planned(b)}, nil
	}
	for b := range v.Plans() {
		all = append(all, p.Planned(b))
	}
	return all, nil
}
