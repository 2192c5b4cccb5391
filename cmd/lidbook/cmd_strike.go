package main

import (
	"fmt"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

func strikeCommand(a *app) *cobra.Command {
	var why string
	c := a.writing(&cobra.Command{
		Use:   "strike last|ENTRY",
		Short: "Strike an entry: it counts as never written, and stays to be read",
		Long: "Strikes an entry by its id, of which the first or last characters will do. With\nlast it strikes what was written last: a typed line or a command about a row is\n" +
			"one deed, and all its entries go. A strike can be struck in its turn.",
		Example: "  lidbook strike last --why \"wrong nuc\"\n  lidbook lines --ids             the entries and their ids\n  lidbook strike 8057",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		struck, err := d.toStrike(args[0])
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, e := range struck {
			facts = append(facts, book.Struck{Entry: e.ID, Why: why})
		}
		names := line.In(d.view())
		if err := d.append(d.entries(d.at, facts...)...); err != nil {
			return err
		}
		if len(struck) > 1 {
			d.line("struck: %s that were written together", plural(len(struck), "entry"))
		}
		for _, e := range struck {
			d.line("struck: %s (%s)", line.Words(e.Fact, names), e.At.In(d.zone))
		}
		return nil
	})
	c.Flags().StringVar(&why, "why", "", "the `REASON`")
	return c
}

// toStrike are the entries of what was written last, or the one of an id.
func (d *desk) toStrike(id string) ([]book.Entry, error) {
	if id != "last" {
		e, err := d.entry(id)
		return []book.Entry{e}, err
	}
	v := d.view()
	last, ok := v.Last()
	if !ok {
		return nil, fmt.Errorf("nothing is written yet that could be struck")
	}
	var all []book.Entry
	for e := range v.All() {
		_, strike := e.Fact.(book.Struck)
		if strike || !e.Written.Equal(last.Written) || e.Writer != last.Writer || millisOf(e.ID) != millisOf(last.ID) {
			continue
		}
		if _, founding := e.Fact.(book.YardDescribed); founding {
			return nil, refuse("what was written last is a yard with all that stands in it: to strike one entry of it, name it by its id, see lidbook lines --ids")
		}
		all = append(all, e)
	}
	return all, nil
}

// entry finds an entry by a part of its id that no other has.
func (d *desk) entry(id string) (found book.Entry, err error) {
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
