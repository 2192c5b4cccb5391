package main

import (
	"errors"
	"os"
	"path/filepath"

	"lidmark/storage/weatherfile"
	"lidmark/ui/state"
)

// readWeather reads a series of weather, its columns as they were chosen last for
// such a file, else as their headings say.
func (d *desk) readWeather(e state.ReadWeather) state.WeatherRead {
	m := state.WeatherRead{Path: e.Path}
	name := filepath.Base(e.Path)
	f, err := os.Open(e.Path)
	if err != nil {
		m.Failed = name + ": it cannot be found or read; choose a file that is there"
		return m
	}
	defer func() { _ = f.Close() }() // it was only read
	m.File, err = weatherfile.Open(name, f, e.Encoding)
	var undecided *weatherfile.Undecided
	switch {
	case errors.As(err, &undecided):
		m.Encodings = undecided.Encodings
	case err != nil:
		m.Failed = err.Error()
	default:
		m.Choice = weatherfile.Recall(m.File, d.columnsFile())
	}
	return m
}

// keepColumns keeps what the columns of a series mean.
func (d *desk) keepColumns(e state.KeepColumns, tell func(state.Msg)) {
	if err := weatherfile.Remember(d.columnsFile(), e.Key, e.Choice); err != nil {
		tell(bad(err.Error()))
	}
}

// columnsFile is where the terminal keeps them too.
func (d *desk) columnsFile() string { return filepath.Join(d.folder, "weather-columns.json") }
