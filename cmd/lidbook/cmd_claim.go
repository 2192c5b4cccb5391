package main

import (
	"fmt"
	"slices"
	"strconv"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/handover"
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
	c.Flags().StringSliceVar(&queens, "queen", nil, "the very `QUEENS`")
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
	if len(names) > n {
		return nil, fmt.Errorf("claim of %s: %d are named with --queen, name no more than are claimed", plural(n, "queen"), len(names))
	}
	var others []book.QueenID
	for q := range f.Queens() {
		if !slices.Contains(o.Handed, q.Queen) {
			others = append(others, q.Queen)
		}
	}
	for _, name := range names {
		q, err := f.queen(name, others...)
		if err != nil { // of whoever else it may be said
			q, err = f.queen(name)
		}
		if err != nil {
			return nil, err
		}
		if !slices.Contains(o.Handed, q.Queen) {
			return nil, fmt.Errorf("queen %s did not go with order %s: name one who did, see them with lidbook sold, or leave --queen out", name, o.Number)
		}
		all = append(all, q.Queen)
	}
	return all, nil
}
