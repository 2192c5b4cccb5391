package main

import (
	"fmt"
	"strconv"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/weather"
)

func weatherCommand(a *app) *cobra.Command {
	var from string
	var back, ahead int
	c := a.writing(&cobra.Command{
		Use:   "weather [SIGNS]",
		Short: "Hours fit for mating flights a day; or write down the weather, a sign a day: + flying, ± half, − none",
		Long: "Without signs: the days back and ahead with their hours fit for mating flights, and\nwhether they were seen, are forecast, usual for the date, or assumed.\n\n" +
			"One sign a day, from today on: + flying, ± half a day fit to fly, − none. Days to\ncome are kept as forecast. Where the keys are missing, type h for ± and 0 for −.\n" +
			"Signs that begin with - go behind two dashes: lidbook weather -- --+\n\nOther ways to tell it: lidbook import weather takes a table or a saved forecast by the\nhour or the day; lidbook weather normal writes what is usual in a month, over whose\nspread the hours and the chance of other days are integrated; lidbook forage says\nsince when there is flow or dearth. The first of seen, forecast and usual that tells\nof a day is the only one that counts for it.",
		Example: "  lidbook weather +\n  lidbook weather \"++±−−+\" --from -3\n  lidbook weather --back 14 --ahead 7\n  lidbook weather normal May --low 8 --high 19 --rainy 40\n  lidbook import weather forecast.json\n  lidbook forage dearth --on 2027-05-18",
		Args:    cobra.MaximumNArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error { return d.writeSigns(args[0], from) })
	f := c.Flags()
	f.StringVar(&from, "from", "", "the `DAY` of the first sign (else today)")
	f.StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	f.StringVar(&a.flags.known, "known", "", "as it was known on a `DAY`")
	f.BoolVar(&a.flags.demo, "demo", false, "read the demo season instead of a book")
	f.BoolVar(&a.flags.json, "json", false, "print JSON, with the names that lidbook json lists")
	amount(c, &back, "back", 7, "how many days back to show")
	amount(c, &ahead, "ahead", 7, "how many days ahead to show")
	write := c.RunE
	c.RunE = func(c *cobra.Command, args []string) error {
		if len(args) > 0 {
			return write(c, args)
		}
		return a.showWeather(back, ahead)
	}
	c.AddCommand(normalCommand(a))
	return c
}

// writeSigns writes signs down, a day each.
func (d *desk) writeSigns(signs, from string) error {
	y, err := finder{View: d.view()}.homeOr(d.flags.yard)
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
	facts, err := line.Weather(signs, first.Day, today, y.Yard)
	if err != nil {
		return err
	}
	return d.write(facts...)
}

// flightShape is a day's weather in JSON: its layer is seen, forecast, typical or
// assumed, its chance that of at least one fit hour.
type flightShape struct {
	Day    string  `json:"day"`
	Layer  string  `json:"layer"`
	Hours  float64 `json:"fitHours"`
	Chance float64 `json:"chanceOfAFitHour"`
	Why    string  `json:"why"`
}

// showWeather prints the days about the one that is read.
func (a *app) showWeather(back, ahead int) error {
	const most = 400
	if back > most || ahead > most {
		return fmt.Errorf("%d days: write %d at most", max(back, ahead), most)
	}
	s, err := a.season()
	if err != nil {
		return err
	}
	v, err := a.view(s)
	if err != nil {
		return err
	}
	y, err := finder{View: v}.homeOr(a.flags.yard)
	if err != nil {
		return err
	}
	of, today := weather.NewYard(v, y.Yard), v.Today()
	list, rows := []flightShape{}, [][]string{}
	for d := today - calendar.Day(back); d <= today+calendar.Day(ahead); d++ {
		f := of.Day(d)
		list = append(list, flightShape{d.String(), f.Layer.String(), f.Hours, f.Chance, f.Why})
		rows = append(rows, []string{
			d.Short(), f.Layer.String(), fmt.Sprintf("%.1f h", f.Hours), fmt.Sprintf("%.0f %%", 100*f.Chance), f.Why,
		})
	}
	return a.show(list, func() {
		a.line("%s: hours fit for mating flights, and the chance of at least one", y.Name)
		if y.Forage != 0 {
			a.line("in %s since %s", y.Forage, y.ForageSince.Day(v.Zone()).Short())
		}
		a.table(rows)
	})
}

func normalCommand(a *app) *cobra.Command {
	var low, high, spread, wind, rainy, sun float64
	c := a.writing(&cobra.Command{
		Use:   "normal MONTH",
		Short: "Write down what is usual in a month, for days of which nobody said anything",
		Long: "The usual weather of a month: mean low and high in °C, by how much days stray from\nthem, the mean wind in m/s, the share of days with rain and of sun, both in per cent.\n" +
			"A station's or an almanac's normals do.",
		Example: "  lidbook weather normal May --low 8 --high 19 --spread 4 --wind 3 --rainy 40 --sun 50",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, c *cobra.Command, args []string) error {
		y, err := finder{View: d.view()}.homeOr(a.flags.yard)
		if err != nil {
			return err
		}
		month, err := monthOf(args[0])
		if err != nil {
			return err
		}
		said := func(flag string, v, by float64) book.Amount {
			if !c.Flags().Changed(flag) {
				return book.Amount{}
			}
			return book.Said(v / by)
		}
		const percent = 100
		f := book.WeatherNormal{
			Yard: y.Yard, Month: month, Low: said("low", low, 1), High: said("high", high, 1), Spread: said("spread", spread, 1),
			Wind: said("wind", wind, 1), Rainy: said("rainy", rainy, percent), Sky: said("sun", sun, percent),
		}
		if f.Low.IsZero() && f.High.IsZero() {
			return fmt.Errorf("no temperature: say at least one with --low or --high, as in: lidbook weather normal May --low 8 --high 19")
		}
		if !f.Low.IsZero() && !f.High.IsZero() && low > high {
			return fmt.Errorf("--low %g lies above --high %g: turn them round", low, high)
		}
		return d.write(f)
	})
	signed(c, &low, "low", "mean low in °C")
	signed(c, &high, "high", "mean high in °C")
	amount(c, &spread, "spread", 0, "by how many °C days stray from the mean, as a standard deviation")
	amount(c, &wind, "wind", 0, "mean wind in m/s at 10 m")
	amount(c, &rainy, "rainy", 0, "how many per cent of days have rain")
	amount(c, &sun, "sun", 0, "how many per cent of the day the sun shines")
	c.Flags().StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	return c
}

// monthOf reads a month by its name, the first three letters of it, or its number.
func monthOf(text string) (int, error) {
	if n, err := strconv.Atoi(text); err == nil && n >= 1 && n <= 12 {
		return n, nil
	}
	for m := time.January; m <= time.December; m++ {
		if t := strings.ToLower(text); len(t) >= 3 && strings.HasPrefix(strings.ToLower(m.String()), t) {
			return int(m), nil
		}
	}
	return 0, fmt.Errorf("month %q: write its name or its number, like May or 5", text)
}
