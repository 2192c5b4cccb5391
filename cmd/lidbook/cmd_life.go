package main

import (
	"fmt"
	"strconv"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func putInCommand(a *app) *cobra.Command {
	var how string
	c := a.writing(&cobra.Command{
		Use:     "putin QUEEN NUC|COLONY",
		Short:   "Write down that a mated queen was put into a nuc or colony",
		Long:    "For a virgin there is a letter: lidbook write \"A3 i2\".",
		Example: "  lidbook putin 7 S2 --how \"from a cage\"",
		Args:    cobra.ExactArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.viewThen()}
		q, err := f.queen(args[0])
		if err != nil {
			return err
		}
		to, err := f.unit(args[1])
		if err != nil {
			return err
		}
		fact := book.QueenPutIn{Queen: q.Queen, To: to}
		if err := fact.How.UnmarshalText([]byte(how)); err != nil {
			return err
		}
		return d.write(fact)
	})
	c.Flags().StringVar(&how, "how", "", "run in, from a cage or sprayed")
	return c
}

func endedCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:       "ended QUEEN died|lost|culled|superseded",
		Short:     "Write down how a queen ended",
		Example:   "  lidbook ended 7 died",
		Args:      cobra.ExactArgs(2),
		ValidArgs: []string{"died", "lost", "culled", "superseded"},
	}, func(d *desk, _ *cobra.Command, args []string) error {
		q, err := finder{View: d.viewThen()}.queen(args[0])
		if err != nil {
			return err
		}
		fact := book.QueenEnded{Queen: q.Queen}
		if err := fact.How.UnmarshalText([]byte(args[1])); err != nil {
			return err
		}
		return d.write(fact)
	})
}

func testedCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:     "tested QUEEN WHAT SCORE",
		Short:   "Write down the result of a test of a queen or her colony",
		Example: "  lidbook tested \"Rook 1\" gentleness 3.5",
		Args:    cobra.ExactArgs(3),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		q, err := finder{View: d.viewThen()}.queen(args[0])
		if err != nil {
			return err
		}
		score, err := strconv.ParseFloat(args[2], 64)
		if err != nil {
			return fmt.Errorf("score %q: write a number", args[2])
		}
		return d.write(book.QueenTested{Queen: q.Queen, What: args[1], Score: score})
	})
}

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
