package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

func makeUpCommand(a *app) *cobra.Command {
	var m book.NucMadeUp
	var from string
	c := a.writing(&cobra.Command{
		Use:     "makeup NUCS...",
		Short:   "Write down that nucs were made up",
		Example: "  lidbook makeup A1-A12 --cups 3 --from S2 --shut --food 400\n  lidbook makeup A1-A12 B1-B6 --cups 3",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		nucs, err := f.nucs(args...)
		if err != nil {
			return err
		}
		if from != "" {
			c, err := f.colony(from)
			if err != nil {
				return err
			}
			m.From = c.Colony
		}
		var facts []book.Fact
		for _, id := range nucs {
			m.Nuc = id
			facts = append(facts, m)
		}
		if err := plausible(facts...); err != nil {
			return err
		}
		d.minds(rules.MakeUp{Nucs: nucs, Cups: m.Cups, Shut: m.Shut, From: m.From})
		return d.write(facts...)
	})
	fl := c.Flags()
	amount(c, &m.Cups, "cups", 0, "cups of bees for each")
	amount(c, &m.Capped, "capped", 0, "capped worker brood for each, in palms (1 dm²)")
	amount(c, &m.Open, "open", 0, "eggs and larvae for each, in palms (1 dm²)")
	amount(c, &m.Food, "food", 0, "food for each, in g")
	fl.BoolVar(&m.Shut, "shut", false, "shut in at first")
	fl.StringVar(&from, "from", "", "the `COLONY` the bees came from")
	fl.StringVar(&a.flags.yard, "yard", "", "look for names in this `YARD` first")
	return c
}
