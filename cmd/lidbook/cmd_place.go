package main

import (
	"fmt"
	"strconv"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

func placeCommand(a *app) *cobra.Command {
	var to string
	c := a.writing(&cobra.Command{
		Use:     "place NUC [STAND PLACE]",
		Short:   "Write down that a nuc was carried to another place or yard",
		Long:    "What moves bees: they must be closed, ventilated and tied down, and in most places\nreported. A virgin who may fly loses her way over less than some kilometres.",
		Example: "  lidbook place A3 B 4\n  lidbook place A3 --to \"Far Hill\"",
		Args:    cobra.RangeArgs(1, 3),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		n, err := f.nuc(args[0])
		if err != nil {
			return err
		}
		p := book.NucPlaced{Nuc: n.NucNamed.Nuc, Yard: n.Yard}
		if to != "" {
			y, err := f.yard(to)
			if err != nil {
				return err
			}
			p.Yard = y.Yard
		}
		if err := onStand(f, &p, args[1:]); err != nil {
			return err
		}
		d.minds(rules.Move{Nuc: p.Nuc, Yard: p.Yard, Stand: p.Stand, Place: p.Place})
		return d.write(p)
	})
	c.Flags().StringVar(&to, "to", "", "into this `YARD`")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for the name in this `YARD` first")
	return c
}

// onStand finds the stand and place that are named.
func onStand(f finder, p *book.NucPlaced, args []string) error {
	if len(args) == 0 {
		return nil
	}
	s, err := one("stand", args[0], f.Stands(p.Yard), func(s *book.Stand) string { return s.Letter })
	if err != nil {
		return err
	}
	if len(args) == 1 {
		return fmt.Errorf("stand %s: nothing says which place on it, write one of 1 to %d behind it", s.Letter, s.Places)
	}
	place, err := strconv.Atoi(args[1])
	if err != nil || place < 1 || place > s.Places {
		return fmt.Errorf("place %q: stand %s has places 1 to %d, write one of them", args[1], s.Letter, s.Places)
	}
	p.Stand, p.Place = s.Stand, place
	return nil
}
