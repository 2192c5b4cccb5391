package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func cageCommand(a *app) *cobra.Command {
	var bank string
	var cells bool
	c := a.writing(&cobra.Command{
		Use:     "cage BATCH CAGES",
		Short:   "Cage virgins of a batch, each under the number of her cage",
		Example: "  lidbook cage 4 1-5 --bank S4\n  lidbook cage 4 6-12 --cells     cells about to emerge",
		Args:    cobra.ExactArgs(2),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f := finder{View: d.viewThen()}
		b, err := f.batch(args[0])
		if err != nil {
			return err
		}
		labels, err := cages(args[1])
		if err != nil {
			return err
		}
		var to book.ColonyID
		if bank != "" {
			c, err := f.colony(bank)
			if err != nil {
				return err
			}
			to = c.Colony
		}
		var facts []book.Fact
		for _, label := range labels {
			facts = append(facts, book.VirginCaged{Queen: book.QueenID(d.ids.Next()), Batch: b.Batch, Label: label, Bank: to, Cell: cells})
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&bank, "bank", "", "into this bank `COLONY`")
	c.Flags().BoolVar(&cells, "cells", false, "they are cells about to emerge")
	return c
}

// cages reads the numbers of cages: "3", "1-5", "1-3,7".
func cages(text string) (labels []string, err error) {
	for part := range strings.SplitSeq(text, ",") {
		first, last, span := strings.Cut(strings.TrimSpace(part), "-")
		if !span {
			last = first
		}
		from, err1 := strconv.Atoi(first)
		to, err2 := strconv.Atoi(last)
		const most = 1000 // cages at one time; more is a slip of the finger
		if err1 != nil || err2 != nil || from < 1 || to < from || to-from >= most {
			return nil, fmt.Errorf("cages %q: write their numbers, like 3 or 1-5", text)
		}
		for n := from; n <= to; n++ {
			labels = append(labels, strconv.Itoa(n))
		}
	}
	return labels, nil
}
