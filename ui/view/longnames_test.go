package view_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/demo"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// longNames is the demo season with nucs of long names.
func longNames(t *testing.T) state.State {
	s := open(t)
	all := demo.Season(today, zone)
	for i, e := range all {
		if n, ok := e.Fact.(book.NucNamed); ok {
			n.Name = "Upper orchard " + n.Name
			all[i].Fact = n
		}
	}
	s.Book = &state.Book{Season: book.NewSeason(time.LoadLocation, all)}
	return s
}

// TestLongNamesTellNucsApart: where names have too little room their last words stay, in
// lids and in the table, so that no two in sight read alike; and on the route no name
// lies over when something is due.
func TestLongNamesTellNucsApart(t *testing.T) {
	for _, pane := range []state.Pane{state.Split, state.Table} {
		s := longNames(t)
		s.Room, s.Pane = state.Yard, pane
		s, _ = state.Update(s, state.Resized{Width: 1280, Height: 800})
		main, seen := s.Layout().Main, map[string]int{}
		for _, w := range texts(t, window(s), s.Size()) {
			if main.Contains(w.At) && strings.HasPrefix(w.Text.Text, "U") {
				seen[w.Text.Text]++
			}
		}
		if len(seen) < 15 {
			t.Fatalf("pane %d: %d names are in sight", pane, len(seen))
		}
		for name, n := range seen {
			if n > 1 {
				t.Errorf("pane %d: %d nucs read %q", pane, n, name)
			}
		}
	}
	s := longNames(t)
	s.Room = state.Today
	s, _ = state.Update(s, state.Resized{Width: 1280, Height: 3000})
	all := texts(t, window(s), s.Size())
	for i, a := range all {
		for _, b := range all[i+1:] {
			if main := s.Layout().Main; main.Contains(a.At) && main.Contains(b.At) && a.box.Inset(0.5).Overlaps(b.box.Inset(0.5)) {
				t.Errorf("%q lies over %q", a.Text.Text, b.Text.Text)
			}
		}
	}
}

// TestTheWallShowsWholeLids: wherever the wall is scrolled, no lid and no line of its
// sections is cut by an edge.
func TestTheWallShowsWholeLids(t *testing.T) {
	base := big(t, 4_000)
	base.Room, base.Pane = state.Yard, state.Wall
	for i := range sizes[1:] {
		s := sized(base, i+1)
		for _, scroll := range []float64{0, 33, 222, 777} {
			s.Scroll = map[state.Place]float64{state.WallPlace: scroll}
			l, lids := s.Layout(), 0
			for _, p := range walk(t, window(s), s.Size()) {
				var a scene.Area
				switch m := p.mark.(type) {
				case scene.Lid:
					a = scene.Around(m.At, m.Size)
				case scene.Text:
					a = scene.Area{X: m.At.X, Y: m.At.Y - 0.75*m.Size, W: 1, H: 0.95 * m.Size}
				default:
					continue
				}
				if !l.Main.Contains(a.Centre()) || !p.clip.Overlaps(a) {
					continue
				}
				lids++
				if a.Y < p.clip.Y-0.5 || a.Bottom() > p.clip.Bottom()+0.5 {
					t.Fatalf("%v at %v: %s is cut by %v", sizes[i+1], scroll, fmt.Sprintf("%+v", p.mark), p.clip)
				}
			}
			if lids < 40 {
				t.Errorf("%v at %v: only %d lids and words", sizes[i+1], scroll, lids)
			}
		}
	}
}

// TestEmptyTableAndWallSayWhatToDo: in a book without nucs both say so, and what comes
// first.
func TestEmptyTableAndWallSayWhatToDo(t *testing.T) {
	for _, pane := range []state.Pane{state.Table, state.Wall} {
		s := open(t)
		s.Book = &state.Book{Season: book.NewSeason(nil, nil)}
		s.Room, s.Pane = state.Yard, pane
		said, lines := false, 0
		for _, w := range texts(t, window(s), s.Size()) {
			if l := s.Layout(); l.Main.Contains(w.At) && w.At.Y > l.Main.Y+70 && w.At.Y < l.Main.Bottom()-90 {
				lines++
				said = said || w.Text.Text == "No nuc stands here"
			}
		}
		if !said || lines < 2 {
			t.Errorf("pane %d: says that there is no nuc: %v, in %d lines", pane, said, lines)
		}
	}
}
