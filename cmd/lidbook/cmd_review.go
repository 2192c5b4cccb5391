package main

import (
	"cmp"
	"fmt"
	"slices"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/line"
	"lidmark/domain/review"
	"lidmark/domain/rules"
)

// reviewFlags are what is asked of a review.
type reviewFlags struct {
	by                      string
	cells, virgins, minutes int
	cups                    int
	accept                  []string
	all                     bool
}

func reviewCommand(a *app) *cobra.Command {
	var f reviewFlags
	c := a.reading(&cobra.Command{
		Use:     "review [NUC]",
		Short:   "Which nucs need a decision, what each way is worth, the best use of what is in hand",
		Long:    "Lists the nucs that need a decision, the worst first: what each most probably\nholds, the best way and the next, and how many of a hundred such nucs would have\na laying queen by the day. Below it stands the best use of the cells and virgins\nin hand over all nucs. With a name, all ways with that nuc, and what each is\nmade of. With --accept the best use is written down as decided for the nucs\nnamed: it is work of its day from then on.",
		Example: "  lidbook review\n  lidbook review --by 8.6 --cells 7 --virgins 3 --minutes 60\n  lidbook review E3                every way with one nuc, and why\n  lidbook review --accept E3,C1    decide as shown",
		Args:    cobra.MaximumNArgs(1),
	}, func(c *cobra.Command, v *book.View, args []string) error {
		r, err := a.review(c, v, f)
		if err != nil {
			return err
		}
		return a.showReview(v, r, args, f.all)
	})
	shows := c.RunE
	c.RunE = func(c *cobra.Command, args []string) error {
		if len(f.accept) == 0 {
			return shows(c, args)
		}
		return a.acceptReview(c, f)
	}
	a.completes(c, nucNames)
	c.Flags().StringSliceVar(&f.accept, "accept", nil, "decide for these `NUCS` as the best use has it; \"all\" for all that need a decision")
	c.Flags().StringVar(&f.by, "by", "", "the `DAY` by which queens are wanted (else as in your numbers)")
	amount(c, &f.cells, "cells", 0, "so many ripe cells in hand (else as in the book)")
	amount(c, &f.virgins, "virgins", 0, "so many virgins in hand (else as in the book)")
	amount(c, &f.cups, "cups", 0, "so many cups of bees in hand")
	amount(c, &f.minutes, "minutes", 0, "so many minutes for it all (else without limit)")
	c.Flags().BoolVar(&f.all, "all", false, "also nucs that need no decision")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "only this `YARD`; what is in hand is shared out over all")
	return c
}

func (a *app) review(c *cobra.Command, v *book.View, f reviewFlags) (*review.Review, error) {
	by := review.Usual(v)
	if f.by != "" {
		d, err := line.ParseComing(f.by, v.Today())
		if err != nil {
			return nil, fmt.Errorf("--by: %w", err)
		}
		by = d
	}
	if by <= v.Today() {
		return nil, fmt.Errorf("--by %s is not ahead of %s: name a later day", by.Short(), v.Today().Short())
	}
	j := rules.Judge(v)
	hand := review.InHand(j.Course())
	if c.Flags().Changed("cells") {
		hand = hand.Of(false, f.cells)
	}
	if c.Flags().Changed("virgins") {
		hand = hand.Of(true, f.virgins)
	}
	hand.Minutes, hand.Cups = float64(f.minutes), f.cups
	return review.Of(j, hand, by), nil
}

// acceptReview writes down what the best use decides for nucs.
func (a *app) acceptReview(c *cobra.Command, f reviewFlags) error {
	d, err := a.open()
	if err != nil {
		return err
	}
	return cmp.Or(d.accept(c, f), d.close())
}

func (d *desk) accept(c *cobra.Command, f reviewFlags) error {
	v := d.viewThen()
	r, err := d.review(c, v, f)
	if err != nil {
		return err
	}
	var only []book.NucID
	if f.accept[0] != "all" {
		if only, err = (finder{View: v}).nucs(f.accept...); err != nil {
			return err
		}
	}
	ways := map[int]int{}
	for i, n := range r.Nucs {
		if f.accept[0] == "all" && n.Decide || slices.Contains(only, n.NucNamed.Nuc) {
			ways[i] = r.This.Chosen[i]
		}
	}
	var facts []book.Fact
	for _, p := range r.Accept(ways) {
		facts = append(facts, p)
	}
	if len(facts) == 0 {
		d.line("nothing to decide: they are best left, and no look is worth while yet")
		return nil
	}
	return d.write(facts...)
}

func (a *app) showReview(v *book.View, r *review.Review, args []string, all bool) error {
	f, err := a.finder(v)
	if err != nil {
		return err
	}
	only := book.NucID{}
	if len(args) == 1 {
		n, err := f.nuc(args[0])
		if err != nil {
			return err
		}
		only = n.NucNamed.Nuc
	}
	var places []int
	for i, n := range r.Nucs {
		inYard := a.flags.yard == "" || v.Yard(n.Yard).Name == a.flags.yard
		if n.NucNamed.Nuc == only || only.IsZero() && inYard && (all || n.Decide) {
			places = append(places, i)
		}
	}
	return a.show(shapeOfReview(v, r, places), func() {
		if !only.IsZero() {
			a.printWays(r, places)
			return
		}
		a.printReview(v, r, places)
	})
}
