package state_test

import (
	"math"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/roll"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestEraseKeys: Backspace takes what is before the caret, Delete what is behind
// it, with Ctrl a whole word, and both what is marked.
func TestEraseKeys(t *testing.T) {
	for _, row := range []struct {
		keys []string // pressed after the end of the text
		mods state.Mods
		last string
		want string
	}{
		{nil, 0, "BackSpace", "north yar"},
		{nil, 0, "Delete", "north yard"},
		{[]string{"Left", "Left"}, 0, "BackSpace", "north yrd"},
		{[]string{"Left", "Left"}, 0, "Delete", "north yad"},
		{[]string{"Home"}, 0, "Delete", "orth yard"},
		{[]string{"Home"}, 0, "BackSpace", "north yard"},
		{[]string{"Home"}, state.Ctrl, "Delete", " yard"},
		{nil, state.Ctrl, "BackSpace", "north "},
	} {
		w := bookless(t).typed(state.StartYard, "north yard").press("End")
		for _, k := range row.keys {
			w.press(k)
		}
		if got := w.press(row.last, row.mods).Field(state.StartYard).Text; got != row.want {
			t.Errorf("%v, %v+%s: %q, want %q", row.keys, row.mods, row.last, got, row.want)
		}
	}
	for _, key := range []string{"BackSpace", "Delete"} {
		w := bookless(t).typed(state.StartYard, "north yard").press("Home").press("Right", state.Shift).press("Right", state.Shift)
		if got := w.press(key).Field(state.StartYard).Text; got != "rth yard" {
			t.Errorf("%s of two marked letters: %q", key, got)
		}
	}
}

// TestStepsClicked: a click on a step that was done goes back to it, one on the
// step that is open stays, and one ahead goes on by one where all is right.
func TestStepsClicked(t *testing.T) {
	step := func(w *window, n string) state.Step {
		return w.tap(scene.Ref{Kind: state.StepRef, ID: "step", Part: n}, 0).Start.Step
	}
	w := bookless(t)
	if at := step(w, "1"); at != state.YardStep || !w.Start.Tried {
		t.Errorf("a yard without a name lets through to step %d", at)
	}
	w.typed(state.StartYard, "Home")
	if at := step(w, "0"); at != state.YardStep {
		t.Errorf("a click on the open step leads to %d", at)
	}
	if at := step(w, "3"); at != state.BoxStep {
		t.Errorf("a click far ahead leads to %d, want one on", at)
	}
	if at := step(w, "1"); at != state.BoxStep || w.Start.Tried {
		t.Errorf("a click on the open step leads to %d, tried %v", at, w.Start.Tried)
	}
	if at := step(w, "0"); at != state.YardStep {
		t.Errorf("a click on the first step leads to %d", at)
	}
	if w.run("start back"); w.Fill == state.StartFill {
		t.Error("back from the first step stays among the steps")
	}
}

// TestColumnsOfAList: arrows go from head to head and stop at the ends; what is no
// column opens nothing.
func TestColumnsOfAList(t *testing.T) {
	rows := []roll.Row{cells(1, "Nuc", "State", "Cell in"), cells(2, "A1", "virgin", "3 May 2027")}
	head := func(id string) scene.Ref { return scene.Ref{Kind: state.ColumnRef, ID: id} }
	w := bookless(t).send(state.ListRead{Path: "/a.csv", List: roll.List{File: "a.csv", Sheets: []roll.Sheet{{Name: "a", Rows: rows}}}})
	w.tap(head("2"), 0)
	for _, id := range []string{"0", "4", "-1", ""} {
		if w.tap(head(id), 0); w.Bring.Open != 2 {
			t.Errorf("column %q: %d is open, want 2 still", id, w.Bring.Open)
		}
	}
	if w.tap(head("2"), 0); w.Bring.Open != 0 || w.Focus != head("2") {
		t.Errorf("a second click: %d open, keys at %v", w.Bring.Open, w.Focus)
	}
	for _, row := range []struct{ key, at string }{{"Left", "1"}, {"Left", "1"}, {"Right", "2"}, {"Right", "3"}, {"Right", "3"}} {
		if w.press(row.key); w.Focus != head(row.at) {
			t.Errorf("%s leads to %v, want column %s", row.key, w.Focus, row.at)
		}
	}
	if w.Bring.First != 0 {
		t.Errorf("the first column in sight is %d of three", w.Bring.First)
	}
}

// TestTypingEndsWhereThePageIsLeft: letters go to the filter in the yard alone, not
// on when something fills its page, nor when that is given back.
func TestTypingEndsWhereThePageIsLeft(t *testing.T) {
	w := start(t).run("yard").press("F", state.Ctrl)
	w.write("A1")
	if !w.Typing || w.Filter != "A1" {
		t.Fatalf("Ctrl+F A1: typing %v, filter %q", w.Typing, w.Filter)
	}
	if w.run("other book"); w.Typing || w.Fill != state.BooksFill {
		t.Errorf("among other books: typing %v, fill %v", w.Typing, w.Fill)
	}
	if w.press("Escape"); w.Typing {
		t.Error("typing goes on when the page is back")
	}
}

// TestAUseBeyondAllSenseIsSaid: when the best use of what is in hand cannot be
// reckoned, a sentence says so.
func TestAUseBeyondAllSenseIsSaid(t *testing.T) {
	w := reviewer(t)
	many := booktest.Batch("many")
	p := &booktest.Pen{Zone: zone, Writer: "Ida"}
	p.At((today - 10).String() + " 18:00").Write(book.Grafted{Batch: many, Number: 99, Larvae: math.MaxInt32 + 9})
	w.State.Book = w.Book.With(p.Entries...)
	if w.run("yard").run("review").settled(); !w.Note.Bad || !strings.HasPrefix(w.Note.Text, "The best use of what is in hand cannot be reckoned") {
		sheet, _ := w.ReviewSheet()
		t.Errorf("%+v, in hand %+v", w.Note, sheet.Hand)
	}
}
