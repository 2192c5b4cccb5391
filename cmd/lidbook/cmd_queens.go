package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/bee"
	"lidmark/domain/book"
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
		o.Order, o.Number = book.OrderID(d.ids.next()), args[0]
		if o.Queens < 1 || by == "" {
			return fmt.Errorf("an order needs --queens and --until")
		}
		today := d.view().Today()
		if o.By, err = parseDay(by, today); err == nil && from != "" {
			o.From, err = parseDay(from, today)
		}
		if err != nil {
			return err
		}
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
	fl.BoolVar(&o.Clipped, "clipped", false, "with a clipped wing")
	signed(c, &o.Priority, "priority", "a smaller one is served first")
	fl.StringVar(&closed, "close", "", "close the order, and `WHY`")
	return c
}

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

func markCommand(a *app) *cobra.Command {
	var m book.QueenMarked
	c := a.writing(&cobra.Command{
		Use:     "mark NUC|QUEEN",
		Short:   "Write down a queen's mark; without a colour, that of the year she was born",
		Example: "  lidbook mark A3\n  lidbook mark A3 --colour white --disc 27",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		if n, err := f.nuc(args[0]); err == nil {
			m.Nuc, m.Queen = n.NucNamed.Nuc, n.Holds.Queen
		} else if q, err := f.queen(args[0]); err == nil {
			m.Queen = q.Queen
		} else {
			return err
		}
		if m.Colour == "" {
			m.Colour = bee.MarkColour(d.bornIn(f.Queen(m.Queen))).String()
		}
		if m.Queen.IsZero() {
			m.Queen = book.QueenID(d.ids.next())
		}
		return d.write(m)
	})
	c.Flags().StringVar(&m.Colour, "colour", "", "paint (else the international colour of the year)")
	c.Flags().StringVar(&m.Disc, "disc", "", "`NUMBER` of her disc")
	c.Flags().BoolVar(&m.Clipped, "clipped", false, "a wing was clipped")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for the name in this `YARD` first")
	return c
}

// bornIn is the year in which a queen was born, or this year where nobody said.
func (d *desk) bornIn(q *book.Queen) int {
	if !q.Born.IsZero() {
		return q.Born.In(d.zone).Year()
	}
	return d.at.Instant.In(d.zone).Year()
}

func bankCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:     "bank COLONY QUEEN...",
		Short:   "Write down that caged queens were hung into a bank",
		Example: "  lidbook bank S4 7 8 9",
		Args:    cobra.MinimumNArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.viewThen()}
		c, err := f.colony(args[0])
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, name := range args[1:] {
			q, err := f.queen(name)
			if err != nil {
				return err
			}
			if !q.Caged() {
				return fmt.Errorf("queen %s is in no cage: write down first where she was caught", strconv.Quote(strings.TrimSpace(name)))
			}
			facts = append(facts, book.QueenBanked{Queen: q.Queen, Bank: c.Colony})
		}
		return d.write(facts...)
	})
}
