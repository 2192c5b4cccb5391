package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func feedCommand(a *app) *cobra.Command {
	var litres, fondant float64
	c := a.writing(&cobra.Command{
		Use:     "feed NAME...",
		Short:   "Write down feed given to colonies or nucs",
		Example: "  lidbook feed S3 --litres 1\n  lidbook feed A1-A6 B2 --fondant 250",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		if litres+fondant == 0 {
			return fmt.Errorf("say how much: --litres of syrup or --fondant in g")
		}
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		all, err := f.units(args...)
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, to := range all {
			facts = append(facts, book.Fed{To: to, Litres: litres, Fondant: fondant})
		}
		return d.write(facts...)
	})
	amount(c, &litres, "litres", 0, "litres of syrup for each")
	amount(c, &fondant, "fondant", 0, "g of fondant for each")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for a nuc's name in this `YARD` first")
	return c
}
