package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func robbedCommand(a *app) *cobra.Command {
	return a.ofNucs(&cobra.Command{
		Use:   "robbed NUCS...",
		Short: "Write down that robbers are at nucs",
		Long: "Robbers at one nuc are at the whole yard before long: shut or narrow every\nentrance there, and open nothing. A nuc counts as robbed until a look finds\n" +
			"bees in it.",
		Example: "  lidbook robbed A3\n  lidbook robbed A3 A7-A9",
		Args:    cobra.MinimumNArgs(1),
	}, 0, func(_ finder, id book.NucID, _ []string) (book.Fact, error) { return book.Robbed{Nuc: id}, nil })
}
