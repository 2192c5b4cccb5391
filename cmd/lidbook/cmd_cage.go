package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

func cageCommand(a *app) *cobra.Command {
	var bank string
	var cells bool
	c := a.writing(&cobra.Command{
		Use:     "cage BATCH CAGES",
		Short:   "Cage virgins of a batch, each under the number of her cage",
		Example: "  lidbook cage 4 1-5 --bank S4\n  lidbook cage 4 6-12 --cells     cells about to emerge",
		Args:    cobra.ExactArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.viewThen()}
		b, err := f.batch(args[0])
		if err != nil {
			return err
		}
		labels, err := line.Cages(args[1])
		if err != nil {
			return err
		}
		var to book.ColonyID
		if bank != "" {
			c, err := f.colony(bank)
			if err != nil {
				return err
			}
			to = c.Colony
		}
		var facts []book.Fact
		for _, label := range labels {
			facts = append(facts, book.VirginCaged{Queen: book.QueenID(d.ids.Next()), Batch: b.Batch, Label: label, Bank: to, Cell: cells})
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&bank, "bank", "", "into this bank `COLONY`")
	c.Flags().BoolVar(&cells, "cells", false, "they are cells about to emerge")
	return c
}
