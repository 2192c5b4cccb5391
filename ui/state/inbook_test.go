package state_test

import (
	"reflect"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// TestAnotherBookBeginsAnew: whatever is under way, and even over a book of the
// same name and things, nothing of the one before is left.
func TestAnotherBookBeginsAnew(t *testing.T) {
	for name, w := range map[string]*window{
		"in a walk":    inTheEvening(t, yardOfTheEvening()).write("n c4"),
		"a question":   inTheEvening(t, yardOfTheEvening()).types("n c4 s5 h2", "n c4 s5 h2"),
		"a form":       inTheEvening(t, yardOfTheEvening()).run("walk along"),
		"written":      inTheEvening(t, yardOfTheEvening()).types("n c4"),
		"not written":  inTheEvening(t, yardOfTheEvening()).write("n c4").press("Return").refused(),
		"a batch":      start(t).run("yard").run("batch room"),
		"a course":     start(t).run("yard").run("next").run("course room"),
		"hours":        start(t).run("today").run("only hours"),
		"copies":       onFile(t).send(state.CopiesFound{Path: "/books/hill.lidmark", All: []state.KeptCopy{{Path: "/x", Made: time.Now()}}}),
		"a number":     onFile(t).run("numbers").press("Down").write("18"),
		"a list":       start(t).send(state.ListRead{Path: "/x/list.csv"}),
		"other books":  start(t).run("other book"),
		"a filter":     start(t).run("yard").press("F", state.Ctrl).write("A"),
		"a nuc's line": start(t).run("yard").write("A1e"),
		"a late day":   start(t).run("late day"),
		"without book": {t: t, State: state.State{Now: now, Width: 1440, Height: 900}},
	} {
		fresh := &state.Book{Season: open(t).Book.Season, Name: "Demo season"}
		ids := book.NewIDs(now, fresh.Season, [32]byte{9})
		w.send(state.Opened{Book: fresh, IDs: ids})
		want := state.InBook{Pen: state.Pen{IDs: ids, Writer: w.Pen.Writer}}
		got := w.InBook
		got.DayPage = want.DayPage
		if !reflect.DeepEqual(got, want) || w.DayPage.Less.On() || w.Hover != (scene.Tag{}) {
			t.Errorf("%s: of the book before there is left %+v", name, got)
		}
	}
}

// TestABookReadAnewKeepsWhatIsLookedAt, and what was typed and written in it.
func TestABookReadAnewKeepsWhatIsLookedAt(t *testing.T) {
	w := onFile(t).run("yard").write("A1e b4")
	anew := &state.Book{Season: w.Book.Season, Name: w.Book.Name, Path: w.Book.Path}
	before := w.InBook
	w.send(state.Opened{Book: anew, Again: true, IDs: w.Pen.IDs})
	if !reflect.DeepEqual(w.InBook, before) || w.Book != anew {
		t.Errorf("%+v, want %+v", w.InBook, before)
	}
}

// TestEscLeavesWhatFillsTheRoomFirst: what lies behind it is as it was.
func TestEscLeavesWhatFillsTheRoomFirst(t *testing.T) {
	w := start(t).run("yard")
	w.tap(w.ref("A1"), 0).press("F", state.Ctrl).write("A").press("Enter").run("other book")
	if w.press("Escape"); w.Fill != state.NoFill || w.Filter != "A" || w.chosen() != "A1" {
		t.Errorf("fill %v, filter %q, chosen %s", w.Fill, w.Filter, w.chosen())
	}
}

// TestTheFilterTakesKeysOnlyWhereItIs: not behind a walk, nor while a field has
// them.
func TestTheFilterTakesKeysOnlyWhereItIs(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).press("Escape").run("yard").press("F", state.Ctrl).write("A")
	w.press("I", state.Alt).write("n c4").press("BackSpace")
	if w.Typing || w.Filter != "A" || w.Typed(state.WalkField) != "n c" {
		t.Errorf("typing %v, filter %q, the line %q", w.Typing, w.Filter, w.Typed(state.WalkField))
	}
}
