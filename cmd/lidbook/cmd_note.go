package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func noteCommand(a *app) *cobra.Command {
	return a.aboutAnything(&cobra.Command{
		Use:     "note NAME... TEXT",
		Short:   "Write a note about anything",
		Example: "  lidbook note S2 \"gave way at the gate\"\n  lidbook note \"batch 4\" \"bar 2 was dry\"",
		Args:    cobra.MinimumNArgs(2),
	}, 1, func(_ *desk, of book.Subject, args []string) (book.Fact, error) {
		return book.Noted{Of: of, Text: args[0]}, nil
	})
}
