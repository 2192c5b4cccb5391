package main

import (
	"cmp"
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/founding"
)

func addCombs(a *app) *cobra.Command {
	var comb founding.Combs
	c := a.adding(&cobra.Command{
		Use:     "combs NUCS...",
		Short:   "Say how much comb nucs have that are in the book",
		Example: "  lidbook add combs A1-A12 --kind half\n  lidbook add combs B1 B2 --sides 4 --comb 1.5",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, f finder, args []string) error {
		nucs, err := f.nucs(args...)
		if err != nil {
			return err
		}
		if comb, err = comb.Filled(); err != nil {
			return err
		}
		if comb.Sides == 0 && comb.Area == 0 {
			return fmt.Errorf("say their --kind, or --sides and --comb")
		}
		var facts []book.Fact
		for _, id := range nucs {
			n := f.Nuc(id).NucNamed
			n.Sides, n.Side = cmp.Or(comb.Sides, n.Sides), cmp.Or(comb.Area, n.Side)
			facts = append(facts, n)
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for names in this `YARD` first")
	combFlags(c, &comb)
	return c
}
