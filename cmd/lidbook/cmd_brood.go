package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func broodCommand(a *app) *cobra.Command {
	var g book.BroodGiven
	var from string
	c := a.writing(&cobra.Command{
		Use:     "brood TO...",
		Short:   "Write down combs of brood given to a colony or nuc",
		Long:    "Open brood in a colony that would raise a queen from it starts a clock of wild\ncells: it must be searched in time.",
		Example: "  lidbook brood S3 --combs 2 --open 8 --from S2",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		all, err := f.units(args...)
		if err != nil {
			return err
		}
		if from != "" {
			if g.From, err = f.unit(from); err != nil {
				return err
			}
		}
		if g.Combs+g.Capped+g.Open == 0 {
			return fmt.Errorf("say how much for each: --combs, --capped or --open")
		}
		var facts []book.Fact
		for _, g.To = range all {
			facts = append(facts, g)
		}
		return d.write(facts...)
	})
	fl := c.Flags()
	amount(c, &g.Combs, "combs", 0, "how many combs")
	amount(c, &g.Capped, "capped", 0, "capped worker brood in palms (1 dm²)")
	amount(c, &g.Open, "open", 0, "eggs and larvae in palms (1 dm²)")
	fl.StringVar(&from, "from", "", "the `COLONY` or nuc it came from")
	fl.StringVar(&a.flags.yard, "yard", "", "look for a nuc's name in this `YARD` first")
	return c
}

func searchCommand(a *app) *cobra.Command {
	var found int
	c := a.writing(&cobra.Command{
		Use:     "search COLONY...",
		Short:   "Write down a search for wild cells",
		Example: "  lidbook search S3 --found 1\n  lidbook search S3 S4",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		all, err := finder{View: d.viewThen()}.units(args...)
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, of := range all {
			facts = append(facts, book.WildCellsSearched{In: of, Found: found})
		}
		return d.write(facts...)
	})
	amount(c, &found, "found", 0, "wild cells found in each and broken down")
	return c
}
