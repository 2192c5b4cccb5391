package main

import (
	"fmt"
	"strconv"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

// goods are things that are counted out and counted back.
type goods book.TakenAlong

func goodsCommand(use, short string, fact func(goods) book.Fact) func(*app) *cobra.Command {
	return func(a *app) *cobra.Command {
		var batch string
		c := a.writing(&cobra.Command{
			Use:     use + " COUNT cells|virgins|queens|cages",
			Short:   short,
			Example: "  lidbook " + use + " 48 cells --batch 4",
			Args:    cobra.ExactArgs(2),
		}, func(d *desk, _ *cobra.Command, args []string) error {
			n, err := strconv.Atoi(args[0])
			if err != nil || n < 1 {
				return fmt.Errorf("count %q: write a whole number, 1 or more", args[0])
			}
			g := goods{Count: n}
			if err := g.What.UnmarshalText([]byte(args[1])); err != nil {
				return err
			}
			if batch != "" {
				b, err := finder{View: d.viewThen()}.batch(batch)
				if err != nil {
					return err
				}
				g.Batch = b.Batch
			} else if g.What == book.Cells {
				return fmt.Errorf("cells of which batch: say --batch NUMBER")
			}
			return d.write(fact(g))
		})
		c.Flags().StringVar(&batch, "batch", "", "`NUMBER` of their batch")
		return c
	}
}
