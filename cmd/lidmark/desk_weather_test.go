package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"lidmark/ui/state"
)

// Weather is taken in from a table and from a saved forecast: asked first, kept
// in one stroke, undone in one.
func TestWeatherIsTakenIn(t *testing.T) {
	for _, text := range map[string]string{
		"w.csv":  "Time,Temp (°C),Wind (km/h)\n2027-05-10 12:00,19,7\n2027-05-10 14:00,20,9\n2027-05-11 12:00,18,5\n",
		"w.json": `{"hourly":{"time":["2027-05-10T12:00","2027-05-10T14:00","2027-05-11T12:00"],"temperature_2m":[19,20,18]},"hourly_units":{"temperature_2m":"°C"}}`,
	} {
		w := newWorld(t, t.TempDir())
		w.opens(aBook(t))
		file := filepath.Join(t.TempDir(), "w.csv")
		check(t, os.WriteFile(file, []byte(text), 0o666))
		take := func() *state.Asked {
			w.send(state.Chose{For: "take in weather", Path: file})
			w.settle()
			return w.state.Asked
		}
		before := w.entries()
		a := take()
		if a == nil {
			t.Fatalf("nothing is asked: %q", w.state.Note.Text)
		}
		for _, want := range []string{"temperature °C", "missing of 22 hours", "Fit to fly: Mon 10 May", "Tue 11 May"} {
			if !strings.Contains(a.Asks, want) {
				t.Errorf("%q does not say %q", a.Asks, want)
			}
		}
		w.send(state.Keyed{Key: "2"})
		if w.settle(); w.entries() != before || w.state.Asked != nil {
			t.Error("left, something was kept")
		}
		take()
		w.send(state.Keyed{Key: "1"})
		if w.settle(); w.entries() != before+2 || !strings.Contains(w.state.Note.Text, "2 days") {
			t.Errorf("%d entries are new, want 2: %q", w.entries()-before, w.state.Note.Text)
		}
		if take() != nil || !strings.Contains(w.state.Note.Text, "has all of it") {
			t.Errorf("taken in twice: %q", w.state.Note.Text)
		}
		w.run("undo")
		if w.settle(); take() == nil {
			t.Error("undone, the book still has it")
		}
	}
}

func TestWeatherThatCannotBeMeant(t *testing.T) {
	w := newWorld(t, t.TempDir())
	w.opens(aBook(t))
	file := filepath.Join(t.TempDir(), "w.csv")
	check(t, os.WriteFile(file, []byte("Time,Temp\n2027-05-10 12:00,warm\n"), 0o666))
	for path, want := range map[string]string{file: "row 2, column B", file + "x": "choose a file"} {
		w.send(state.Chose{For: "take in weather", Path: path})
		w.settle()
		if n := w.state.Note; !n.Bad || !strings.Contains(n.Text, want) || w.state.Asked != nil {
			t.Errorf("it says %q, want %q", n.Text, want)
		}
	}
}
