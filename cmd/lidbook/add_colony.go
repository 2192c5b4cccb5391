package main

import (
	"cmp"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

func addColony(a *app) *cobra.Command {
	var roles []string
	var line, queen string
	var thousands float64
	c := a.adding(&cobra.Command{
		Use:     "colony NAME",
		Short:   "Add a full-size colony, or describe it anew",
		Example: "  lidbook add colony S3 --role finisher\n  lidbook add colony S1 --role breeder --line Rook",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, f finder, args []string) error {
		y, err := f.homeOr(a.flags.yard)
		if err != nil {
			return err
		}
		fact := book.ColonyDescribed{Colony: book.ColonyID(d.ids.Next()), Name: args[0], Yard: y.Yard}
		if there, err := f.colony(args[0]); err == nil {
			fact = there.ColonyDescribed
		}
		if fact.Roles, err = rolesOr(roles, fact.Roles); err != nil {
			return err
		}
		fact.Line, fact.Thousands = cmp.Or(line, fact.Line), cmp.Or(thousands, fact.Thousands)
		if queen != "" {
			q, err := f.queen(queen)
			if err != nil {
				return err
			}
			fact.Queen = q.Queen
		}
		return d.write(fact)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	c.Flags().StringSliceVar(&roles, "role", nil, "its `ROLE`, what it is kept for: breeder, starter, finisher, \"cell builder\", \"brood source\", \"drone source\", bank")
	c.Flags().StringVar(&line, "line", "", "its mother `LINE`")
	c.Flags().StringVar(&queen, "queen", "", "its queen's `NAME`")
	amount(c, &thousands, "bees", 0, "bees in thousands")
	return c
}

func rolesOr(said []string, were []book.Role) ([]book.Role, error) {
	if len(said) == 0 {
		return were, nil
	}
	roles := make([]book.Role, len(said))
	for i, word := range said {
		if err := roles[i].UnmarshalText([]byte(word)); err != nil {
			return nil, err
		}
	}
	return roles, nil
}
