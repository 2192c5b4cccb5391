package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/rules"
)

// orderFlags are what is said of an order.
type orderFlags struct{ book.OrderTaken }

// days puts the days into an order as they were said, and tells what is missing in it.
func (o *orderFlags) days(from, by string, today calendar.Day) (err error) {
	if by != "" {
		o.By, err = line.ParseComing(by, today)
	}
	if err == nil && from != "" {
		o.From, err = line.ParseComing(from, today)
	}
	for i, l := range o.Substitute {
		o.Substitute[i] = strings.TrimSpace(l)
	}
	switch {
	case err != nil:
		return err
	case o.Line == "" && len(o.Substitute) > 0:
		return fmt.Errorf("order %s: --or says what will do in place of a line: say that with --line, or leave --or out", o.Number)
	case o.Queens < 1 || o.By.IsZero() || o.Customer == "":
		return fmt.Errorf("an order needs --customer, --queens and --until")
	case !o.From.IsZero() && o.By < o.From:
		return fmt.Errorf("order %s: --from %s is after --until %s, mend one of them", o.Number, o.From.Short(), o.By.Short())
	}
	return nil
}

// changes makes what flags say the order that is there, with what they say put anew. An
// order for somebody else is another one.
func changes(there *book.Order, said *orderFlags, flags *pflag.FlagSet) error {
	switch {
	case said.Customer != "" && said.Customer != there.Customer:
		return fmt.Errorf("order %s is there already, for %s: take another number", there.Number, there.Customer)
	case there.Closed:
		return fmt.Errorf("order %s is closed: take another number", there.Number)
	}
	o, n := there.OrderTaken, 0
	for flag, put := range map[string]func(){
		"customer": func() {}, "queens": func() { o.Queens = said.Queens }, "line": func() { o.Line = said.Line }, "or": func() { o.Substitute = said.Substitute },
		"from": func() { o.From = 0 }, "until": func() {}, "marked": func() { o.Marked = said.Marked }, "disc": func() { o.Disc = said.Disc },
		"clipped": func() { o.Clipped = said.Clipped }, "sent": func() { o.Sent = said.Sent }, "journey": func() { o.Journey = said.Journey },
		"priority": func() { o.Priority = said.Priority },
	} {
		if flags.Changed(flag) {
			put()
			n++
		}
	}
	if n == 0 {
		return fmt.Errorf("order %s is there already: say what of it changes, close it, or take another number", there.Number)
	}
	said.OrderTaken = o
	return nil
}

func orderCommand(a *app) *cobra.Command {
	var o orderFlags
	var from, by string
	var closed string
	c := a.writing(&cobra.Command{
		Use:     "order NUMBER",
		Short:   "Write down an order for queens, what changes of it, or that it is closed",
		Example: "  lidbook order 12 --customer \"Club\" --queens 6 --line Rook --until 2027-06-20\n  lidbook order 12 --queens 5 --priority 1\n  lidbook order 12 --close \"all handed over\"",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, c *cobra.Command, args []string) error {
		f := finder{View: d.view()}
		there, err := f.order(args[0])
		if closed != "" {
			if err != nil {
				return err
			}
			return d.write(book.OrderClosed{Order: there.Order, Why: closed})
		}
		o.Order, o.Number = book.OrderID(d.ids.Next()), args[0]
		if err == nil {
			if err := changes(there, &o, c.Flags()); err != nil {
				return err
			}
		}
		if err := o.days(from, by, d.view().Today()); err != nil {
			return err
		}
		if today := d.view().Today(); o.By < today && c.Flags().Changed("until") {
			d.line("  mind: --until %s is past; say the day anew if it is not meant: lidbook order %s --until DAY", o.By.ShortFrom(today), o.Number)
		}
		o.Sent = o.Sent || o.Journey > 0
		if err := d.write(o.OrderTaken); err != nil {
			return err
		}
		d.minds(rules.PlanOf(d.view(), o.OrderTaken))
		if now := d.view().Order(o.Order); now.Open() > 0 {
			d.printDealt(d.view(), now)
		}
		return nil
	})
	fl := c.Flags()
	fl.StringVar(&o.Customer, "customer", "", "for `WHOM`")
	some(c, &o.Queens, "queens", "1 or more", "how many queens")
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
