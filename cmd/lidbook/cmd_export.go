package main

import (
	"fmt"
	"io"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/course"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/season"
	"lidmark/domain/yard"
	"lidmark/storage"
	"lidmark/storage/jsonl"
	"lidmark/storage/table"
)

func exportCommand(a *app) *cobra.Command {
	var to string
	var search bool
	var places positionFlags
	c := a.reading(&cobra.Command{
		Use:       "export jsonl|nucs|batches|looks|plans|plan|orders|season|handover|claims|buying|layout [BATCH|LAYOUT]",
		Short:     "The book in open forms: all entries as JSON Lines, or a table as CSV or XLSX",
		Long:      "Where yards lie and what stands where is in the entries, in a layout and in lidbook ground out;\nwith --coarse only to about a kilometre, with --no-positions not at all. No other table, paper\nor calendar says where on Earth a yard lies. What somebody typed as a note stays as it is.",
		Example:   "  lidbook export jsonl --to hill.jsonl\n  lidbook export nucs > nucs.csv\n  lidbook export looks --to looks.xlsx\n  lidbook export plan 2027-04-19 --to plan.xlsx\n  lidbook export season --search --to season.xlsx\n  lidbook export layout \"by the hedge\" --to layout.csv\n  lidbook export jsonl --no-positions --to hill.jsonl",
		Args:      cobra.RangeArgs(1, 2),
		ValidArgs: []string{"jsonl", "nucs", "batches", "looks", "plans", "plan", "orders", "season", "handover", "claims", "buying", "layout"},
	}, func(c *cobra.Command, v *book.View, args []string) error {
		how, err := places.of()
		if err != nil {
			return err
		}
		var found *season.Found
		if search && args[0] != "season" {
			return &usageError{err: fmt.Errorf("export %s: it takes no --search; season does", args[0])}
		}
		if search {
			dates, _ := a.search(c.Context(), plan.New(course.New(v)), seasonFlags{})
			found = &dates
		}
		if err := checkTable(to, args[0]); err != nil {
			return err
		}
		write, err := a.exporter(v, args, to, how, found)
		if err != nil {
			return err
		}
		if to == "" {
			return write(a.file)
		}
		if err := storage.WriteFile(to, write); err != nil {
			return err
		}
		a.line("%s: written", to)
		return nil
	})
	c.Flags().StringVar(&to, "to", "", "write to `FILE` instead of here; a table as a workbook if it ends in .xlsx")
	c.Flags().BoolVar(&search, "search", false, "season: look for the batches that keep all open orders too")
	places.flags(c)
	c.Flags().StringVar(&a.flags.yard, "yard", "", "layout: of this `YARD` (else the home yard, or the first with stands)")
	return c
}

// checkTable refuses the name of a file that is not written in a form.
func checkTable(to, form string) error {
	if form == "jsonl" {
		return checkEnding(to, "JSON Lines are", ".jsonl", ".json")
	}
	return checkEnding(to, "a table is", ".csv", ".xlsx")
}

// exporter writes the season in a form, to a file of a name or here for none.
// JSON Lines have every entry, whatever day is looked at; tables are as of that
// day; that of the season has the dates that were found.
func (a *app) exporter(v *book.View, args []string, to string, how book.Positions, found *season.Found) (func(io.Writer) error, error) {
	form := args[0]
	if len(args) > 1 && form != "plan" && form != "layout" {
		return nil, &usageError{err: fmt.Errorf("export %s: it takes no batch", form)}
	}
	switch form {
	case "plan":
		all, err := plannedOf(v, args[1:])
		return func(w io.Writer) error { return table.Plan(v, all...).WriteAs(to, form, w) }, err
	case "jsonl":
		return func(w io.Writer) error { return jsonl.WriteSeason(w, v.Season(), how) }, nil
	case "layout":
		made, err := a.layoutTable(v, args[1:], how)
		return func(w io.Writer) error { return made.WriteAs(to, form, w) }, err
	}
	tables := map[string]func(*book.View) table.Table{
		"nucs": table.Nucs, "batches": table.Batches, "looks": table.Looks, "orders": table.Orders,
		"plans":    func(v *book.View) table.Table { return plansTable(plan.New(course.New(v))) },
		"season":   func(v *book.View) table.Table { return seasonTable(v, season.Clashes(plan.New(course.New(v))), found) },
		"handover": func(v *book.View) table.Table { return handOverTable(plan.New(course.New(v))) },
		"claims":   func(v *book.View) table.Table { return claimsTable(handover.ClaimsOf(v)) },
		"buying":   func(v *book.View) table.Table { return buyingTable(plan.New(course.New(v)).Buys()) },
	}
	made, ok := tables[form]
	if !ok {
		return nil, &usageError{err: fmt.Errorf("export %q: choose jsonl, nucs, batches, looks, plans, plan, orders, season, handover, claims, buying or layout", form)}
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

// layoutTable is the table of the try-out of a name; without one of the yard's plan,
// else of how the yard stands.
func (a *app) layoutTable(v *book.View, names []string, how book.Positions) (t table.Table, err error) {
	f := finder{View: v}
	y, err := f.laidOr(a.flags.yard)
	if err != nil {
		return t, err
	}
	a.sayYard(v, y)
	kept, err := f.keptOrStanding(y, names)
	if err != nil {
		return t, err
	}
	now := yard.Of(v, y.Yard)
	return table.Layout(now, now.Try(kept.LayoutTried), how), nil
}
