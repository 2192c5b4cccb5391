package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/domain/line"
)

func claimCommand(a *app) *cobra.Command {
	var how string
	var queens []string
	c := a.writing(&cobra.Command{
		Use:     "claim ORDER QUEENS [WHY]",
		Short:   "Write down a customer's claim: so many queens of an order, and why",
		Example: "  lidbook claim 12 2 \"dead on arrival\"\n  lidbook claim 12 1 \"never laid\" --how \"not accepted\" --queen 7",
		Args:    cobra.RangeArgs(2, 3),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.view()}
		o, err := f.order(args[0])
		if err != nil {
			return err
		}
		n, err := strconv.Atoi(args[1])
		if err != nil || n < 1 {
			return fmt.Errorf("claim of %q queens: write a number from 1 on", args[1])
		}
		claim := book.Claimed{Order: o.Order, Queens: n}
		if claim.Of, err = f.claimed(o, n, queens); err != nil {
			return err
		}
		if err := sayWhy(&claim, o.Number, how, args[2:]); err != nil {
			return err
		}
		if err := handover.CheckClaim(d.view(), claim); err != nil {
			return err
		}
		if err := d.write(claim); err != nil {
			return err
		}
		d.owes(o.Order)
		return nil
	})
	c.Flags().StringVar(&how, "how", "", "\"dead on arrival\", \"not accepted\" or superseded: the `KIND` of claim")
	c.Flags().StringArrayVar(&queens, "queen", nil, "the very `QUEENS`")
	return c
}

// owes says how many queens an order is owed after a claim, and by when.
func (d *desk) owes(id book.OrderID) {
	v := d.view()
	if o := v.Order(id); o.Open() > 0 {
		d.line("order %s: %s owed%s", o.Number, plural(o.Open(), "queen"), prefixed(" by ", dayOf(v, o.By.Start(v.Zone()))))
	}
}

// sayWhy puts the kind of a claim and what is said of it into it; words that name
// a kind are the kind.
func sayWhy(claim *book.Claimed, order, how string, why []string) error {
	if how != "" {
		if err := claim.How.UnmarshalText([]byte(how)); err != nil {
			return fmt.Errorf("--how: %w", err)
		}
	}
	switch {
	case len(why) == 0 && how == "":
		return fmt.Errorf("claim on order %s: nothing says what was wrong, write why, like \"dead in the cage\", or with --how what kind of claim it is", order)
	case len(why) > 0 && (how != "" || claim.How.UnmarshalText([]byte(why[0])) != nil):
		claim.Why = why[0]
	}
	return nil
}

// claimed are the queens of names, which went with an order; no more than n.
func (f finder) claimed(o *book.Order, n int, names []string) (all []book.QueenID, err error) {
	names = f.apartQueens(o, names)
	if len(names) > n {
		return nil, fmt.Errorf("claim of %s: %d are named with --queen, name no more than are claimed", plural(n, "queen"), len(names))
	}
	for _, name := range names {
		q, err := f.wentWith(o, name, all)
		if err != nil {
			return nil, err
		}
		all = append(all, q.Queen)
	}
	return all, nil
}

// wentWith is the queen of a name who went with an order, but those named before.
func (f finder) wentWith(o *book.Order, name string, but []book.QueenID) (*book.Queen, error) {
	may := handover.WentWith(o, but)
	if len(line.QueensCalled(f.View, name, true, may)) > 0 {
		return line.Queen(f.View, name, true, may)
	}
	if _, err := f.queen(name); err != nil {
		return nil, err
	}
	return nil, fmt.Errorf("queen %s did not go with order %s: name one who did, see them with lidbook orders %s, or leave --queen out", name, o.Number, o.Number)
}

// apartQueens parts lists of queens at their commas; a name with a comma of its own stays whole.
func (f finder) apartQueens(o *book.Order, names []string) (all []string) {
	for _, text := range names {
		if _, err := f.wentWith(o, text, nil); err == nil {
			all = append(all, text)
			continue
		}
		for part := range strings.SplitSeq(text, ",") {
			all = append(all, strings.TrimSpace(part))
		}
	}
	return all
}
