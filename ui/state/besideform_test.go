package state_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/ui/state"
)

// TestAFormKeepsTheKeys: while a form is open no character reaches the map, and only
// where nothing was answered yet the line, to which the form gives way. So Enter writes
// what is read back.
func TestAFormKeepsTheKeys(t *testing.T) {
	w := writing(t)
	n := w.view().NucNamed("A2")[0].NucNamed.Nuc
	w.take(n.Subject()).run("look")
	if w.Form == nil {
		t.Fatal("no form")
	}
	if w.strikes("s", "4"); w.Form != nil || w.Field(w.CardField()).Text != "s4" {
		t.Errorf("nothing answered: a form %v, the line %q", w.Form != nil, w.Field(w.CardField()).Text)
	}
	w.State = w.press("Escape").WithField(w.CardField(), state.Field{})
	w.fill("look", "queen=queen seen")
	day := w.Looked()
	w.strikes("s", "4", ".", ".")
	if w.Form == nil || w.Field(w.CardField()).Text != "" || w.Looked() != day {
		t.Errorf("answered in part: a form %v, the line %q, the day %v", w.Form != nil, w.Field(w.CardField()).Text, w.Looked())
	}
	back := strings.Join(w.FormSays().Back, "; ")
	w.kept()
	last := w.lastEntry()
	if looked, is := last.Fact.(book.Looked); !is || looked.Queen != book.QueenSeen || looked.Sides != (book.Amount{}) || !strings.Contains(back, "queen seen") {
		t.Errorf("read back %q, written %+v", back, last.Fact)
	}
}

func (w *window) lastEntry() (last book.Entry) {
	for e := range w.Book.Season.Entries() {
		last = e
	}
	return last
}
