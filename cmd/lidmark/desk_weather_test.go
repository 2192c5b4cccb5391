package main

import (
	"os"
	"path/filepath"
	"strings"
	"testing"

	"lidmark/ui/state"
)

// Weather is taken in from a table and from a saved forecast, chosen or dropped:
// shown first, kept in one stroke, undone in one.
func TestWeatherIsTakenIn(t *testing.T) {
	for name, text := range map[string]string{
		"w.csv":  "Time,Temp (°C),Wind (km/h)\n2027-05-10 12:00,19,7\n2027-05-10 14:00,20,9\n2027-05-12 12:00,18,5\n",
		"w.json": `{"hourly":{"time":["2027-05-10T12:00","2027-05-10T14:00","2027-05-12T12:00"],"temperature_2m":[19,20,18]},"hourly_units":{"temperature_2m":"°C"}}`,
	} {
		for _, way := range []string{"take in weather", "drop"} {
			w := newWorld(t, t.TempDir())
			w.opens(aBook(t))
			file := filepath.Join(t.TempDir(), name)
			check(t, os.WriteFile(file, []byte(text), 0o666))
			take := func() *state.Bring {
				w.send(state.Chose{For: way, Path: file})
				w.settle()
				return w.state.Bring
			}
			before := w.entries()
			b := take()
			if b == nil || b.Series == nil {
				t.Fatalf("%s, %s: no page: %q", name, way, w.state.Note.Text)
			}
			says := strings.Join(append(b.Series.Notes, b.Series.Fit, b.Means[1].Word), "; ")
			for _, want := range []string{"temperature, °C", "1 whole day missing: Tue 11 May", "missing of 22 hours", "Fit to fly: Mon 10 May", "Wed 12 May"} {
				if name == "w.csv" && !strings.Contains(says, want) {
					t.Errorf("%s: %q does not say %q", name, says, want)
				}
			}
			w.run("give back")
			if w.settle(); w.entries() != before || w.state.Fill != state.NoFill {
				t.Error("left, something was kept")
			}
			take()
			w.run("keep list")
			if w.settle(); w.entries() != before+2 || !strings.Contains(w.state.Note.Text, "2 days") {
				t.Errorf("%d entries are new, want 2: %q", w.entries()-before, w.state.Note.Text)
			}
			take()
			if c, _ := state.CommandNamed("keep list"); !strings.Contains(c.Reason(w.state), "has all of it") {
				t.Errorf("taken in twice: %q", c.Reason(w.state))
			}
			w.run("give back")
			w.run("undo")
			w.settle()
			if take(); len(w.state.Bring.Series.News) != 2 {
				t.Error("undone, the book still has it")
			}
		}
	}
}

// What the columns of a file were said to mean is known of the next file with the
// same headings, here and in the terminal.
func TestColumnsOfWeatherAreKept(t *testing.T) {
	w := newWorld(t, t.TempDir())
	w.opens(aBook(t))
	file := filepath.Join(t.TempDir(), "w.csv")
	read := func(text string) []state.Meaning {
		check(t, os.WriteFile(file, []byte("Time,Reading,Blow\n"+text), 0o666))
		w.send(state.Chose{For: "take in weather", Path: file})
		w.settle()
		return w.state.Bring.Means
	}
	if m := read("2027-05-10 12:00,68,9\n"); !m[1].Left {
		t.Fatalf("column B is guessed as %q", m[1].Word)
	}
	for field, text := range map[string]string{state.ListColumn(2): "temperature °F", state.ListColumn(3): "wind mph", state.ListHeight: "2"} {
		w.state = w.state.WithField(field, state.Field{})
		w.state.Focus = state.FieldNamed(field)
		w.send(state.Pasted{Text: text})
	}
	w.run("keep list")
	w.settle()
	m := read("2027-05-11 12:00,70,9\n")
	if c := w.state.Bring.Series.Choice; m[1].Value != "temperature °F" || m[2].Value != "wind mph" || c.Height != 2 {
		t.Errorf("of the next file the columns are %v", c)
	}
}

// A row that cannot be meant is shown with its place and what to do; a file that is
// none says so.
func TestWeatherThatCannotBeMeant(t *testing.T) {
	w := newWorld(t, t.TempDir())
	w.opens(aBook(t))
	file := filepath.Join(t.TempDir(), "w.csv")
	check(t, os.WriteFile(file, []byte("Time,Temp\n2027-05-10 12:00,warm\n"), 0o666))
	w.send(state.Chose{For: "take in weather", Path: file})
	w.settle()
	if said := state.MistakesOf(w.state.Bring.Result.Rows[0]); !strings.Contains(said, `column B: "warm" is no number`) {
		t.Errorf("row 2 says %q", said)
	}
	w.send(state.Chose{For: "take in weather", Path: file + "x"})
	if w.settle(); !w.state.Note.Bad || !strings.Contains(w.state.Note.Text, "choose a file") {
		t.Errorf("it says %q", w.state.Note.Text)
	}
}
