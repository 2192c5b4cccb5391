package main

import (
	"fmt"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
)

func orderCommand(a *app) *cobra.Command {
	var o book.OrderTaken
	var from, by string
	var closed string
	c := a.writing(&cobra.Command{
		Use:     "order NUMBER",
		Short:   "Write down an order for queens, or that it is closed",
		Example: "  lidbook order 12 --customer \"Club\" --queens 6 --line Rook --until 2027-06-20\n  lidbook order 12 --close \"all handed over\"",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.view()}
		there, err := f.order(args[0])
		if closed != "" {
			if err != nil {
				return err
			}
			return d.write(book.OrderClosed{Order: there.Order, Why: closed})
		}
		if err == nil {
			return fmt.Errorf("order %s is there already: close it, or take another number", args[0])
		}
		o.Order, o.Number = book.OrderID(d.ids.Next()), args[0]
		if o.Queens < 1 || by == "" {
			return fmt.Errorf("an order needs --queens and --until")
		}
		today := d.view().Today()
		if o.By, err = line.ParseDay(by, today); err == nil && from != "" {
			o.From, err = line.ParseDay(from, today)
		}
		if err != nil {
			return err
		}
		o.Sent = o.Sent || o.Journey > 0
		return d.write(o)
	})
	fl := c.Flags()
	fl.StringVar(&o.Customer, "customer", "", "for `WHOM`")
	amount(c, &o.Queens, "queens", 0, "how many queens")
	fl.StringVar(&o.Line, "line", "", "of which `LINE` (else any)")
	fl.StringSliceVar(&o.Substitute, "or", nil, "other `LINES` that will do")
	fl.StringVar(&from, "from", "", "not before this `DAY`")
	fl.StringVar(&by, "until", "", "by this `DAY`")
	fl.BoolVar(&o.Marked, "marked", false, "marked")
	fl.BoolVar(&o.Disc, "disc", false, "with a numbered disc")
	fl.BoolVar(&o.Clipped, "clipped", false, "with a clipped wing")
	fl.BoolVar(&o.Sent, "sent", false, "sent by post or courier (else fetched)")
	amount(c, &o.Journey, "journey", 0, "`DAYS` on the way, if sent (else as in your numbers)")
	signed(c, &o.Priority, "priority", "a smaller one is served first; without: by date, after those with one")
	fl.StringVar(&closed, "close", "", "close the order, and `WHY`")
	return c
}
