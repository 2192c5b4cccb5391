package main

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

func init() {
	register(groupDo, strikeCommand)
	register(groupSee, linesCommand)
	shapes["lines"] = []lineShape{}
}

func strikeCommand(a *app) *cobra.Command {
	var why string
	c := a.writing(&cobra.Command{
		Use:     "strike last|ENTRY",
		Short:   "Strike an entry: it counts as never written, and stays to be read",
		Long:    "Strikes an entry by its id, of which the first or last characters will do, or the\nlast one written. A strike can be struck in its turn.",
		Example: "  lidbook strike last --why \"wrong nuc\"\n  lidbook lines --ids             the entries and their ids\n  lidbook strike 8057",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		e, err := d.entry(args[0])
		if err != nil {
			return err
		}
		words := line.Words(e.Fact, line.In(d.view()))
		if err := d.append(d.entries(d.at, book.Struck{Entry: e.ID, Why: why})...); err != nil {
			return err
		}
		d.line("struck: %s (%s)", words, e.At.In(d.zone))
		return nil
	})
	c.Flags().StringVar(&why, "why", "", "the `REASON`")
	return c
}

// entry finds an entry by a part of its id that no other has.
func (d *desk) entry(id string) (found book.Entry, err error) {
	if id == "last" {
		e, ok := d.view().Last()
		if !ok {
			return e, fmt.Errorf("nothing is written yet that could be struck")
		}
		return e, nil
	}
	id = strings.ToLower(id)
	n := 0
	for e := range d.season.Entries() {
		if s := e.ID.String(); strings.HasPrefix(s, id) || strings.HasSuffix(s, id) {
			found = e
			n++
		}
	}
	switch n {
	case 1:
		return found, nil
	case 0:
		return found, fmt.Errorf("no entry %s: see the ids with lidbook lines --ids", id)
	default:
		return found, fmt.Errorf("%d entries begin or end with %s: write more of the id", n, id)
	}
}

func linesCommand(a *app) *cobra.Command {
	var showIDs bool
	var last int
	c := a.completes(a.reading(&cobra.Command{
		Use:     "lines [NAME]",
		Short:   "The lines of the book, the last ones written; or those about a thing",
		Example: "  lidbook lines\n  lidbook lines S2 --last 50\n  lidbook lines \"batch 4\" --ids",
		Args:    cobra.MaximumNArgs(1),
	}, func(_ *cobra.Command, v *book.View, args []string) error {
		all, err := a.linesOf(v, args)
		if err != nil {
			return err
		}
		all = all[max(0, len(all)-last):]
		return a.show(all, func() { a.printLines(all, showIDs) })
	}), thingNames)
	c.Flags().BoolVar(&showIDs, "ids", false, "with the ids of the entries")
	c.Flags().IntVar(&last, "last", 20, "how many")
	return c
}

func (a *app) linesOf(v *book.View, args []string) ([]lineShape, error) {
	all := []lineShape{}
	if len(args) == 1 {
		of, err := finder{View: v}.anything(args[0])
		if err != nil {
			return nil, err
		}
		return history(v, of), nil
	}
	entries := slices.Collect(v.All())
	slices.SortStableFunc(entries, func(x, y book.Entry) int { return strings.Compare(x.ID.String(), y.ID.String()) })
	for _, e := range entries {
		all = append(all, lineOf(v, book.Line{Entry: e}, book.Subject{}))
	}
	return all, nil
}

func (a *app) printLines(all []lineShape, showIDs bool) {
	var rows [][]string
	for _, l := range all {
		row := []string{l.At[:len("2027-05-15")], l.Words, l.Writer}
		if l.Part == "" {
			row[0] = strings.Replace(l.At[:len("2027-05-15T18:00")], "T", " ", 1)
		}
		if l.Struck {
			row[1] = "struck: " + row[1]
		}
		if showIDs {
			row = append([]string{l.ID}, row...)
		}
		rows = append(rows, row)
	}
	a.table(rows)
}
