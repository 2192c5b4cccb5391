package main

import (
	"github.com/spf13/cobra"

	"lidmark/domain/founding"
)

// facing is the value of a flag that tells where entrances face.
type facing struct{ to *[]float64 }

// facingFlag gives a command the flag for where entrances face.
func facingFlag(c *cobra.Command, to *[]float64) {
	c.Flags().Var(facing{to}, "facing", "where entrances `FACE`: S or 180, or in turn from nuc to nuc, like \"N S\" (else north)")
}

// Type is the word of the help for it.
func (facing) Type() string { return "bearings" }

// String is nothing: unsaid.
func (facing) String() string { return "" }

// Set reads the bearings.
func (f facing) Set(text string) (err error) {
	*f.to, err = founding.ParseFacing(text)
	return err
}

// combFlags gives a command the flags for how much comb a nuc has.
func combFlags(cmd *cobra.Command, c *founding.Combs) {
	f := cmd.Flags()
	f.StringVar(&c.Kind, "kind", "", "the `KIND` of box: "+founding.KindWords())
	amount(cmd, &c.Sides, "sides", 0, "how many sides of comb a nuc has, where its kind does not say")
	amount(cmd, &c.Area, "comb", 0, "the area of a side of comb in `DM2`, where its kind does not say")
}
