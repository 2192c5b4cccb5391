package state_test

import (
	"strings"
	"testing"

	"lidmark/ui/state"
)

// reopened is the window on the same book after the program was started again.
func (w *window) reopened() *window {
	s := state.State{Now: w.Now, Width: 1440, Height: 900}
	s, _ = state.Update(s, state.Opened{Book: &state.Book{Season: w.Book.Season, Name: w.Book.Name}, IDs: w.Pen.IDs})
	s.Pen.Writer = w.Pen.Writer
	return &window{t: w.t, State: s}
}

func TestUndoAfterARestart(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("A1 n s3 h1")
	if words := w.Pen.Done[0].Words; words != "A1 n s3 h1" {
		t.Errorf("undo would say %q", words)
	}
	before := w.Book.Season.Len()
	w = w.reopened().press("Z", state.Ctrl)
	struck := wrote(w.effects)
	if len(struck) == 0 {
		t.Fatalf("Ctrl+Z strikes nothing; %q", w.Note.Text)
	}
	words := w.Pen.Sent[0].Words
	if !strings.HasPrefix(words, "undone: ") || strings.Count(words, "A1") != 1 {
		t.Errorf("the deed is called %q", words)
	}
	w.save()
	if w.Book.Season.Len() == before {
		t.Error("nothing was struck")
	}
	w.press("Y", state.Ctrl)
	if len(wrote(w.effects)) == 0 {
		t.Errorf("it cannot be redone: %q", w.Note.Text)
	}
	w.save()
	w.Pen.Writer, w.Pen.Done = "Jon", nil
	if w.press("Z", state.Ctrl); len(wrote(w.effects)) > 0 || !strings.Contains(w.Note.Text, "by Ida") {
		t.Errorf("of what another wrote the foot says %q", w.Note.Text)
	}
}

// TestEnterBeginsAndDoesNotWrite: the main action of a card that asks nothing is
// read back first; Enter again writes it, Esc leaves.
func TestEnterBeginsAndDoesNotWrite(t *testing.T) {
	w := start(t).run("yard")
	for _, n := range w.Reading().Nucs {
		if w.tap(w.ref(n.Name), 0); w.Main() == "done" {
			break
		}
	}
	if w.Main() != "done" {
		t.Fatal("no nuc is done as written")
	}
	w.press("Return")
	if w.Form == nil || !w.Form.Begun || len(wrote(w.effects)) > 0 || len(w.FormSays().Back) == 0 {
		t.Fatalf("Enter on %s: form %v, %d written", w.chosen(), w.Form, len(wrote(w.effects)))
	}
	if w.press("Escape"); w.Form != nil || len(wrote(w.effects)) > 0 {
		t.Error("Esc does not leave it")
	}
	if w.press("Return").press("Return"); w.Form != nil || len(wrote(w.effects)) == 0 {
		t.Error("Enter again does not write it")
	}
}
