package main

import (
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

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
	amount(c, &last, "last", 20, "how many")
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
	struck := entriesByID(v)
	slices.SortStableFunc(entries, func(x, y book.Entry) int { return strings.Compare(x.ID.String(), y.ID.String()) })
	for _, e := range entries {
		l := lineOf(v, book.Line{Entry: e}, book.Subject{})
		if f, ok := e.Fact.(book.Struck); ok {
			l.Words = struckWords(v, struck[f.Entry], f)
		}
		all = append(all, l)
	}
	return all, nil
}

func entriesByID(v *book.View) map[book.EntryID]book.Entry {
	all := map[book.EntryID]book.Entry{}
	for e := range v.Season().Entries() {
		all[e.ID] = e
	}
	return all
}

// struckWords tell which entry a strike struck.
func struckWords(v *book.View, e book.Entry, f book.Struck) string {
	if e.ID.IsZero() {
		return line.Words(f, line.In(v)) // it struck what is in another copy of the book
	}
	words := "an entry struck: " + line.Words(e.Fact, line.In(v)) + " (" + e.At.In(v.Zone()) + ")"
	return words + prefixed(", ", f.Why)
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
