package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func planForCommand(a *app) *cobra.Command {
	var orders []string
	var nobody bool
	c := a.completes(a.deciding(&cobra.Command{
		Use:     "for BATCH --order NUMBERS",
		Short:   "Say for which orders a planned graft is",
		Long:    "Says for which orders a planned graft is, in place of those it was planned for.",
		Example: "  lidbook plan for 2027-04-19 --order 12\n  lidbook plan for \"2027-04-21 Rook 12\" --order 12,14\n  lidbook plan for 2027-04-19 --nobody",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.view()}
		p, err := f.plan(args[0])
		if err != nil {
			return err
		}
		if nobody == (len(orders) > 0) {
			return fmt.Errorf("say with --order for which orders the graft is, or with --nobody that it is for none")
		}
		to := p.BatchPlanned
		if to.Orders, err = f.ordersNumbered(orders); err != nil {
			return err
		}
		return d.plans(to)
	}), planNames)
	fl := c.Flags()
	fl.StringSliceVar(&orders, "order", nil, "for the orders of these `NUMBERS`")
	fl.BoolVar(&nobody, "nobody", false, "for no order any more")
	_ = c.RegisterFlagCompletionFunc("order", a.namesFor(orderNumbers)) // it fails only where the flag is not there
	return c
}

// ordersNumbered are the orders of some numbers.
func (f finder) ordersNumbered(numbers []string) (all []book.OrderID, err error) {
	for _, number := range numbers {
		o, err := f.order(number)
		if err != nil {
			return nil, err
		}
		all = append(all, o.Order)
	}
	return all, nil
}
