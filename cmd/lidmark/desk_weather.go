package main

import (
	"os"
	"path/filepath"
	"strings"

	"lidmark/domain/roll"
	"lidmark/domain/rules"
	"lidmark/storage/weatherfile"
	"lidmark/ui/state"
)

// readWeather reads a series of weather, its columns as they were chosen last for
// such a file, else as their headings say.
func (d *desk) readWeather(e state.ReadWeather) state.WeatherRead {
	m := state.WeatherRead{Path: e.Path, Yard: e.Yard.Yard}
	name := filepath.Base(e.Path)
	f, err := os.Open(e.Path)
	if err != nil {
		m.Failed = name + ": it cannot be found or read; choose a file that is there"
		return m
	}
	defer func() { _ = f.Close() }() // it was only read
	in, err := weatherfile.Open(name, f, "")
	if err != nil {
		m.Failed = err.Error()
		return m
	}
	choice := in.Recall(filepath.Join(d.folder, "weather-columns.json")) // where the terminal keeps them too
	m.Columns = columnsTaken(choice)
	series, err := in.Take(choice, weatherfile.Where{Yard: e.Yard.Yard, Zone: e.Yard.Zone, Today: e.Today})
	for _, fact := range series.Facts {
		if err == nil {
			err = rules.Plausible(fact)
		}
	}
	if err != nil {
		m.Failed = err.Error()
		return m
	}
	m.Facts, m.Missing = series.Facts, series.Missing
	return m
}

// columnsTaken says what the columns were taken for; of the others nothing.
func columnsTaken(c weatherfile.Choice) string {
	var all []string
	for i, col := range c.Columns {
		if col.What != weatherfile.Ignored {
			all = append(all, roll.Letters(i+1)+" "+col.String())
		}
	}
	return "Columns: " + strings.Join(all, ", ")
}
