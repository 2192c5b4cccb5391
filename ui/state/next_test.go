package state_test

import (
	"slices"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// TestWhatIsNextIsAButton: in a book that has just begun each step that comes next
// can be done by its button, which opens its form about what it is for.
func TestWhatIsNextIsAButton(t *testing.T) {
	yard, stand, box := booktest.Yard("home"), booktest.Stand("A"), book.BoxID{1}
	bare := []book.Fact{book.YardDescribed{Yard: yard, Name: "Home", Home: true, Zone: "UTC"}}
	boxes := append(slices.Clone(bare),
		book.StandSet{Stand: stand, Yard: yard, Letter: "A", Places: 1},
		book.BoxBuilt{Box: box, Number: "1", Nucs: 1},
		book.NucNamed{Nuc: booktest.Nuc("A1"), Name: "A1", Box: box, Sides: 6, Side: 2},
		book.NucPlaced{Nuc: booktest.Nuc("A1"), Yard: yard, Stand: stand, Place: 1})
	for _, c := range []struct {
		of      []book.Fact
		command string
		form    string
		about   int
	}{
		{bare, "next boxes", "add boxes", 0},
		{boxes, "next nucs", "make up", 1},
		{boxes, "next graft", "graft", 0},
	} {
		w := withFacts(t, c.of)
		if !slices.Contains(w.Next().Commands, c.command) {
			t.Errorf("next are %v, want %s among them", w.Next(), c.command)
		}
		if w.run(c.command); w.Form == nil || w.Form.Record != c.form || w.Selection.Len() != c.about {
			t.Errorf("%s: form %+v about %d", c.command, w.Form, w.Selection.Len())
		}
	}
	if next := start(t).Next(); next.Words != "" {
		t.Errorf("in a book under way %v is next", next)
	}
}

// withFacts is a window on a book of some facts.
func withFacts(t *testing.T, facts []book.Fact) *window {
	p := &booktest.Pen{}
	p.At("2027-04-01 08:00").Write(facts...)
	season := book.NewSeason(time.LoadLocation, p.Entries)
	w := keeper(t)
	return w.send(state.Opened{Book: &state.Book{Season: season, Name: "new"}, IDs: book.NewIDs(now, season, [32]byte{1})})
}
