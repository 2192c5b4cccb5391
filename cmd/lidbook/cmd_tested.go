package main

import (
	"fmt"
	"strconv"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

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
