package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func entranceCommand(a *app) *cobra.Command {
	return a.ofNucs(&cobra.Command{
		Use:     "entrance NUCS... CM2",
		Short:   "Write down how wide entrances stand open, in cm²; 0 is shut",
		Example: "  lidbook entrance A1-A12 2\n  lidbook entrance A3 B1-B6 0",
		Args:    cobra.MinimumNArgs(2),
	}, 1, func(_ finder, id book.NucID, args []string) (book.Fact, error) {
		area, err := strconv.ParseFloat(strings.Replace(args[0], ",", ".", 1), 64)
		if err != nil || !(area >= 0) {
			return nil, fmt.Errorf("entrance %q: write its open area in cm², 0 or more", args[0])
		}
		return book.EntranceSet{Nuc: id, Area: area}, nil
	})
}
