package view_test

import (
	"flag"
	"fmt"
	"os"
	"slices"
	"strings"
	"testing"
	"time"
	"unicode"

	"lidmark/domain/book"
	"lidmark/domain/practice"
	"lidmark/ui/state"
)

var update = flag.Bool("update", false, "write the words in testdata anew; read them before committing")

// TestEmptyRoomsAreProse prints what every room says where there is nothing in it
// yet: without a book, in one that was just begun, and where nothing fits a
// filter. It is read as prose.
func TestEmptyRoomsAreProse(t *testing.T) {
	bare := nothingOpen(t)
	begun := nothingOpen(t)
	begun.send(state.Opened{Book: &state.Book{Season: book.NewSeason(time.LoadLocation, nil), Name: "new", Path: "/books/new.lidmark"}})
	demo := open(t)
	var b strings.Builder
	show := func(name string, s state.State, in func(*state.State)) {
		in(&s)
		fmt.Fprintf(&b, "== %s\n", name)
		var said []string
		for _, w := range texts(t, window(s), s.Size()) {
			text := w.Text.Text
			if prose := len(strings.Map(onlyLetters, text)) > 2; prose && !slices.Contains(said, text) && w.At.Y < s.Layout().Foot.Y {
				said = append(said, text)
				b.WriteString(text + "\n")
			}
		}
		b.WriteString("\n")
	}
	show("no book", bare.State, func(*state.State) {})
	rooms := map[string]func(*state.State){
		"1 Today":             func(s *state.State) { s.Room = state.Today },
		"2 Yard":              func(s *state.State) { s.Room, s.Pane = state.Yard, state.Split },
		"3 Yard, wall":        func(s *state.State) { s.Room, s.Pane = state.Yard, state.Wall },
		"4 Yard, table":       func(s *state.State) { s.Room, s.Pane = state.Yard, state.Table },
		"5 Book":              func(s *state.State) { s.Room = state.About },
		"7 Plan":              func(s *state.State) { *s = planning(*s, state.Ran{Command: "plan"}) },
		"6 Book, the program": func(s *state.State) { s.Room, s.BookPage = state.About, state.LicencePage },
	}
	names := make([]string, 0, len(rooms))
	for name := range rooms {
		names = append(names, name)
	}
	slices.Sort(names)
	for _, name := range names {
		show("a new book: "+name[2:], begun.State, rooms[name])
	}
	show("the demo: Plan, a day too near", demo, func(s *state.State) { *s = wished(planning(*s, state.Ran{Command: "plan"}), state.WishDay, "+20") })
	show("the demo: Plan, a line of no breeder", demo, func(s *state.State) { *s = wished(planning(*s, state.Ran{Command: "plan"}), state.WishLine, "Zz") })
	show("a filter that shows nothing: table", demo, func(s *state.State) { s.Room, s.Pane, s.Filter = state.Yard, state.Table, "zzz" })
	show("the demo: Book", demo, func(s *state.State) { s.Room = state.About })
	show("a number that moves nothing", demo, func(s *state.State) {
		*s, _ = state.Update(*s, state.Ran{Command: "numbers"})
		s.Group = practice.Robbing
		*s, _ = state.Update(*s, state.Keyed{Key: "Down"})
		*s = s.WithField(state.NumberField, state.FieldOf("0"))
	})
	const file = "testdata/empty.txt"
	if *update {
		if err := os.MkdirAll("testdata", 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(file, []byte(b.String()), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if got := b.String(); got != string(want) {
		t.Errorf("%s says something else now; -update writes it anew:\n%s", file, got)
	}
}

// onlyLetters keeps letters.
func onlyLetters(r rune) rune {
	if unicode.IsLetter(r) {
		return r
	}
	return -1
}
