package main

import (
	"fmt"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

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
		first := line.When{Day: today}
		if from != "" {
			if first, err = line.ParseWhen(from, today, d.zone); err != nil {
				return fmt.Errorf("--from: %w", err)
			}
		}
		facts, err := weather(args[0], first.Day, today, y.Yard)
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
