package main

import (
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
	c.Flags().StringVar(&how, "how", "", "`HOW` she went in: run in, from a cage or sprayed")
	return c
}
