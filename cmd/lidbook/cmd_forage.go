package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func forageCommand(a *app) *cobra.Command {
	wasps := false
	c := a.writing(&cobra.Command{
		Use:       "forage flow|dearth",
		Short:     "Write down that a yard is in flow or in dearth from now on, and whether wasps are about",
		Example:   "  lidbook forage dearth --on yesterday\n  lidbook forage dearth --wasps",
		Args:      cobra.ExactArgs(1),
		ValidArgs: []string{"flow", "dearth"},
	}, func(d *desk, _ *cobra.Command, args []string) error {
		y, err := finder{View: d.view()}.homeOr(a.flags.yard)
		if err != nil {
			return err
		}
		f := book.ForageSeen{Yard: y.Yard, Wasps: wasps}
		if err := f.Forage.UnmarshalText([]byte(args[0])); err != nil {
			return err
		}
		return d.write(f)
	})
	c.Flags().BoolVar(&wasps, "wasps", false, "wasps are about the boxes")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}
