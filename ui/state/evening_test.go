package state_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// The evening: 48 cells of batch 4 went out on a Saturday morning, to nucs of six
// stands; two people type from the same sheet.
var (
	saturday = calendar.Date(2027, time.May, 15)
	evening  = saturday.At(20, 40, zone)
	rows     = []struct {
		stand string
		nucs  int
	}{{"A", 12}, {"B", 6}, {"C", 8}, {"D", 12}, {"E", 6}, {"F", 5}}
)

// yardOfTheEvening is the book before anybody types.
func yardOfTheEvening() *booktest.Pen {
	pen := &booktest.Pen{Zone: zone, Writer: "Ida"}
	yard, batch := booktest.Yard("Ostermead"), booktest.Batch("4")
	pen.At("2027-04-10 10:00").Write(book.YardDescribed{Yard: yard, Name: "Ostermead", Zone: "Europe/Berlin"},
		book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida"}, book.PersonDescribed{Person: booktest.Person("Jon"), Name: "Jon"})
	for _, row := range rows {
		stand := booktest.Stand(row.stand)
		pen.Write(book.StandSet{Stand: stand, Yard: yard, Letter: row.stand, Places: row.nucs})
		for i := range row.nucs {
			name := fmt.Sprint(row.stand, i+1)
			pen.Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Sides: 6},
				book.NucPlaced{Nuc: booktest.Nuc(name), Yard: yard, Stand: stand, Place: i + 1})
		}
	}
	pen.Write(book.NucMadeUp{Nuc: booktest.Nuc("C7"), Cups: 3}, book.CellGiven{Nuc: booktest.Nuc("C7")})
	pen.At("2027-05-03 10:00").Write(book.Looked{Nuc: booktest.Nuc("C7"), Queen: book.QueenSeen, Eggs: book.SingleEggs})
	pen.At("2027-05-05 18:00").Write(book.Grafted{Batch: batch, Number: 4, Larvae: 60})
	pen.At("2027-05-10 18:00").Write(book.CappedCounted{Batch: batch, Capped: 50})
	pen.At("2027-05-14 10:00")
	for _, row := range rows {
		for i := range row.nucs {
			if name := fmt.Sprint(row.stand, i+1); name != "C7" && name != "F5" {
				pen.Write(book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: 3})
			}
		}
	}
	return pen.In("2027-05-15", calendar.Morning).Write(book.TakenAlong{What: book.Cells, Batch: batch, Count: 48})
}

// inTheEvening is a window on a book in which a walk can be typed.
func inTheEvening(t testing.TB, pen *booktest.Pen) *window {
	t.Helper()
	season := book.NewSeason(time.LoadLocation, pen.Entries)
	b := &state.Book{Season: season, Name: "Ostermead"}
	s := state.State{Now: evening, Width: 1440, Height: 900}
	s, _ = state.Update(s, state.Opened{Book: b, IDs: book.NewIDs(evening, season, [32]byte{1})})
	s.Pen.Writer = "Ida"
	return (&window{t: t, State: s}).run("type it in")
}

// save writes what the window gave to the book and tells it so.
func (w *window) save() *window {
	effects := w.effects
	w.effects = nil
	for _, e := range effects {
		if write, ok := e.(state.Write); ok {
			grown := &state.Book{Season: w.Book.Season.With(write.Deed.Entries...), Name: w.Book.Name}
			w.send(state.Written{Number: write.Deed.Number, Book: grown})
		}
	}
	return w
}

// types types a line of the walk and ends it.
func (w *window) types(lines ...string) *window {
	for _, l := range lines {
		w.write(l).press("Return").save()
	}
	return w
}

// row is the row of a title that is shown last.
func (w *window) row(title string) (found state.WalkRow) {
	w.t.Helper()
	for _, r := range w.Walk.Rows {
		if r.Title == title {
			found = r
		}
	}
	if found.Title == "" {
		w.t.Fatalf("the walk has no row %s", title)
	}
	return found
}

// at is the title of the row that is typed into.
func (w *window) at() string {
	row, _ := w.Walk.Row()
	return row.Title
}

func TestTheWalkHasTheRowsOfTheDay(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening())
	if w.Walk == nil || w.Fill != state.RecordFill {
		t.Fatal("the walk is not open")
	}
	if w.at() != "A1" || !strings.HasPrefix(w.row("A1").Planned, "cell from batch 4") {
		t.Errorf("the walk begins at %s, planned %q", w.at(), w.row("A1").Planned)
	}
	if w.Walk.Nucs < 47 {
		t.Errorf("%d rows, want the 47 nucs without a queen at least", w.Walk.Nucs)
	}
}

// TestTheEveningTypedByTwo is the evening on which two write from one sheet.
func TestTheEveningTypedByTwo(t *testing.T) {
	pen := yardOfTheEvening()
	jon := &booktest.Pen{Zone: zone, Writer: "Jon"}
	jon.In("2027-05-15", calendar.Morning)
	give := func(name string) { jon.Write(book.CellGiven{Nuc: booktest.Nuc(name), Batch: booktest.Batch("4")}) }
	for i := range 12 {
		give(fmt.Sprint("D", i+1))
	}
	for _, name := range []string{"E1", "E2", "E4", "E5", "E6", "F1", "F2", "F3", "F4"} {
		give(name)
	}
	jon.Write(book.Dropped{What: book.Cells, Batch: booktest.Batch("4"), Count: 1})
	pen.Entries = append(pen.Entries, jon.Entries...)
	w := inTheEvening(t, pen).run("morning").run("morning")

	w.types("A1-A12 done as written, except A9")
	if w.at() != "A9" {
		t.Fatalf("after the row command the walk stands at %s, want A9", w.at())
	}
	w.types("n s4", "n c4 s5", "n c4", `n "cell dropped"`, "n c4", "n c4 s3", "n c4 s4 h1")
	if w.at() != "C1" {
		t.Fatalf("the walk stands at %s, want C1", w.at())
	}
	w.types("C1-C6 done as written")
	w.types("C7 c4 s5")
	if w.Asked == nil || len(w.Asked.Answers) != 3 {
		t.Fatal("a cell for a laying queen asks nothing")
	}
	w.press("1").save()
	if got := w.row("C7"); got.Asks || !strings.Contains(got.Back, "cell from batch 4 given") || !strings.Contains(got.Back, "queen gone") {
		t.Errorf("C7 reads back %q, asks %v", got.Back, got.Asks)
	}
	w.types("C8 done")
	w.types("D1-D12 c4")
	if row := w.Walk.Rows[len(w.Walk.Rows)-2]; row.By != "Jon" || row.Twice {
		t.Errorf("the last row of a nuc is by %q, twice %v; want Jon's, once", row.By, row.Twice)
	}
	if n := len(w.Walk.Twins); n != 12 {
		t.Fatalf("%d lines stand twice, want 12", n)
	}
	c := w.Walk.Closing
	if len(c) != 1 || c[0].String() != "48 = 45 placed + 2 dropped + 1 not accounted for" {
		t.Fatalf("the count is %v", c)
	}
	cells := 0
	for e := range w.Book.Season.Entries() {
		if g, ok := e.Fact.(book.CellGiven); ok && !g.Batch.IsZero() {
			cells++
		}
	}
	if cells != 57 {
		t.Errorf("%d entries of cells, want 57 for 45 nucs", cells)
	}
	w.run("close walk")
	if w.Form == nil {
		t.Fatal("closing does not ask for what is missing")
	}
	w.press("Enter", state.Ctrl).save()
	if w.Walk != nil || w.Fill != state.NoFill {
		t.Fatal("the walk is still open")
	}
	if !strings.Contains(w.Note.Text, "1 not accounted for") {
		t.Errorf("the foot says %q", w.Note.Text)
	}
	if w.run("type it in"); len(w.Walk.Twins) != 0 || w.Walk.Closing[0].Placed != 45 {
		t.Errorf("after the strikes %d twins, %v", len(w.Walk.Twins), w.Walk.Closing)
	}
}

func TestAWalkIsUndoneInWords(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("n c4 s5 h2", "n c4 s4")
	if got := w.Pen.Done[1].Words; got != "A2 n c4 s4" {
		t.Errorf("undo would take back %q", got)
	}
	w.press("Z", state.Ctrl).save()
	if !w.row("A2").Open() || w.row("A1").Open() {
		t.Error("undo does not open the row again")
	}
	if w.press("Y", state.Ctrl).save(); w.row("A2").Typed != "n c4 s4" {
		t.Error("redo does not write the row again")
	}
}

func TestARowIsTypedAnew(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("n c4 s5 h2", "n c4 s4")
	w.press("PageUp").press("PageUp")
	if w.at() != "A1" || w.Typed(state.WalkField) != "n c4 s5 h2" {
		t.Fatalf("%s says %q", w.at(), w.Typed(state.WalkField))
	}
	w.press("A", state.Ctrl).types("n s2")
	row := w.row("A1")
	if row.Typed != "n s2" || w.Walk.Closing[0].Placed != 1 {
		t.Errorf("A1 says %q, %v", row.Typed, w.Walk.Closing)
	}
	if w.press("Z", state.Ctrl).save(); w.row("A1").Typed != "n c4 s5 h2" || w.Walk.Closing[0].Placed != 2 {
		t.Errorf("undone A1 says %q, %v", w.row("A1").Typed, w.Walk.Closing)
	}
	w.press("PageUp")
	for w.at() != "A2" {
		w.press("PageUp")
	}
	if w.press("X", state.Alt).save(); !w.row("A2").Open() {
		t.Error("a row that is struck is not open")
	}
}

// rowsOf is how many rows have a title.
func (w *window) rowsOf(title string) (n int) {
	for _, r := range w.Walk.Rows {
		if r.Title == title {
			n++
		}
	}
	return n
}

// TestTypedTwiceIsAsked: of one nuc, not of neighbours of which the same is right.
func TestTypedTwiceIsAsked(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("n c4 s5 h2", "n c4 s5 h2", "n c4")
	if w.Asked != nil || w.at() != "A4" || w.row("A2").SameAs != "A1" || w.row("A3").SameAs != "" {
		t.Fatalf("asked %v at %s; A2 is the same as %q", w.Asked, w.at(), w.row("A2").SameAs)
	}
	if w.types("A2 n c4 s5 h2"); w.Asked == nil || w.Asked.Asks != "Typed twice?" {
		t.Fatal("the same of the same nuc twice asks nothing")
	}
	if w.press("2"); w.Asked != nil || w.rowsOf("A2") != 1 || w.Typed(state.WalkField) != "" {
		t.Error("the second line is not struck")
	}
	if w.types("A2 n c4 s5 h2").press("1").save(); w.rowsOf("A2") != 2 || w.at() != "A4" {
		t.Errorf("both are right; A2 has %d rows, the walk stands at %s", w.rowsOf("A2"), w.at())
	}
}

func TestPartsOfTheDay(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening())
	part := func(name string) calendar.Part {
		var last calendar.Part
		for e := range w.Book.Season.Entries() {
			if f, ok := e.Fact.(book.Looked); ok && f.Nuc == booktest.Nuc(name) {
				last = e.At.Part
			}
		}
		return last
	}
	w.press("M", state.Alt).types("n s5")
	w.types("n s4 @pm")
	if a, b := part("A1"), part("A2"); a != calendar.Morning || b != calendar.Afternoon {
		t.Errorf("A1 was %v, A2 %v", a, b)
	}
}

// TestNothingTypedIsLost: what stands unwritten in a row is there again, also
// after the walk was left.
func TestNothingTypedIsLost(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).write("n s").press("PageDown").write("q e")
	if w.press("PageUp"); w.Typed(state.WalkField) != "n s" {
		t.Errorf("A1 says %q", w.Typed(state.WalkField))
	}
	w.press("Escape")
	if w.Walk != nil {
		t.Fatal("Esc does not leave the walk")
	}
	w.run("type it in")
	if w.at() != "A1" || w.Typed(state.WalkField) != "n s" {
		t.Errorf("%s says %q", w.at(), w.Typed(state.WalkField))
	}
	if w.press("Down"); w.Typed(state.WalkField) != "q e" {
		t.Errorf("A2 says %q", w.Typed(state.WalkField))
	}
}

func TestALineOfAnotherNuc(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening())
	w.types("B4 n c4 s5", "n c4")
	if w.row("B4").Typed != "n c4 s5" || w.at() != "B6" || w.row("B5").Typed != "n c4" {
		t.Errorf("B4 says %q, B5 %q, the walk stands at %s", w.row("B4").Typed, w.row("B5").Typed, w.at())
	}
	w.types("A1 n s3; A2 n s4")
	if w.row("A1").Typed != "n s3" || w.row("A2").Typed != "n s4" || w.at() != "A3" {
		t.Errorf("A1 says %q, A2 %q, the walk stands at %s", w.row("A1").Typed, w.row("A2").Typed, w.at())
	}
	w.types("A 12 looked 3 laying")
	if got := w.Walk.Rows[0]; got.Typed != "A 12 looked 3 laying" || len(got.Nucs) != 0 || got.Title != "A" {
		t.Errorf("counts of a row stand as %+v", got)
	}
}

func TestWhatTheBookDoesNotTake(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).write("n c4").press("Return")
	if !w.row("A1").Under {
		t.Error("a row on its way into the book does not say so")
	}
	w.send(state.Written{Number: 1, Failed: "the disk is full: make room"})
	if row := w.row("A1"); !row.Failed || row.Typed != "n c4" {
		t.Errorf("refused: %+v", row)
	}
	w.effects = nil
	if w.run("again").save(); w.row("A1").Failed || w.Unsaved() {
		t.Error("again does not write it")
	}
}

func TestWrongLinesWriteNothing(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).types("n c9")
	if !w.row("A1").Open() || w.at() != "A1" || len(w.Walk.Says.Line.Mistakes) == 0 {
		t.Error("a line with a mistake was written")
	}
	if w.Typed(state.WalkField) != "n c9" {
		t.Error("a line with a mistake is lost")
	}
}

func TestTheWalkOfADayGoneBy(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).press("Escape").press(",")
	w.run("type it in")
	if w.Walk == nil || w.Walk.Day != saturday-1 {
		t.Fatal("the walk of yesterday does not open")
	}
	w.run("all nucs").types("B1 n s5")
	for e := range w.Book.Season.Entries() {
		if f, ok := e.Fact.(book.Looked); ok && f.Nuc == booktest.Nuc("B1") && e.At.Day(zone) != saturday-1 {
			t.Errorf("written of %v", e.At.Day(zone))
		}
	}
	w.press("Escape").press("Home").press(".")
	if w.run("type it in"); w.Walk != nil {
		t.Error("a day ahead is typed in")
	}
}

func TestAllNucsOfTheYard(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening())
	before := len(w.Walk.Rows)
	w.press("W", state.Alt)
	if len(w.Walk.Rows) != 49+1 || before != 48+1 {
		t.Errorf("%d rows, before %d; want all 49 and the line for any nuc", len(w.Walk.Rows), before)
	}
}

func TestARowIsClicked(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening())
	if w.tap(w.row("B4").Ref(), 0); w.at() != "B4" {
		t.Errorf("a click on B4 leads to %s", w.at())
	}
	if w.tap(scene.Ref{Kind: state.RowRef, ID: "nobody"}, 0); w.at() != "B4" {
		t.Error("a row that is gone was opened")
	}
}

func TestWhatWasTakenAlongIsWritten(t *testing.T) {
	pen := yardOfTheEvening().Strike()
	w := inTheEvening(t, pen)
	if len(w.Walk.Closing) != 0 {
		t.Fatal("something was taken along before")
	}
	w.run("walk along")
	if w.Form == nil {
		t.Fatal("nobody is asked what was taken along")
	}
	w.write("48").press("Enter").save()
	if c := w.Walk.Closing; len(c) != 1 || c[0].Out != 48 || w.InField() != state.WalkField {
		t.Errorf("out: %v; the keys go to %q", c, w.InField())
	}
}

func TestWhatFollowsIsSaidWhileTyping(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).write("n c4")
	says := w.Walk.Says
	if says.After == nil || says.After.Presumed.Condition != book.Cell {
		t.Fatalf("the lid would become %+v", says.After)
	}
	if !strings.HasPrefix(says.Next, "look for eggs") || !strings.Contains(says.Back, "cell from batch 4 given") {
		t.Errorf("reads back %q, next %q", says.Back, says.Next)
	}
	w.press("Return").save()
	if lid := w.Walk.Lid(w.row("A1")); lid.Presumed.Condition != book.Cell || !lid.Presumed.LookBest.Equal(says.After.Presumed.LookBest) {
		t.Errorf("the lid became %v, look %v; foretold was look %v", lid.Presumed.Condition, lid.Presumed.LookBest, says.After.Presumed.LookBest)
	}
}

// TestAWalkByKeyboardAlone opens, types, answers, corrects and closes a walk
// without a pointer and without the name of a command.
func TestAWalkByKeyboardAlone(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).press("Escape").press("I", state.Alt)
	if w.InField() != state.WalkField {
		t.Fatalf("the keys go to %q", w.InField())
	}
	w.press("M", state.Alt).types("A1-A12 done", "n c4 s5", "C7 c4").press("1").save()
	w.types("n s3").press("PageUp").press("X", state.Alt).save()
	w.types("B2 n s4")
	w.press("K", state.Alt)
	if w.Form == nil {
		t.Fatal("closing asks nothing")
	}
	w.write("2").press("Enter").save()
	if w.Walk != nil {
		t.Error("the walk is not closed")
	}
	for _, want := range []string{"14 placed", "2 dropped", "32 not accounted for"} {
		if !strings.Contains(w.Note.Text, want) {
			t.Errorf("the foot says %q, want %q", w.Note.Text, want)
		}
	}
}

// TestABlankFormLeavesItOpen: closing a walk with nothing to add writes nothing.
func TestABlankFormLeavesItOpen(t *testing.T) {
	w := inTheEvening(t, yardOfTheEvening()).press("K", state.Alt)
	w.effects = nil
	w.press("Enter").save()
	if w.Walk != nil || len(w.Pen.Done) != 0 || w.Book == nil {
		t.Error("a blank form does not close the walk, or writes something")
	}
	if !strings.Contains(w.Note.Text, "48 not accounted for; 48 rows open") {
		t.Errorf("the foot says %q", w.Note.Text)
	}
}
