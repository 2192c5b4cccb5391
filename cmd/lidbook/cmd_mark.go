package main

import (
	"time"

	"github.com/spf13/cobra"
	"github.com/spf13/pflag"

	"lidmark/domain/bee"
	"lidmark/domain/book"
)

func markCommand(a *app) *cobra.Command {
	var m book.QueenMarked
	c := a.writing(&cobra.Command{
		Use:     "mark NUC|QUEEN",
		Short:   "Write down a queen's mark; without a colour, that of the year she was born",
		Example: "  lidbook mark A3\n  lidbook mark A3 --colour white --disc 27\n  lidbook mark \"white 27\" --clipped",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, c *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		if m.Nuc, m.Queen, err = f.toMark(args[0]); err != nil {
			return err
		}
		if m.Queen.IsZero() {
			m.Queen = book.QueenID(d.ids.Next())
		}
		return d.write(d.markedAnew(m, c.Flags()))
	})
	c.Flags().StringVar(&m.Colour, "colour", "", "`COLOUR` of the paint (else the international colour of the year)")
	c.Flags().StringVar(&m.Disc, "disc", "", "`NUMBER` of her disc")
	c.Flags().BoolVar(&m.Clipped, "clipped", false, "a wing was clipped; alone, no paint is meant")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for the name in this `YARD` first")
	return c
}

// markedAnew is a mark with what the book has of it already and no flag says anew. Paint or a
// disc without a colour has that of the year she was born; a clipped wing needs none.
func (d *desk) markedAnew(m book.QueenMarked, said *pflag.FlagSet) book.QueenMarked {
	v := d.viewThen()
	was := v.Queen(m.Queen).Mark
	if !said.Changed("disc") {
		m.Disc = was.Disc
	}
	m.Clipped = m.Clipped || was.Clipped && !said.Changed("clipped")
	switch {
	case said.Changed("colour"):
	case was.Colour != "":
		m.Colour = was.Colour
	case !said.Changed("clipped") || said.Changed("disc"):
		m.Colour = bee.MarkColour(d.bornIn(v, m)).String()
	}
	return m
}

// bornIn is the year in which a queen was born who is marked, or this year where nobody knows.
func (d *desk) bornIn(v *book.View, m book.QueenMarked) int {
	q, n := v.Queen(m.Queen), v.Nuc(m.Nuc)
	b := v.Batch(q.Batch)
	if q.Batch.IsZero() {
		b = v.Batch(n.Holds.Batch)
	}
	for _, born := range []time.Time{q.Born, q.Emerged, n.Holds.Emerged, b.At.Instant} {
		if !born.IsZero() {
			return born.In(d.zone).Year()
		}
	}
	return d.at.Instant.In(d.zone).Year()
}

// toMark is the nuc of a name with its queen, or a queen; the one caught from a nuc, where she
// sits in a cage and no other is there.
func (f finder) toMark(name string) (nuc book.NucID, queen book.QueenID, err error) {
	n, none := f.nuc(name)
	if none != nil {
		q, err := f.queen(name)
		if err != nil {
			return nuc, queen, err
		}
		return nuc, q.Queen, nil
	}
	if q, no := f.queen("from " + n.Name); no == nil && q.Caged() && n.Condition() == book.NoQueen {
		return nuc, q.Queen, nil
	}
	return n.NucNamed.Nuc, n.Holds.Queen, nil
}
