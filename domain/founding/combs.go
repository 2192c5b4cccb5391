package founding

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
)

// Combs is how much comb a nuc has: its kind of box, so many sides, and the area
// of one in dm². What is zero is not said.
type Combs struct {
	Kind  string
	Sides int
	Area  float64
}

// kinds are the usual boxes of mating nucs: small combs of a box of their own,
// halves of the usual brood combs, and whole ones, three in a nuc. The sizes are
// round figures for what is in use; common practice, no source.
var kinds = []Combs{{"mini", 6, 2}, {"half", 6, 4}, {"full", 6, 8}}

// Kinds are the usual kinds of box, the most usual first.
func Kinds() []Combs { return slices.Clone(kinds) }

// KindWords lists the usual kinds with their combs.
func KindWords() string {
	var all []string
	for _, k := range kinds {
		all = append(all, k.String())
	}
	return strings.Join(all, ", ")
}

// String is the kind with its combs, "mini (6 sides of 2 dm²)".
func (c Combs) String() string {
	return fmt.Sprintf("%s (%d sides of %g dm²)", c.Kind, c.Sides, c.Area)
}

// Filled are the combs with what their kind says and nobody said otherwise. A
// kind that is none of [Kinds] is refused, and so is more comb than can be meant.
func (c Combs) Filled() (Combs, error) {
	const most = 100 // sides, and dm² of one; more is a slip of the finger
	if c.Sides < 0 || c.Sides > most || !(c.Area >= 0) || c.Area > most {
		return c, fmt.Errorf("%d sides of comb of %g dm²: write how many sides a nuc has, and the area of one in dm², like 6 and 2", c.Sides, c.Area)
	}
	if c.Kind == "" {
		return c, nil
	}
	for _, k := range kinds {
		if strings.EqualFold(k.Kind, c.Kind) {
			if c.Kind = k.Kind; c.Sides == 0 {
				c.Sides = k.Sides
			}
			if c.Area == 0 {
				c.Area = k.Area
			}
			return c, nil
		}
	}
	return c, fmt.Errorf("kind of box %q: choose %s, or say how many sides and the dm² of one", c.Kind, KindWords())
}

// ParseCombs reads what a keeper types of combs: a kind, "6" sides, or "6 2" with
// the dm² of one.
func ParseCombs(text string) (Combs, error) {
	words := strings.Fields(strings.ReplaceAll(text, ",", "."))
	if len(words) == 1 {
		if n, err := strconv.Atoi(words[0]); err == nil {
			return Combs{Sides: n}.Filled()
		}
		return Combs{Kind: words[0]}.Filled()
	}
	if len(words) == 2 {
		n, err := strconv.Atoi(words[0])
		area, err2 := strconv.ParseFloat(words[1], 64)
		if err == nil && err2 == nil {
			return Combs{Sides: n, Area: area}.Filled()
		}
	}
	return Combs{}, fmt.Errorf("combs %q: write a kind like mini, or how many sides and the dm² of one, like 6 2", text)
}
