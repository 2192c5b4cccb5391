package main

import (
	"fmt"
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
	all := d.view().LastDeed()
	if len(all) == 0 {
		return nil, fmt.Errorf("nothing is written yet that could be struck")
	}
	for _, e := range all {
		if _, founding := e.Fact.(book.YardDescribed); founding {
			return nil, refuse("what was written last is a yard with all that stands in it: to strike one entry of it, name it by its id, see lidbook lines --ids")
		}
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
