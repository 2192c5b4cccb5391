package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

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
