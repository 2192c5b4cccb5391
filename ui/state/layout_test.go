package state_test

import (
	"flag"
	"fmt"
	"os"
	"strings"
	"testing"

	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"

	"pgregory.net/rapid"
)

var update = flag.Bool("update", false, "write the drawn layouts in testdata anew; look at them before committing")

// boxes draws a layout, a letter for each pane, one for some 20 by 28 dp.
func boxes(l state.Layout) string {
	const w, h = 20, 28
	columns, rows := int(l.Window.W)/w, int(l.Window.H)/h
	var b strings.Builder
	for y := range rows {
		for x := range columns {
			p := scene.Point{X: (float64(x) + 0.5) * l.Window.W / float64(columns), Y: (float64(y) + 0.5) * l.Window.H / float64(rows)}
			b.WriteByte(letter(l, p))
		}
		b.WriteByte('\n')
	}
	return b.String()
}

func letter(l state.Layout, p scene.Point) byte {
	for _, pane := range panes(l) {
		if pane.area.Contains(p) {
			return pane.name[0]
		}
	}
	return '.'
}

type pane struct {
	name string
	area scene.Area
}

func panes(l state.Layout) []pane {
	return []pane{
		{"rooms", l.Rooms},
		{"days", l.Ribbon.Area},
		{"=lanes", l.Lanes},
		{"band", l.Band},
		{"foot", l.Foot},
		{"card", l.Card},
		{"turns", l.Turns},
		{"nucs", l.Main},
		{"map", l.Map},
		{"side", l.Side},
	}
}

func TestLayoutsLookAsDrawn(t *testing.T) {
	const file = "testdata/layouts.txt"
	var b strings.Builder
	s := open(t)
	for _, size := range [][2]float64{{800, 560}, {1280, 800}, {1440, 900}, {1920, 1080}} {
		for _, text := range []float64{1, 1.5, 2} {
			for _, room := range []state.Room{state.Yard, state.Today} {
				s.Width, s.Height, s.Text, s.Room = size[0], size[1], text, room
				fmt.Fprintf(&b, "%.0f × %.0f, text %.1f, room %d\n%s\n", size[0], size[1], text, room, boxes(s.Layout()))
			}
		}
	}
	if *update {
		if err := os.WriteFile(file, []byte(b.String()), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatalf("%v; write it with go test -update", err)
	}
	if got := b.String(); got != string(want) {
		t.Errorf("layouts differ from %s; go test -update writes them anew\n%s", file, got)
	}
}

func TestPanesFillTheWindowAndDoNotOverlap(t *testing.T) {
	base := open(t)
	rapid.Check(t, func(t *rapid.T) {
		s := base
		s.Width = rapid.Float64Range(state.LeastWidth, 2600).Draw(t, "width")
		s.Height = rapid.Float64Range(state.LeastHeight, 1600).Draw(t, "height")
		s.Text = rapid.SampledFrom([]float64{1, 1.15, 1.3, 1.5, 1.75, 2}).Draw(t, "text")
		s.Room = state.Room(rapid.IntRange(0, 2).Draw(t, "room"))
		s.Pane = state.Pane(rapid.IntRange(0, 4).Draw(t, "pane"))
		s.Part = state.Part(rapid.IntRange(0, 2).Draw(t, "part"))
		s.Day = today + calendar.Day(rapid.IntRange(-20, 20).Draw(t, "day"))
		l := s.Layout()
		area := 0.0
		all := panes(l)
		for i, a := range all {
			if a.area.Empty() {
				continue
			}
			if cut := a.area.Intersect(l.Window); cut != a.area {
				t.Fatalf("%s %v reaches beyond the window %v", a.name, a.area, l.Window)
			}
			area += a.area.W * a.area.H
			for _, b := range all[i+1:] {
				if cut := a.area.Intersect(b.area); cut.W > 0.01 && cut.H > 0.01 {
					t.Fatalf("%s %v and %s %v overlap", a.name, a.area, b.name, b.area)
				}
			}
		}
		if want := l.Window.W * l.Window.H; area < want-1 {
			t.Fatalf("panes fill %.0f of %.0f dp²: %+v", area, want, all)
		}
	})
}

func TestRibbonDayThereAndBack(t *testing.T) {
	base := open(t)
	rapid.Check(t, func(t *rapid.T) {
		s := base
		s.Width = rapid.Float64Range(state.LeastWidth, 2600).Draw(t, "width")
		s.Text = rapid.Float64Range(1, 2).Draw(t, "text")
		s.Shift = rapid.IntRange(-200, 200).Draw(t, "shift")
		r := s.Layout().Ribbon
		d := r.First + calendar.Day(rapid.IntRange(0, r.Days-1).Draw(t, "day"))
		if got := r.Day(r.At(d)); got != d {
			t.Fatalf("Day(At(%v)) = %v", d, got)
		}
		if x := r.At(d); x < r.X || x > r.Right() {
			t.Fatalf("At(%v) = %v lies outside the strip", d, x)
		}
	})
}

func TestEveryNucStandsOnceInTheGrid(t *testing.T) {
	s := open(t)
	s.Room = state.Yard
	for _, width := range []float64{800, 1000, 1280, 1440, 1920, 2400} {
		for _, pane := range []state.Pane{state.Split, state.Lids} {
			s.Width, s.Pane = width, pane
			seen := map[*state.Nuc]int{}
			for _, row := range s.Grid(s.Layout()).Rows {
				for _, n := range row.Lids {
					if n != nil {
						seen[n]++
					}
				}
			}
			for _, n := range s.Reading().Nucs {
				if seen[n] != 1 {
					t.Errorf("at %.0f dp: %s stands %d times in the grid, want once", width, n.Name, seen[n])
				}
			}
		}
	}
}
