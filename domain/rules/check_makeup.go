package rules

import (
	"fmt"
	"math"

	"lidmark/domain/practice"
	"lidmark/domain/strength"
)

// enough warns when fewer bees stay of a make-up than the night needs, and says
// how many cups would do, and what these come to for so many nucs.
func (c *checker) enough(i strength.MakeUp, m strength.Morning, nucs int) {
	if !m.Short() {
		return
	}
	leave := fmt.Sprintf("%g cups leave", i.Cups)
	if i.Cups == 1 {
		leave = "1 cup leaves"
	}
	c.warn(fmt.Sprintf("%s %s bees the next morning, %s if shut in; a %s needs %s: short by %s", leave,
		whole(m.Open), whole(m.ShutIn), m.Night, whole(m.Need), shortBy(m)),
		fmt.Sprintf("%s; %s", EnoughWords(m), LoadWords(strength.LoadOf(float64(nucs)*(m.Enough.Cups-i.Cups), c.numbers), nucs)),
		practice.BeesPerCup, practice.LossOfBroodCombs, practice.LossOfShutInBees, practice.NeedAt8C, practice.NeedAt14C, practice.NeedAt20C,
		practice.ThinWoodFactor, practice.BeesPerKilogram, practice.ColonyGives)
}

// shortBy says how many cups are wanting.
func shortBy(m strength.Morning) string {
	open, shut := count(int(math.Ceil(m.MoreOpen)), "cup"), count(int(math.Ceil(m.MoreShut)), "cup")
	switch {
	case m.MoreOpen == m.MoreShut:
		return open
	case m.MoreShut <= 0:
		return open + " unless shut in"
	default:
		return open + ", shut in " + shut
	}
}

// EnoughWords says what make-up would do: "4 cups and shut in: 2 576, enough".
func EnoughWords(m strength.Morning) string {
	cups := count(int(m.Enough.Cups), "cup")
	if m.Enough.Shut {
		cups += " and shut in"
	}
	return fmt.Sprintf("%s: %s, enough", cups, whole(m.EnoughBees))
}

// LoadWords says what so many more cups come to for some nucs: their bees, their
// weight, the colonies they can come from.
func LoadWords(l strength.Load, nucs int) string {
	if l.Cups <= 0 {
		return fmt.Sprintf("no more cups for %s", count(nucs, "nuc"))
	}
	from := "1 colony"
	switch {
	case l.Fewer < l.More:
		from = fmt.Sprintf("%d to %d colonies", l.Fewer, l.More)
	case l.More > 1:
		from = fmt.Sprintf("%d colonies", l.More)
	}
	return fmt.Sprintf("for %s %s more: %s bees, %.1f kg, from %s", count(nucs, "nuc"), count(int(math.Ceil(l.Cups)), "cup"), whole(l.Bees), l.Kilograms, from)
}

func whole(bees float64) string { return group(int(math.Round(bees))) }
