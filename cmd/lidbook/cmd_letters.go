package main

import (
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/line"
)

func lettersCommand(a *app) *cobra.Command {
	return &cobra.Command{
		Use:   "letters",
		Short: "The letters of the typed line",
		Args:  cobra.NoArgs,
		RunE: func(*cobra.Command, []string) error {
			var rows [][]string
			for _, l := range line.Letters() {
				rows = append(rows, []string{"  " + l.Sign, l.Words})
			}
			a.table(rows)
			a.line("In any order, with or without spaces. Rows: A1-A12 done as written, except A3 A9")
			a.line("By counts: A 50 looked 41 laying. Whole words: %s", strings.Join(line.Phrases(), ", "))
			return nil
		},
	}
}
