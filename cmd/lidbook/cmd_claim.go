package main

import (
	"fmt"
	"strconv"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func claimCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:     "claim ORDER QUEENS WHY",
		Short:   "Write down a customer's claim: so many queens of an order, and why",
		Example: "  lidbook claim 12 2 \"dead on arrival\"",
		Args:    cobra.ExactArgs(3),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		o, err := finder{View: d.view()}.order(args[0])
		if err != nil {
			return err
		}
		n, err := strconv.Atoi(args[1])
		if err != nil || n < 1 || n > o.Queens {
			return fmt.Errorf("claim of %q queens: order %s is for %d", args[1], o.Number, o.Queens)
		}
		return d.write(book.Claimed{Order: o.Order, Queens: n, Why: args[2]})
	})
}
