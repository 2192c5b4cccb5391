package view_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// rowOfNucs is a window on a new book: so many nucs made up an hour ago, cells of
// batch 1 to give, all of them selected.
func rowOfNucs(t *testing.T, n, late int) state.State {
	t.Helper()
	pen := &booktest.Pen{Zone: zone, Writer: "Ida"}
	yard, stand := booktest.Yard("Hill"), booktest.Stand("A")
	pen.At("2027-05-06 18:00").Write(book.YardDescribed{Yard: yard, Name: "Hill", Zone: "Europe/Berlin"},
		book.StandSet{Stand: stand, Yard: yard, Letter: "A", Places: n}, book.Grafted{Batch: booktest.Batch("1"), Number: 1, Larvae: 60})
	s := state.State{Now: (today + 4).At(12, 0, zone), Width: 1440, Height: 900}
	for i := range n {
		name := fmt.Sprint("A", i+1)
		pen.At("2027-05-15 09:00").Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Sides: 6},
			book.NucPlaced{Nuc: booktest.Nuc(name), Yard: yard, Stand: stand, Place: i + 1})
		if i < late {
			pen.At("2027-05-15 10:00")
		}
		pen.Write(book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: 4})
		s.Selection = s.Selection.With(booktest.Nuc(name).Subject())
	}
	selected := s.Selection
	season := book.NewSeason(time.LoadLocation, pen.Entries)
	s, _ = state.Update(s, state.Opened{Book: &state.Book{Season: season, Name: "Hill"}, IDs: book.NewIDs(s.Now, season, [32]byte{1})})
	s.Room, s.Selection = state.Yard, selected
	return s
}

// TestAFormOfManyNucsKeepsItsFields: what twenty nucs have against a cell is one
// line, and batch, protector, time and both buttons are in sight.
func TestAFormOfManyNucsKeepsItsFields(t *testing.T) {
	for _, size := range [][2]float64{{1440, 900}, {1280, 800}, {1200, 640}} {
		for _, c := range []struct {
			nucs, late int
			want       []string
		}{{20, 20, []string{"All 20: wait until"}}, {20, 8, []string{"A1–A8: wait until", "A9–A20: wait until"}}} {
			s := rowOfNucs(t, c.nucs, c.late)
			s, _ = state.Update(s, state.Resized{Width: size[0], Height: size[1]})
			s, _ = state.Update(s, state.Ran{Command: "give cell"})
			if s.Form == nil {
				t.Fatal("no form is open")
			}
			minds := s.FormSays().Minds
			if len(minds) != len(c.want) {
				t.Errorf("%v: %q", c, minds)
			}
			all := cardTexts(t, s)
			if !strings.Contains(strings.Join(all, " "), c.want[0]) {
				t.Errorf("%v at %v: %q is not in sight among %q", c, size, c.want[0], all)
			}
			for _, want := range []string{"Write", "Leave", "Of batch", "With a cell protector", "When"} {
				low := size[1] < 700 && want == "When" // it scrolls
				if !low && !slices.Contains(all, want) {
					t.Errorf("%v at %v: %q is not in sight among %q", c, size, want, all)
				}
			}
		}
	}
}
