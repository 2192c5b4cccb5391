package state_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// TestAPassedQuestionIsAskedAgain: left open it stays under its row, and opening
// the row asks it again.
func TestAPassedQuestionIsAskedAgain(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("C7 c4")
	if w.press("Return").save(); w.Asked != nil || w.at() != "C8" {
		t.Fatalf("Enter leads to %s, asked %v", w.at(), w.Asked)
	}
	row := w.row("C7")
	if !row.Asks || !strings.Contains(row.Passed.Asks, "old queen") || len(row.Passed.Answers) != 3 {
		t.Fatalf("C7 says %+v", row.Passed)
	}
	if w.press("Return"); w.at() == "C7" {
		t.Error("the walk goes back to it by itself")
	}
	if w.tap(row.Ref(), 0); w.at() != "C7" {
		t.Fatalf("a click leads to %s", w.at())
	}
	if _, waits := w.Passing(); !waits {
		t.Fatal("the row opened asks nothing")
	}
	done := len(w.Pen.Done)
	if w.press("Return"); len(w.Pen.Done) != done || len(w.Pen.Sent) != 0 {
		t.Error("Enter writes it anew")
	}
	if w.tap(row.Ref(), 0).press("1").save(); w.row("C7").Asks || !strings.Contains(w.row("C7").Back, "queen gone") || w.at() != "C8" {
		t.Errorf("answered C7 says %q, asks %v, the walk stands at %s", w.row("C7").Back, w.row("C7").Asks, w.at())
	}
	if c := w.Walk.Closing[0]; c.Placed != 1 {
		t.Errorf("the count is %v", c)
	}
	if w.press("Z", state.Ctrl).save(); !w.row("C7").Asks {
		t.Error("undo does not open the question again")
	}
}

// TestAPassedQuestionThatWasAMistake strikes the row.
func TestAPassedQuestionThatWasAMistake(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("C7 c4")
	w.press("Return").save()
	w.tap(w.row("C7").Ref(), 0).press("3").save()
	if c := w.Walk.Closing[0]; !w.row("C7").Open() || c.Placed != 0 {
		t.Errorf("C7 has %d rows, %v", w.rowsOf("C7"), c)
	}
}

// TestARefusedLineIsReplaced: what is typed after it takes its place, and Enter
// again leaves it in its row.
func TestARefusedLineIsReplaced(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("zz")
	if w.write("n"); w.Typed(state.WalkField) != "n" || w.at() != "A1" {
		t.Errorf("%s says %q", w.at(), w.Typed(state.WalkField))
	}
	w.types("q").press("A", state.Ctrl).write("zz").press("Return").press("Return")
	if w.at() != "A2" && w.at() != "A3" {
		t.Fatalf("Enter again leads to %s", w.at())
	}
	if w.press("K", state.Alt); w.Walk == nil || w.Form != nil || !strings.Contains(w.Note.Text, "not written yet") {
		t.Fatalf("closing says %q", w.Note.Text)
	}
	if w.press("K", state.Alt); w.Form == nil {
		t.Error("closing again asks nothing")
	}
}

// TestATickThatCannotTell: done says why and what to type where a queen is to be
// caught.
func TestATickThatCannotTell(t *testing.T) {
	w := &window{t: t, State: open(t)}
	w.Pen.IDs = inTheEvening(t, yardOfTheEvening()).Pen.IDs
	w.run("type it in")
	for _, r := range w.Walk.Rows {
		if strings.HasPrefix(r.Planned, "catch the queen") {
			w.tap(r.Ref(), 0).write("done")
			if wrong := w.Walk.Says.Line.Wrong(); !strings.Contains(wrong, "does not say which cage") || !strings.Contains(wrong, "type k7") {
				t.Errorf("%s: done says %q", r.Title, wrong)
			}
			return
		}
	}
	t.Fatal("no queen is to be caught in the demo: nothing was tried")
}

// TestUndoOfWhatStoodBefore: what was written before the walk was opened and is
// undone in it leaves neither its lid nor its plan.
func TestUndoOfWhatStoodBefore(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("n c4 s5")
	plan := w.row("A1").Planned
	w.press("Escape").run("type it in")
	w.press("Z", state.Ctrl).save()
	if row := w.row("A1"); !row.Open() || row.Planned != plan || !w.Reading().Nuc(row.Nuc).Holds.Since.IsZero() && w.Reading().Nuc(row.Nuc).Holds.Condition.String() == "cell" {
		t.Errorf("A1 is planned %q, its lid %v", row.Planned, w.Reading().Nuc(row.Nuc).Holds.Condition)
	}
}

// TestARowSaysAllThatWasTyped in the order in which it was typed.
func TestARowSaysAllThatWasTyped(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("s5 n h2 c4")
	back := w.row("A1").Back
	at := -1
	for _, word := range []string{"5 sides", "no queen", "stores", "cell from batch 4"} {
		i := strings.Index(back, word)
		if i < at || i < 0 {
			t.Errorf("%q does not say %q in its turn", back, word)
		}
		at = i
	}
}

// TestTheWalkOfSomeStands: a letter alone shows its rows alone, all shows all.
func TestTheWalkOfSomeStands(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening())
	all, coming := len(w.Walk.Rows), w.Walk.Coming(w.Walk.Closing[0])
	if w.types("D"); len(w.Walk.Rows) != 12+1 || w.at() != "D1" || w.Walk.Nucs != 12 {
		t.Fatalf("%d rows, at %s", len(w.Walk.Rows), w.at())
	}
	if w.Walk.Coming(w.Walk.Closing[0]) != coming {
		t.Error("rows that are not shown are missing in the count")
	}
	if w.types("n c4"); w.at() != "D2" {
		t.Errorf("the walk goes on at %s", w.at())
	}
	if w.types("all"); len(w.Walk.Rows) != all || w.at() != "A1" {
		t.Errorf("%d rows, at %s", len(w.Walk.Rows), w.at())
	}
}

// TestNobodyIsInvented: who reads aloud is said once it was chosen.
func TestNobodyIsInvented(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening())
	if w.Walk.Reader != "" {
		t.Errorf("%s reads aloud", w.Walk.Reader)
	}
	if w.run("reader"); w.Walk.Reader != "Jon" {
		t.Errorf("chosen is %q", w.Walk.Reader)
	}
}

// TestARowStruckIsTypedAnew: striking stays in the row, also where nothing was
// planned, and names the nuc once.
func TestARowStruckIsTypedAnew(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("A2 n c4", "C7 s5")
	w.tap(w.row("C7").Ref(), 0).press("X", state.Alt).save()
	if w.at() != "C7" || !w.row("C7").Open() || w.Typed(state.WalkField) != "" {
		t.Fatalf("the walk stands at %s, which says %q", w.at(), w.Typed(state.WalkField))
	}
	if words := w.Pen.Done[len(w.Pen.Done)-1].Words; strings.Count(words, "C7") != 1 {
		t.Errorf("undo would take back %q", words)
	}
	if w.types("s4"); w.row("C7").Typed != "s4" {
		t.Errorf("C7 says %q", w.row("C7").Typed)
	}
}

// TestADecisionIsNoRow: what was decided for a nuc today is work to come, not what
// somebody wrote of it: its row stays open.
func TestADecisionIsNoRow(t *testing.T) {
	pen := yardOfTheEvening()
	pen.Write(book.Planned{Nuc: booktest.Nuc("B2"), What: book.PlanGiveCell, Day: calendar.Date(2027, 5, 15), Batch: booktest.Batch("4")})
	if row := inTheEvening(t, pen).row("B2"); !row.Open() || row.Typed != "" || row.Planned == "" {
		t.Errorf("open %v, typed %q, planned %q", row.Open(), row.Typed, row.Planned)
	}
}

// TestTheWordAtFaultIsReplaced: of a line in which one word makes no sense Enter marks that
// word alone; what is typed next leaves the others.
func TestTheWordAtFaultIsReplaced(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("q zz e")
	if w.write("b4"); w.Typed(state.WalkField) != "q b4 e" {
		t.Errorf("the line says %q", w.Typed(state.WalkField))
	}
}
