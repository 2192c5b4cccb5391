package main

import (
	"errors"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
)

// positionFlags say how exactly a file tells where things are.
type positionFlags struct{ coarse, without bool }

func (p *positionFlags) flags(c *cobra.Command) {
	c.Flags().BoolVar(&p.coarse, "coarse", false, "tell only roughly where yards lie, to about a kilometre")
	c.Flags().BoolVar(&p.without, "no-positions", false, "leave all places out")
}

func (p *positionFlags) of() (book.Positions, error) {
	switch {
	case p.coarse && p.without:
		return book.Exactly, &usageError{err: errors.New("--coarse and --no-positions: choose one")}
	case p.coarse:
		return book.Roughly, nil
	case p.without:
		return book.Nowhere, nil
	}
	return book.Exactly, nil
}
