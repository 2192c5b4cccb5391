package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func treatCommand(a *app) *cobra.Command {
	var wait int
	c := a.aboutAnything(&cobra.Command{
		Use:     "treat NAME... WITH",
		Short:   "Write down a treatment, and how long the label asks to wait",
		Long:    "What may be used, and how, the label says, and a veterinarian where the law asks\nfor one. While the wait lasts, catches and hand-overs are warned of; what it forbids\nthe label says.",
		Example: "  lidbook treat S2 \"oxalic acid\" --wait 0\n  lidbook treat A1-A6 \"oxalic acid\"",
		Args:    cobra.MinimumNArgs(2),
	}, 1, func(_ *desk, of book.Subject, args []string) (book.Fact, error) {
		return book.Treated{Of: of, With: args[0], Wait: wait}, nil
	})
	amount(c, &wait, "wait", 0, "`DAYS` to wait, as the label asks")
	return c
}
