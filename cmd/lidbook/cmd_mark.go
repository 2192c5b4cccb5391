package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/bee"
	"lidmark/domain/book"
)

func markCommand(a *app) *cobra.Command {
	var m book.QueenMarked
	c := a.writing(&cobra.Command{
		Use:     "mark NUC|QUEEN",
		Short:   "Write down a queen's mark; without a colour, that of the year she was born",
		Example: "  lidbook mark A3\n  lidbook mark A3 --colour white --disc 27",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		if n, err := f.nuc(args[0]); err == nil {
			m.Nuc, m.Queen = n.NucNamed.Nuc, n.Holds.Queen
		} else if q, err := f.queen(args[0]); err == nil {
			m.Queen = q.Queen
		} else {
			return err
		}
		if m.Colour == "" {
			m.Colour = bee.MarkColour(d.bornIn(f.Queen(m.Queen))).String()
		}
		if m.Queen.IsZero() {
			m.Queen = book.QueenID(d.ids.Next())
		}
		return d.write(m)
	})
	c.Flags().StringVar(&m.Colour, "colour", "", "`COLOUR` of the paint (else the international colour of the year)")
	c.Flags().StringVar(&m.Disc, "disc", "", "`NUMBER` of her disc")
	c.Flags().BoolVar(&m.Clipped, "clipped", false, "a wing was clipped")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for the name in this `YARD` first")
	return c
}

// bornIn is the year in which a queen was born, or this year where nobody said.
func (d *desk) bornIn(q *book.Queen) int {
	if !q.Born.IsZero() {
		return q.Born.In(d.zone).Year()
	}
	return d.at.Instant.In(d.zone).Year()
}
