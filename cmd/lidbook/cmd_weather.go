package main

import (
	"fmt"

	"github.com/spf13/cobra"

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
		facts, err := line.Weather(args[0], first.Day, today, y.Yard)
		if err != nil {
			return err
		}
		return d.write(facts...)
	})
	c.Flags().StringVar(&from, "from", "", "the `DAY` of the first sign (else today)")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}
