package state_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// refused tells the window that the book did not take what was written last.
func (w *window) refused() *window {
	w.t.Helper()
	if len(w.Pen.Sent) == 0 {
		w.t.Fatalf("nothing is on its way: %q", w.Note.Text)
	}
	w.effects = nil
	return w.send(state.Written{Number: w.Pen.Sent[0].Number, Failed: "the disk is full"})
}

// toRow goes to the row of a title.
func (w *window) toRow(title string) *window {
	w.t.Helper()
	return w.tap(w.row(title).Ref(), 0)
}

// cellsOf counts the cells that a nuc was given on the Saturday.
func (w *window) cellsOf(name string) (n int) {
	for e := range w.Book.Season.At(evening.AddDate(0, 0, 2)).OfDay(saturday) {
		if f, ok := e.Fact.(book.CellGiven); ok && f.Nuc == booktest.Nuc(name) {
			n++
		}
	}
	return n
}

// TestOneRowOfARefusedLineIsTypedAnew: the other row of the same line waits on,
// and is written when it is tried again.
func TestOneRowOfARefusedLineIsTypedAnew(t *testing.T) {
	for name, mend := range map[string]func(*window){
		"typed anew": func(w *window) { w.press("A", state.Ctrl).types("n c4 s5") },
		"struck":     func(w *window) { w.run("strike row") },
	} {
		w := inTheEvening(t, yardOfTheEvening()).write("A1 n c4; A2 n c4 s3").press("Return").refused().toRow("A1")
		mend(w)
		if w.row("A2").Open() || len(w.Pen.Failed) != 1 {
			t.Errorf("%s: the line of A2 is lost", name)
		}
		if w.run("again").save(); w.cellsOf("A2") != 1 || w.cellsOf("A1") > 1 {
			t.Errorf("%s: A1 has %d cells, A2 %d", name, w.cellsOf("A1"), w.cellsOf("A2"))
		}
	}
}

// TestAQuestionDropsNothing: what the book did not take is dropped when what
// stands for it is written, not when that asks.
func TestAQuestionDropsNothing(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).write("C7 n c4").press("Return")
	for w.Asked != nil {
		w.press("1")
	}
	w.refused().toRow("C7").press("A", state.Ctrl).write("n c4 s3").press("Return")
	if w.Asked == nil {
		t.Fatal("nothing is asked")
	}
	if w.press("Escape"); len(w.Pen.Failed) != 1 || w.row("C7").Typed != "n c4" {
		t.Errorf("%d deeds wait, C7 says %q", len(w.Pen.Failed), w.row("C7").Typed)
	}
	for w.press("Return"); w.Asked != nil; {
		w.press("1")
	}
	if w.save(); len(w.Pen.Failed) != 0 || w.cellsOf("C7") != 1 {
		t.Errorf("%d deeds wait, %d cells in the book", len(w.Pen.Failed), w.cellsOf("C7"))
	}
}

// TestALineThatWaitsIsNotTickedAgain: it would be in the book twice.
func TestALineThatWaitsIsNotTickedAgain(t *testing.T) {
	w := keeper(t)
	var ticked state.PageLine
	for _, l := range w.Lines() {
		if says := w.TickSays(l); !says.Asks && !l.Done {
			ticked = l
			break
		}
	}
	tick := func() {
		w.tap(state.TaskOf(ticked.Number), 0).press(" ")
		for w.Asked != nil {
			w.press("1")
		}
	}
	tick()
	w.refused()
	if tick(); len(w.Pen.Sent) != 0 || len(w.Pen.Failed) != 1 || w.Note.Text == "" {
		t.Errorf("%d on their way, %d wait, the foot says %q", len(w.Pen.Sent), len(w.Pen.Failed), w.Note.Text)
	}
}

// TestUndoIsOfTheLatest: while that is on its way, or waits, nothing older is
// undone, and nothing redone.
func TestUndoIsOfTheLatest(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("n c4").write("n c4 s2").press("Return")
	for _, refuse := range []bool{false, true} {
		if refuse {
			w.refused()
		}
		before := len(w.Pen.Sent)
		if w.press("Z", state.Ctrl); len(w.Pen.Sent) != before || w.Note.Text == "" {
			t.Errorf("refused %v: %d on their way, the foot says %q", refuse, len(w.Pen.Sent), w.Note.Text)
		}
	}
	w.run("again").save().press("Z", state.Ctrl).save()
	if w.row("A1").Open() || !w.row("A2").Open() {
		t.Errorf("A1 open %v, A2 open %v: want the latest undone", w.row("A1").Open(), w.row("A2").Open())
	}
}

// TestAnUndoThatIsLetGoDidNothing: the deed stands, and can be undone after all;
// the same of redo.
func TestAnUndoThatIsLetGoDidNothing(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("n c4")
	w.press("Z", state.Ctrl).refused().run("let go")
	if w.row("A1").Open() || len(w.Pen.Done) != 1 || len(w.Pen.Undone) != 0 {
		t.Fatalf("A1 open %v, %d done, %d undone", w.row("A1").Open(), len(w.Pen.Done), len(w.Pen.Undone))
	}
	if w.press("Z", state.Ctrl).save(); !w.row("A1").Open() || len(w.Pen.Undone) != 1 {
		t.Fatalf("A1 open %v, %d undone", w.row("A1").Open(), len(w.Pen.Undone))
	}
	w.press("Y", state.Ctrl).refused().run("let go")
	if w.press("Y", state.Ctrl).save(); w.row("A1").Open() || len(w.Pen.Done) != 1 || len(w.Pen.Undone) != 0 {
		t.Errorf("redone: A1 open %v, %d done, %d undone", w.row("A1").Open(), len(w.Pen.Done), len(w.Pen.Undone))
	}
}

// TestAQuestionLeavesTheLine: left with Esc the line of a nuc is there as it was
// typed; answered it is written, and the next nuc is taken.
func TestAQuestionLeavesTheLine(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).press("Escape").run("yard")
	w.tap(w.ref("C7"), 0).write("n c4").press("Enter")
	field := state.LineField(booktest.Nuc("C7"))
	if w.Asked == nil {
		t.Fatal("nothing is asked")
	}
	if w.press("Escape"); w.Typed(field) != "n c4" || w.InField() != field {
		t.Fatalf("the line says %q, the keys go to %q", w.Typed(field), w.InField())
	}
	for w.press("Enter"); w.Asked != nil; {
		w.press("1")
	}
	if w.Typed(field) != "" || w.chosen() != "C8" || len(w.Pen.Sent) != 1 {
		t.Errorf("the line says %q, chosen is %s, %d on their way", w.Typed(field), w.chosen(), len(w.Pen.Sent))
	}
}

// TestAWalkEndsWhole: a list that arrives ends the walk, with what was asked in it
// and its forms.
func TestAWalkEndsWhole(t *testing.T) {
	for name, w := range map[string]*window{
		"typed twice": inTheEvening(t, yardOfTheEvening()).types("n c4 s5 h2", "A1 n c4 s5 h2"),
		"taken along": inTheEvening(t, yardOfTheEvening()).run("walk along"),
		"close":       inTheEvening(t, yardOfTheEvening()).run("close walk"),
	} {
		if w.Asked == nil && w.Form == nil {
			t.Fatalf("%s: nothing lies over the walk", name)
		}
		w.send(state.ListRead{Path: "/x/list.csv"})
		if w.Walk != nil || w.Asked != nil || w.Form != nil || w.Fill != state.ListFill {
			t.Errorf("%s: walk %v, asked %v, form %v, fill %v", name, w.Walk != nil, w.Asked != nil, w.Form != nil, w.Fill)
		}
		w.press("1").press("Enter", state.Ctrl)
	}
}

// TestMidnightInAWalk: the walk stays one of its day, its rows and what stands in
// them stay, and a line is written of the day.
func TestMidnightInAWalk(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).send(state.Ticked{Now: saturday.At(23, 50, zone)})
	w.types("n c4", "n c4 s3 @23:45").write("n c4 s2")
	w.send(state.Ticked{Now: saturday.At(23, 59, zone)}, state.Ticked{Now: (saturday + 1).At(0, 1, zone)})
	if w.Walk == nil || w.Walk.Day != saturday || w.at() != "A3" || w.Typed(state.WalkField) != "n c4 s2" {
		t.Fatalf("after midnight the walk is %+v", w.Walk)
	}
	w.press("Return").save()
	w.types("n c4")
	for _, name := range []string{"A1", "A2", "A3", "A4"} {
		if w.cellsOf(name) != 1 || w.row(name).Open() {
			t.Errorf("%s: %d cells on Saturday, open %v", name, w.cellsOf(name), w.row(name).Open())
		}
	}
}

// TestWhatStandsInARowIsOfItsDay: the walk of the day before does not show it, and
// on its own day it is there again.
func TestWhatStandsInARowIsOfItsDay(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).write("n c3").press("Left", state.Alt).run("all nucs")
	if w.Walk.Day != saturday-1 {
		t.Fatalf("the walk is of %v", w.Walk.Day)
	}
	if slices.ContainsFunc(w.Walk.Rows, func(r state.WalkRow) bool { return w.RowDraft(r) != "" }) || w.Typed(state.WalkField) != "" {
		t.Error("Friday shows what was typed of Saturday")
	}
	w.run("day on")
	if w.RowDraft(w.row("A1")) != "n c3" {
		t.Errorf("A1 of Saturday says %q", w.RowDraft(w.row("A1")))
	}
}
