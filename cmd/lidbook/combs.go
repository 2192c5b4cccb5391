package main

import (
	"fmt"
	"strconv"
	"strings"

	"github.com/spf13/cobra"
)

// combs is how much comb a nuc has: so many sides, and the area of one in dm².
// Zero is not said.
type combs struct {
	kind  string
	sides int
	area  float64
}

// kinds are the usual boxes of mating nucs: small combs of a box of their own,
// halves of the usual brood combs, and whole ones, three in a nuc. The sizes are
// round figures for what is in use; --sides and --comb say others.
var kinds = []combs{{"mini", 6, 2}, {"half", 6, 4}, {"full", 6, 8}}

func (c combs) String() string {
	return fmt.Sprintf("%s (%d sides of %g dm²)", c.kind, c.sides, c.area)
}

func kindWords() string {
	var all []string
	for _, k := range kinds {
		all = append(all, k.String())
	}
	return strings.Join(all, ", ")
}

func (c *combs) flags(cmd *cobra.Command) {
	f := cmd.Flags()
	f.StringVar(&c.kind, "kind", "", "the `KIND` of box: "+kindWords())
	amount(cmd, &c.sides, "sides", 0, "how many sides of comb a nuc has, where its kind does not say")
	amount(cmd, &c.area, "comb", 0, "the area of a side of comb in `DM2`, where its kind does not say")
}

// filled are the combs with what their kind says.
func (c combs) filled() (combs, error) {
	const most = 100 // sides, and dm² of one; more is a slip of the finger
	if c.sides < 0 || c.sides > most || !(c.area >= 0) || c.area > most {
		return c, fmt.Errorf("%d sides of comb of %g dm²: write how many sides a nuc has, and the area of one in dm², like 6 and 2", c.sides, c.area)
	}
	if c.kind == "" {
		return c, nil
	}
	for _, k := range kinds {
		if strings.EqualFold(k.kind, c.kind) {
			if c.kind = k.kind; c.sides == 0 {
				c.sides = k.sides
			}
			if c.area == 0 {
				c.area = k.area
			}
			return c, nil
		}
	}
	return c, fmt.Errorf("kind of box %q: choose %s, or say --sides and --comb", c.kind, kindWords())
}

// parseCombs reads an answer: a kind, "6" sides, or "6 2" with the dm² of one.
func parseCombs(text string) (combs, error) {
	words := strings.Fields(strings.ReplaceAll(text, ",", "."))
	if len(words) == 1 {
		if n, err := strconv.Atoi(words[0]); err == nil {
			return combs{sides: n}.filled()
		}
		return combs{kind: words[0]}.filled()
	}
	if len(words) == 2 {
		n, err := strconv.Atoi(words[0])
		area, err2 := strconv.ParseFloat(words[1], 64)
		if err == nil && err2 == nil {
			return combs{sides: n, area: area}.filled()
		}
	}
	return combs{}, fmt.Errorf("combs %q: write a kind like mini, or how many sides and the dm² of one, like 6 2", text)
}
