package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func countCommand(a *app) *cobra.Command {
	var take, capped, ripe, culled, out, dead int
	var why string
	c := a.writing(&cobra.Command{
		Use:     "count BATCH",
		Short:   "Count a batch: take, capped, ripe, culled, emerged",
		Example: "  lidbook count 4 --take 20\n  lidbook count 4 --capped 18 --culled 1\n  lidbook count 4 --emerged 3 --dead 1",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, c *cobra.Command, args []string) error {
		b, err := finder{View: d.viewThen()}.batch(args[0])
		if err != nil {
			return err
		}
		var facts []book.Fact
		add := func(flag string, n int, f book.Fact) {
			if c.Flags().Changed(flag) {
				facts = append(facts, f)
			}
			if n < 0 || n > b.Larvae {
				err = fmt.Errorf("--%s %d: batch %d had %s, write 0 to %d", flag, n, b.Number, plural(b.Larvae, "larva"), b.Larvae)
			}
		}
		add("take", take, book.TakeCounted{Batch: b.Batch, Accepted: take})
		add("capped", capped, book.CappedCounted{Batch: b.Batch, Capped: capped})
		add("ripe", ripe, book.RipeCounted{Batch: b.Batch, Ripe: ripe})
		add("culled", culled, book.CellsCulled{Batch: b.Batch, Cells: culled, Why: why})
		add("emerged", out, book.EmergedCounted{Batch: b.Batch, Out: out, Dead: dead})
		switch {
		case err != nil:
			return err
		case len(facts) == 0:
			return fmt.Errorf("nothing is counted: say --take, --capped, --ripe, --culled or --emerged")
		}
		return d.write(facts...)
	})
	fl := c.Flags()
	amount(c, &take, "take", 0, "grafts accepted by the builder")
	amount(c, &capped, "capped", 0, "capped cells")
	amount(c, &ripe, "ripe", 0, "ripe cells that are together now")
	amount(c, &culled, "culled", 0, "cells taken out for good")
	fl.StringVar(&why, "why", "", "the `REASON` they were culled")
	amount(c, &out, "emerged", 0, "virgins out of cells that were not given")
	amount(c, &dead, "dead", 0, "with --emerged: cells found dead")
	return c
}
