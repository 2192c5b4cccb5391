package main

import (
	"cmp"
	"fmt"
	"os"
	"path/filepath"
	"reflect"
	"strings"

	"github.com/spf13/cobra"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
	"lidmark/domain/roll"
	"lidmark/domain/series"
	"lidmark/storage/weatherfile"
)

func importWeather(a *app) *cobra.Command {
	var columns, encoding string
	c := a.writing(&cobra.Command{
		Use:   "weather FILE",
		Short: "Take in weather by the hour or by the day: a table (CSV, XLSX), or a forecast saved as JSON",
		Long: "Reads a series of weather and says what it understood before anything is written.\nDays after today are kept as forecast. Hours and days that are missing are\ntold with their dates. What the columns mean is guessed from their\n" +
			"headings; what you say with --columns is remembered for files with the same headings.\nColumns: " + weatherColumnWords() + ".",
		Example: "  lidbook import weather mast.csv --yard \"Far Hill\"\n  lidbook import weather forecast.json --yes\n  lidbook import weather log.csv --columns \"time,temperature °F,ignored,wind mph,at 2 m\"",
		Args:    cobra.ExactArgs(1),
	}, func(d *desk, _ *cobra.Command, args []string) error {
		return d.importWeather(args[0], columns, encoding)
	})
	f := c.Flags()
	f.StringVar(&columns, "columns", "", "what the `COLUMNS` mean, from the left, like time,temperature,wind km/h (else as before, or guessed)")
	f.StringVar(&encoding, "encoding", "", "`ENCODING` of the text of a table, like windows-1252")
	f.StringVar(&a.flags.yard, "yard", "", "in this `YARD` (else the home yard)")
	f.BoolVarP(&a.flags.yes, "yes", "y", false, "take it in without asking")
	return c
}

// weatherColumnWords are what a column can be, with its units.
func weatherColumnWords() string {
	return "time, clock (beside a column of days), temperature or low and high\n(°C, °F, K), wind (m/s, km/h, mph, knots; at 2 m where it was measured so low), rain\n(mm, cm, inch), cloud or sun (%, share, oktas), ignored"
}

// importWeather takes a series in when it can be meant and somebody says yes.
func (d *desk) importWeather(path, columns, encoding string) error {
	y, err := finder{View: d.view()}.homeOr(d.flags.yard)
	if err != nil {
		return err
	}
	file, err := openText(path)
	if err != nil {
		return err
	}
	defer file.Close() // nothing was written
	in, err := weatherfile.Open(path, file, encoding)
	if err != nil {
		return err
	}
	choice := weatherfile.Recall(in, choicesFile())
	if columns != "" {
		if choice, err = series.ParseChoice(columns); err != nil {
			return fmt.Errorf("--columns: %w", err)
		}
	}
	d.sayColumns(in, choice)
	taken, err := in.Take(choice, series.Where{Yard: y.Yard, Zone: y.Zone, Today: calendar.DayOf(d.now, y.Zone)})
	if err != nil {
		return err
	}
	facts := unknown(y, taken.Facts)
	d.sayWeather(facts, taken, y)
	switch {
	case len(facts) == 0:
		d.line("nothing to take in: the book has all of it")
		return nil
	case !d.agreed():
		return refuse("nothing was taken in: add --yes when it reads right")
	}
	if err := plausible(facts...); err != nil {
		return err
	}
	if err := d.append(d.entries(d.at, facts...)...); err != nil {
		return err
	}
	d.line("taken in: %s of %s", plural(len(facts), "day"), path)
	if columns == "" {
		return nil
	}
	return weatherfile.Remember(choicesFile(), in.Key(), choice)
}

// choicesFile is where choices of columns are kept on this machine.
func choicesFile() string {
	at, err := os.UserConfigDir()
	if err != nil {
		at = os.TempDir()
	}
	return filepath.Join(at, "lidmark", "weather-columns.json")
}

// unknown are the facts that the book does not hold yet.
func unknown(y *book.Yard, facts []book.Fact) (news []book.Fact) {
	for _, f := range facts {
		switch f := f.(type) {
		case book.WeatherHours:
			if was, ok := y.Hours[f.Day]; ok && (reflect.DeepEqual(was, f) || f.Forecast && !was.Forecast) {
				continue
			}
		case book.WeatherSeen:
			if was, ok := y.Weather[f.Day]; ok && (was == f || f.Forecast && !was.Forecast) {
				continue
			}
		}
		news = append(news, f)
	}
	return news
}

func (d *desk) sayColumns(in *series.File, c series.Choice) {
	var all []string
	for i, col := range c.Columns {
		heading := ""
		if i < len(in.Headings) {
			heading = in.Headings[i]
		}
		all = append(all, roll.Letters(i+1)+" "+cmp.Or(heading, "(no heading)")+": "+col.String())
	}
	d.line("columns: %s", strings.Join(all, "; "))
	if c.Height != 0 {
		d.line("wind was measured at %g m", c.Height)
	}
}

// sayWeather says what would be written, the first and the last days of it.
func (d *desk) sayWeather(facts []book.Fact, taken series.Series, y *book.Yard) {
	const few = 3
	names := line.In(d.view())
	for i, f := range facts {
		if i < few || i >= len(facts)-few {
			d.line("%s", line.Words(f, names))
		} else if i == few {
			d.line("… %s more …", plural(len(facts)-2*few, "day"))
		}
	}
	if gaps := taken.Gaps.Words(); gaps != "" {
		d.line("%s", gaps)
	}
	for _, doubt := range taken.Doubts {
		d.line("%s", doubt)
	}
	d.line("%s new for %s", plural(len(facts), "day"), y.Name)
}
