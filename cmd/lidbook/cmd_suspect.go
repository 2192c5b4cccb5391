package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func suspectCommand(a *app) *cobra.Command {
	return a.aboutAnything(&cobra.Command{
		Use:     "suspect NAME... DISEASE",
		Short:   "Write down a suspected disease: the yard is on standstill",
		Long:    "Puts the yard of a colony or nuc, or a whole yard, on standstill until lidbook\nclear. What is to be reported, and to whom, the local authority says.",
		Example: "  lidbook suspect S2 \"foul brood\"\n  lidbook trace S2 --since 2027-04-20",
		Args:    cobra.MinimumNArgs(2),
	}, 1, func(_ *desk, of book.Subject, args []string) (book.Fact, error) {
		return book.DiseaseSuspected{Of: of, What: args[0]}, nil
	})
}

func clearCommand(a *app) *cobra.Command {
	var why string
	c := a.aboutAnything(&cobra.Command{
		Use:     "clear NAME...",
		Short:   "Write down that a suspicion has ended",
		Example: "  lidbook clear S2 --why \"sample clean\"",
		Args:    cobra.MinimumNArgs(1),
	}, 0, func(_ *desk, of book.Subject, _ []string) (book.Fact, error) {
		return book.SuspicionEnded{Of: of, Why: why}, nil
	})
	c.Flags().StringVar(&why, "why", "", "the `REASON`")
	return c
}
