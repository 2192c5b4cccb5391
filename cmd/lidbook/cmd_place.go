package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// ofNucs makes a command that writes a like fact for each of the nucs that its
// arguments name; the last ones, so many, say what.
func (a *app) ofNucs(c *cobra.Command, say int, fact func(finder, book.NucID, []string) (book.Fact, error)) *cobra.Command {
	c = a.writing(c, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		names := len(args) - say
		nucs, err := f.nucs(args[:names]...)
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, id := range nucs {
			made, err := fact(f, id, args[names:])
			if err != nil {
				return err
			}
			facts = append(facts, made)
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for names in this `YARD` first")
	return c
}

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
	switch len(args) {
	case 0:
		return nil
	case 1:
		return fmt.Errorf("stand %s: which place on it?", args[0])
	}
	s, err := one("stand", args[0], f.Stands(p.Yard), func(s *book.Stand) string { return s.Letter })
	if err != nil {
		return err
	}
	place, err := strconv.Atoi(args[1])
	if err != nil || place < 1 || place > s.Places {
		return fmt.Errorf("place %q: stand %s has places 1 to %d", args[1], s.Letter, s.Places)
	}
	p.Stand, p.Place = s.Stand, place
	return nil
}

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

func frontCommand(a *app) *cobra.Command {
	return a.ofNucs(&cobra.Command{
		Use:     "front NUCS... COLOUR SHAPE",
		Short:   "Write down the mark on a nuc's front, which bees can tell",
		Example: "  lidbook front A1,A4,A7 blue disc",
		Args:    cobra.MinimumNArgs(3),
	}, 2, func(_ finder, id book.NucID, args []string) (book.Fact, error) {
		return book.FrontMarked{Nuc: id, Colour: args[0], Shape: args[1]}, nil
	})
}

func robbedCommand(a *app) *cobra.Command {
	return a.ofNucs(&cobra.Command{
		Use:   "robbed NUCS...",
		Short: "Write down that robbers are at nucs",
		Long: "Robbers at one nuc are at the whole yard before long: shut or narrow every\nentrance there, and open nothing. A nuc counts as robbed until a look finds\n" +
			"bees in it.",
		Example: "  lidbook robbed A3\n  lidbook robbed A3 A7-A9",
		Args:    cobra.MinimumNArgs(1),
	}, 0, func(_ finder, id book.NucID, _ []string) (book.Fact, error) { return book.Robbed{Nuc: id}, nil })
}
