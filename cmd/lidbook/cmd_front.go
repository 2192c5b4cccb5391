package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func frontCommand(a *app) *cobra.Command {
	return a.ofNucs(&cobra.Command{
		Use:     "front NUCS... COLOUR SHAPE",
		Short:   "Write down the mark on a nuc's front, which bees can tell",
		Example: "  lidbook front A1,A4,A7 blue disc",
		Args:    cobra.MinimumNArgs(3),
	}, 2, func(_ finder, id book.NucID, args []string) (book.Fact, error) {
		return book.FrontMarked{Nuc: id, Colour: args[0], Shape: args[1]}, nil
	})
}
