package state_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/roll"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// nasty are cells that no keeper writes on purpose.
var nasty = []string{
	"NaN", "1e999", "-0", "99999999999999999999", "\x00", "a\x00b", "two\nlines", "עברית", "🐝👑", "\u202eturned", "\ufffd", "=1+1",
	strings.Repeat("x", 1<<20), strings.Repeat("W ", 400),
}

// What is wrong with a row is given room for all its words, in every width, and
// rows lie one below the other.
func TestMistakesOfAListHaveRoom(t *testing.T) {
	rows := []roll.Row{cells(1, "Nuc", "State", "Cell in", "Queen")}
	for i, text := range nasty {
		rows = append(rows, cells(2*i+2, "A1", text, "3 May 2027", text), cells(2*i+3, text, "virgin", text, ""))
	}
	for _, size := range [][3]float64{{1280, 800, 1}, {1280, 800, 1.5}, {800, 560, 2}} {
		w := &window{t: t, State: state.State{Now: now, Width: size[0], Height: size[1], Machine: state.Machine{Zone: "Europe/Berlin", Zones: time.LoadLocation, Folder: "/books/"}}}
		w.Text = size[2]
		w.send(state.ListRead{Path: "/a.csv", List: roll.List{File: "a.csv", Sheets: []roll.Sheet{{Name: "a", Rows: rows}}}})
		l := w.ListLayout()
		if w.Bring.Result.Counts.Mistaken == 0 {
			t.Fatal("no row has a mistake")
		}
		for i, row := range w.Bring.Result.Rows {
			high := l.Top(i+1) - l.Top(i)
			if want := state.ListRow + state.ListLine*float64(l.Lines(i)); high != want {
				t.Fatalf("%v: row %d is %v high, want %v", size, i, high, want)
			}
			room := float64(max(l.Lines(i), 1)) * l.Table.W
			if said := state.MistakesOf(row); !row.Skipped && (state.Reckoner{}).Width(said, 14, scene.Regular) > room {
				t.Errorf("%v: row %d has no room for %.80q", size, i, said)
			}
		}
		if at := w.run("next mistake").ListLayout(); at.FirstRow >= len(w.Bring.Result.Rows) {
			t.Errorf("%v: the first row in sight is %d", size, at.FirstRow)
		}
	}
}
