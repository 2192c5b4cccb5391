package course

import (
	"fmt"
	"math"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Evidence is one look at a nuc, what it was worth, and that in words:
// "no eggs on day 15 after 4 flying days: laying falls from 81 to 22 %".
type Evidence struct {
	Weighed
	Words string
}

// Evidence is what the looks of a nuc's present life were worth, in order.
func (c *Course) Evidence(n *book.Nuc) (all []Evidence) {
	a := c.ask(n)
	out, _ := a.emerged()
	for _, w := range c.Held(n).Weighed {
		all = append(all, Evidence{w, a.words(w, a.day(out))})
	}
	return all
}

func (a asked) words(w Weighed, out calendar.Day) string {
	said := w.Sight.String()
	if age := w.Day.Sub(out); age > 0 && !w.Amiss {
		said += fmt.Sprintf(" on day %d", age)
		if flew := a.flyingDays(out, w.Day); a.yard.told(out, w.Day) {
			said += " after " + Count(flew, "flying day")
		}
	}
	if w.Amiss {
		return said + ": nothing the book knows explains it; what was known before is dropped"
	}
	return said + ": " + change(w.Before, w.After)
}

// flyingDays are the days on which a virgin was old enough to mate and an hour
// or more was fit to fly.
func (a asked) flyingDays(out, until calendar.Day) (n int) {
	for d := out + a.days(practice.FirstMatingFlightFrom); d < until; d++ {
		if a.yard.at(d) >= 1 {
			n++
		}
	}
	return n
}

// change is the greatest of what a look changed, in words.
func change(before, after Chances) string {
	kinds := []struct {
		name string
		of   func(Chances) float64
	}{
		{"laying", Chances.Lays},
		{"still to lay", func(c Chances) float64 { return c.Cell + c.Virgin + c.Mated }},
		{"a queen of its own to come", func(c Chances) float64 { return c.OwnCell + c.OwnVirgin + c.OwnMated }},
		{"drone layer", func(c Chances) float64 { return c.DroneLayer }},
		{"laying workers", func(c Chances) float64 { return c.LayingWorkers }},
		{"no queen", func(c Chances) float64 { return c.None }},
	}
	best, most := kinds[0], 0.0
	for _, k := range kinds {
		if by := math.Abs(k.of(after) - k.of(before)); by > most+1e-9 {
			best, most = k, by
		}
	}
	from, to := percent(best.of(before)), percent(best.of(after))
	switch {
	case from == to:
		return fmt.Sprintf("%s stays at %d %%", best.name, to)
	case from < to:
		return fmt.Sprintf("%s rises from %d to %d %%", best.name, from, to)
	default:
		return fmt.Sprintf("%s falls from %d to %d %%", best.name, from, to)
	}
}

func percent(p float64) int { return int(math.Round(100 * p)) }

// String is what was seen, in words.
func (s Sight) String() string {
	var said []string
	add := func(on bool, what string) {
		if on {
			said = append(said, what)
		}
	}
	add(s.Queen != book.Unsaid, s.Queen.String())
	add(s.Eggs != book.EggsUnsaid, s.Eggs.String())
	add(s.Larvae, "larvae")
	add(s.Capped == Some, "capped worker brood")
	add(s.Capped == No, "no capped worker brood")
	add(s.Drones, "drone brood in worker cells")
	add(s.OwnCells == Some, "own cells")
	add(s.OwnCells == No, "no own cells")
	add(s.Cell != book.CellUnsaid, s.Cell.String())
	return strings.Join(said, ", ")
}
