package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func bankCommand(a *app) *cobra.Command {
	return a.writing(&cobra.Command{
		Use:     "bank COLONY QUEEN...",
		Short:   "Write down that caged queens were hung into a bank",
		Example: "  lidbook bank S4 7 8 9",
		Args:    cobra.MinimumNArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.viewThen()}
		c, err := f.colony(args[0])
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, name := range args[1:] {
			q, err := f.queen(name)
			if err != nil {
				return err
			}
			if !q.Caged() {
				return fmt.Errorf("queen %s is in no cage: write down first where she was caught", strconv.Quote(strings.TrimSpace(name)))
			}
			facts = append(facts, book.QueenBanked{Queen: q.Queen, Bank: c.Colony})
		}
		return d.write(facts...)
	})
}
