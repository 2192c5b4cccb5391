package main

import (
	"fmt"
	"math"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/rules"
	"lidmark/domain/strength"
)

// enoughShape is what a make-up comes to by the next morning, in JSON.
type enoughShape struct {
	Bees     float64   `json:"beesNextMorning"`
	Open     float64   `json:"leftOpen"`
	ShutIn   float64   `json:"shutIn"`
	Night    string    `json:"night"`
	Need     float64   `json:"needOfTheNight"`
	Enough   bool      `json:"enough"`
	MoreOpen float64   `json:"cupsShortLeftOpen"`
	MoreShut float64   `json:"cupsShortShutIn"`
	Cups     float64   `json:"enoughCups"`
	Shut     bool      `json:"enoughShutIn"`
	Left     float64   `json:"enoughBees"`
	All      loadShape `json:"allCups"`
	More     loadShape `json:"moreCups"`
}

// loadShape is what cups of bees weigh and who gives them, in JSON.
type loadShape struct {
	Cups  float64 `json:"cups"`
	Bees  float64 `json:"bees"`
	Kg    float64 `json:"kg"`
	Fewer int     `json:"coloniesFrom"`
	Most  int     `json:"coloniesTo"`
}

func shapeOfLoad(l strength.Load) loadShape {
	return loadShape{l.Cups, math.Round(l.Bees), round(l.Kilograms), l.Fewer, l.More}
}

func enoughCommand(a *app) *cobra.Command {
	var cups float64
	var nucs int
	var from string
	var m strength.MakeUp
	c := a.reading(&cobra.Command{
		Use:     "enough",
		Short:   "Before making up: are so many cups enough for tomorrow morning, and what would be",
		Example: "  lidbook enough --cups 3 --nucs 40 --from S2 --thin",
		Args:    cobra.NoArgs,
	}, func(_ *cobra.Command, v *book.View, _ []string) error {
		if cups <= 0 || nucs <= 0 {
			return fmt.Errorf("say how many cups each of how many nucs gets, as in: lidbook enough --cups 3 --nucs 40")
		}
		f := finder{View: v}
		y, err := f.homeOr(a.flags.yard)
		if err != nil {
			return err
		}
		m.Cups = cups
		if from != "" {
			c, err := f.colony(from)
			if err != nil {
				return err
			}
			m.From = c.Colony.Subject()
		}
		morning := strength.NewYard(v, y.Yard, y.Zone).Morning(m)
		load := func(cups float64) strength.Load { return strength.LoadOf(float64(nucs)*cups, v.Numbers()) }
		more := load(max(0, morning.Enough.Cups-cups))
		if !morning.Short() {
			more = strength.Load{}
		}
		return a.show(shapeOfMorning(morning, load(cups), more), func() { a.printMorning(m, morning, load(cups), more, nucs) })
	})
	fl := c.Flags()
	amount(c, &cups, "cups", 0, "cups of bees for each")
	amount(c, &nucs, "nucs", 1, "how many nucs are made up")
	fl.BoolVar(&m.Shut, "shut", false, "shut in at first")
	fl.BoolVar(&m.Thin, "thin", false, "in thin wood")
	fl.StringVar(&from, "from", "", "the `COLONY` the bees come from (else bees who know the way home)")
	fl.StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}

func shapeOfMorning(m strength.Morning, all, more strength.Load) enoughShape {
	return enoughShape{
		Bees: math.Round(m.Bees), Open: math.Round(m.Open), ShutIn: math.Round(m.ShutIn), Night: m.Night.String(), Need: math.Round(m.Need),
		Enough: !m.Short(), MoreOpen: m.MoreOpen, MoreShut: m.MoreShut, Cups: m.Enough.Cups, Shut: m.Enough.Shut, Left: math.Round(m.EnoughBees),
		All: shapeOfLoad(all), More: shapeOfLoad(more),
	}
}

func (a *app) printMorning(i strength.MakeUp, m strength.Morning, all, more strength.Load, nucs int) {
	a.line("%g cups a nuc: %.0f bees next morning left open, %.0f shut in; a %s needs %.0f", i.Cups, m.Open, m.ShutIn, m.Night, m.Need)
	a.line("  in all %g cups: %.0f bees, %.1f kg", all.Cups, all.Bees, all.Kilograms)
	if !m.Short() {
		a.line("  enough")
		return
	}
	a.line("  too few: %s; %s", rules.EnoughWords(m), rules.LoadWords(more, nucs))
}
