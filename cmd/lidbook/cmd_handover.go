package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func handOverCommand(a *app) *cobra.Command {
	var h book.QueenHandedOver
	var order string
	c := a.writing(&cobra.Command{
		Use:     "handover QUEEN...",
		Short:   "Write down that queens were handed over",
		Example: "  lidbook handover 7 8 --order 12 --attendants\n  lidbook handover \"Rook 3\" --to \"a neighbour\"",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.viewThen()}
		if order != "" {
			o, err := finder{View: d.view()}.order(order)
			if err != nil {
				return err
			}
			h.Order = o.Order
		}
		var facts []book.Fact
		for _, name := range args {
			q, err := f.queen(name)
			if err != nil {
				return err
			}
			h.Queen = q.Queen
			facts = append(facts, h)
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&order, "order", "", "for the order of this `NUMBER`")
	c.Flags().StringVar(&h.To, "to", "", "to `WHOM`")
	c.Flags().BoolVar(&h.With, "attendants", false, "with attendants")
	return c
}
