package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

func makeUpCommand(a *app) *cobra.Command {
	var m book.NucMadeUp
	var from string
	c := a.writing(&cobra.Command{
		Use:     "makeup NUCS...",
		Short:   "Write down that nucs were made up",
		Example: "  lidbook makeup A1-A12 --cups 3 --from S2 --shut --food 400\n  lidbook makeup A1-A12 B1-B6 --cups 3",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		nucs, err := f.nucs(args...)
		if err != nil {
			return err
		}
		if from != "" {
			c, err := f.colony(from)
			if err != nil {
				return err
			}
			m.From = c.Colony
		}
		var facts []book.Fact
		for _, id := range nucs {
			m.Nuc = id
			facts = append(facts, m)
		}
		if err := plausible(facts...); err != nil {
			return err
		}
		d.minds(rules.MakeUp{Nucs: nucs, Cups: m.Cups, Shut: m.Shut, From: m.From})
		return d.write(facts...)
	})
	fl := c.Flags()
	amount(c, &m.Cups, "cups", 0, "cups of bees for each")
	amount(c, &m.Capped, "capped", 0, "capped worker brood for each, in palms (1 dm²)")
	amount(c, &m.Open, "open", 0, "eggs and larvae for each, in palms (1 dm²)")
	amount(c, &m.Food, "food", 0, "food for each, in g")
	fl.BoolVar(&m.Shut, "shut", false, "shut in at first")
	fl.StringVar(&from, "from", "", "the `COLONY` the bees came from")
	fl.StringVar(&a.flags.yard, "yard", "", "look for names in this `YARD` first")
	return c
}

func broodCommand(a *app) *cobra.Command {
	var g book.BroodGiven
	var from string
	c := a.writing(&cobra.Command{
		Use:     "brood TO...",
		Short:   "Write down combs of brood given to a colony or nuc",
		Long:    "Open brood in a colony that would raise a queen from it starts a clock of wild\ncells: it must be searched in time.",
		Example: "  lidbook brood S3 --combs 2 --open 8 --from S2",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		all, err := f.units(args...)
		if err != nil {
			return err
		}
		if from != "" {
			if g.From, err = f.unit(from); err != nil {
				return err
			}
		}
		if g.Combs+g.Capped+g.Open == 0 {
			return fmt.Errorf("say how much for each: --combs, --capped or --open")
		}
		var facts []book.Fact
		for _, g.To = range all {
			facts = append(facts, g)
		}
		return d.write(facts...)
	})
	fl := c.Flags()
	amount(c, &g.Combs, "combs", 0, "how many combs")
	amount(c, &g.Capped, "capped", 0, "capped worker brood in palms (1 dm²)")
	amount(c, &g.Open, "open", 0, "eggs and larvae in palms (1 dm²)")
	fl.StringVar(&from, "from", "", "the colony or nuc it came from")
	fl.StringVar(&a.flags.yard, "yard", "", "look for a nuc's name in this `YARD` first")
	return c
}

func searchCommand(a *app) *cobra.Command {
	var found int
	c := a.writing(&cobra.Command{
		Use:     "search COLONY...",
		Short:   "Write down a search for wild cells",
		Example: "  lidbook search S3 --found 1\n  lidbook search S3 S4",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		all, err := finder{View: d.viewThen()}.units(args...)
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, of := range all {
			facts = append(facts, book.WildCellsSearched{In: of, Found: found})
		}
		return d.write(facts...)
	})
	amount(c, &found, "found", 0, "wild cells found in each and broken down")
	return c
}

func feedCommand(a *app) *cobra.Command {
	var litres, fondant float64
	c := a.writing(&cobra.Command{
		Use:     "feed NAME...",
		Short:   "Write down feed given to colonies or nucs",
		Example: "  lidbook feed S3 --litres 1\n  lidbook feed A1-A6 B2 --fondant 250",
		Args:    cobra.MinimumNArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		if litres+fondant == 0 {
			return fmt.Errorf("say how much: --litres of syrup or --fondant in g")
		}
		f, err := d.finder(d.viewThen())
		if err != nil {
			return err
		}
		all, err := f.units(args...)
		if err != nil {
			return err
		}
		var facts []book.Fact
		for _, to := range all {
			facts = append(facts, book.Fed{To: to, Litres: litres, Fondant: fondant})
		}
		return d.write(facts...)
	})
	amount(c, &litres, "litres", 0, "litres of syrup for each")
	amount(c, &fondant, "fondant", 0, "g of fondant for each")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "look for a nuc's name in this `YARD` first")
	return c
}

func weatherCommand(a *app) *cobra.Command {
	var from string
	c := a.writing(&cobra.Command{
		Use:   "weather SIGNS",
		Short: "Write down the weather, a sign a day: + flying, ± half, − none",
		Long: "One sign a day, from today on: + flying, ± half a day fit to fly, − none. Days to\ncome are kept as forecast. Where the keys are missing, type h for ± and 0 for −.\n" +
			"Signs that begin with - go behind two dashes: lidbook weather -- --+",
		Example: "  lidbook weather +\n  lidbook weather \"++±−−+\" --from -3",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		y, err := finder{View: d.view()}.homeOr(a.flags.yard)
		if err != nil {
			return err
		}
		today := calendar.DayOf(d.now, d.zone)
		first := when{day: today}
		if from != "" {
			if first, err = parseWhen(from, today, d.zone); err != nil {
				return fmt.Errorf("--from: %w", err)
			}
		}
		facts, err := weather(args[0], first.day, today, y.Yard)
		if err != nil {
			return err
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&from, "from", "", "the `DAY` of the first sign (else today)")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}

// furthest is how many days ahead weather is foretold by anybody.
const furthest = 16

// weather reads signs of weather, one a day.
func weather(signs string, day, today calendar.Day, yard book.YardID) ([]book.Fact, error) {
	var facts []book.Fact
	column := 0
	for _, r := range signs {
		column++
		f := book.WeatherSeen{Yard: yard, Day: day, Forecast: day > today}
		switch {
		case r == ' ':
			continue
		case r == '+':
			f.Sign = book.Flying
		case strings.ContainsRune("±h~", r):
			f.Sign = book.HalfFit
		case strings.ContainsRune("−-–0", r):
			f.Sign = book.NoFlight
		default:
			return nil, fmt.Errorf("column %d: %q is no sign of weather; write + ± − a day", column, r)
		}
		if day > today+furthest {
			return nil, fmt.Errorf("column %d: %s is more than %d days ahead, no forecast reaches so far", column, day.Short(), furthest)
		}
		facts = append(facts, f)
		day++
	}
	return facts, nil
}

func forageCommand(a *app) *cobra.Command {
	c := a.writing(&cobra.Command{
		Use:       "forage flow|dearth",
		Short:     "Write down that a yard is in flow or in dearth from now on",
		Example:   "  lidbook forage dearth --on yesterday",
		Args:      cobra.ExactArgs(1),
		ValidArgs: []string{"flow", "dearth"},
	}, func(d *desk, _ *cobra.Command, args []string) error {
		y, err := finder{View: d.view()}.homeOr(a.flags.yard)
		if err != nil {
			return err
		}
		f := book.ForageSeen{Yard: y.Yard}
		if err := f.Forage.UnmarshalText([]byte(args[0])); err != nil {
			return err
		}
		return d.write(f)
	})
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}
