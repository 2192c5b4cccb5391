package main

import (
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/yard"
)

// roundShape is the walking round of a yard, in JSON.
type roundShape struct {
	Yard   string   `json:"yard"`
	Metres float64  `json:"metres"`
	Stands []string `json:"stands"`
}

func roundCommand(a *app) *cobra.Command {
	c := a.reading(&cobra.Command{
		Use:   "round",
		Short: "A short walking round past all stands of a yard, from the vehicle and back",
		Args:  cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		y, err := finder{View: v}.laidOr(a.flags.yard)
		if err != nil {
			return err
		}
		a.sayYard(v, y)
		l := yard.Of(v, y.Yard)
		stands, metres := yard.RoundOf(l, yard.GroundOf(y))
		s := roundShape{Yard: y.Name, Metres: metres, Stands: []string{}}
		for _, i := range stands {
			s.Stands = append(s.Stands, l.Stands[i].Letter)
		}
		return a.show(s, func() {
			a.line("%s: %.0f m past %s", s.Yard, s.Metres, plural(len(s.Stands), "stand"))
			a.line("%s", strings.Join(s.Stands, " "))
		})
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard, or the first with stands)")
	return c
}
