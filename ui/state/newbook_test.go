package state_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// madeUpInTheEvening is a new book: a batch grafted nine days ago, and twelve nucs
// that were made up by their card at 20:12, before anybody opened the walk.
func madeUpInTheEvening() *booktest.Pen {
	pen := bareYard()
	pen.At("2027-05-15 20:12")
	for _, name := range rowA() {
		pen.Write(book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: 3})
	}
	return pen
}

// bareYard is a yard of twelve empty nucs, with cells of batch 1 to give.
func bareYard() *booktest.Pen {
	pen := &booktest.Pen{Zone: zone, Writer: "Ida"}
	yard, stand := booktest.Yard("Hill"), booktest.Stand("A")
	pen.At("2027-05-15 19:50").Write(book.YardDescribed{Yard: yard, Name: "Hill", Zone: "Europe/Berlin"},
		book.PersonDescribed{Person: booktest.Person("Ida"), Name: "Ida"}, book.StandSet{Stand: stand, Yard: yard, Letter: "A", Places: 12})
	for i, name := range rowA() {
		pen.Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: name, Sides: 6},
			book.NucPlaced{Nuc: booktest.Nuc(name), Yard: yard, Stand: stand, Place: i + 1})
	}
	return pen.At("2027-05-06 18:00").Write(book.Grafted{Batch: booktest.Batch("1"), Number: 1, Larvae: 40})
}

func rowA() []string {
	return []string{"A1", "A2", "A3", "A4", "A5", "A6", "A7", "A8", "A9", "A10", "A11", "A12"}
}

// TestCellsAfterTheNucsWereMadeUp: what is typed in the evening of a row comes
// after what a form wrote of it a moment ago, and its lids become cells.
func TestCellsAfterTheNucsWereMadeUp(t *testing.T) {
	w := inTheEvening(t, madeUpInTheEvening())
	if w.types("A1-A10 c1 s4"); w.Asked != nil {
		t.Fatal(w.Asked.Asks)
	}
	row := w.row("A1–A10")
	if n := w.Walk.Lid(row); n.Presumed.Condition != book.Cell {
		t.Errorf("the lid of the row became %v", n.Presumed.Condition)
	}
	for i, name := range rowA() {
		want := book.Cell
		if i >= 10 {
			want = book.NoQueen
		}
		if got := w.inBook(name).Holds.Condition; got != want {
			t.Errorf("%s holds %v, want %v", name, got, want)
		}
	}
}

// TestCellsInNucsNobodyMadeUp: one question for all of the row, answered once.
func TestCellsInNucsNobodyMadeUp(t *testing.T) {
	w := inTheEvening(t, bareYard()).write("A1-A10 c1 s4").press("Return")
	if w.Asked == nil || w.Asked.Asks != "A1 was not made up by then: made up before? The same of 9 more nucs" {
		t.Fatalf("asked %+v", w.Asked)
	}
	if w.press("1").save(); w.Asked != nil {
		t.Fatalf("asked again: %s", w.Asked.Asks)
	}
	for _, name := range rowA()[:10] {
		if n := w.inBook(name); n.Holds.Condition != book.Cell || n.MadeUp.IsZero() {
			t.Errorf("%s holds %v, made up %v", name, n.Holds.Condition, n.MadeUp)
		}
	}
	if w.run("undo").save(); w.inBook("A4").Holds.Condition != book.Empty {
		t.Errorf("undone, A4 holds %v", w.inBook("A4").Holds.Condition)
	}
	if w.write("A1-A10 c1").press("Return").press("3"); w.Asked != nil || len(w.Pen.Sent) > 0 {
		t.Error("a line that was typed wrong is written")
	}
}

// TestMadeUpBeforeThoughWrittenLater: an hour that was typed stays, and what the
// book has later that day is told before it.
func TestMadeUpBeforeThoughWrittenLater(t *testing.T) {
	w := inTheEvening(t, madeUpInTheEvening()).write("A1-A3 c1 s4 @pm").press("Return")
	if w.Asked == nil || w.Asked.Asks != "A1 was not made up by then, but at 20:12: made up before? The same of 2 more nucs" {
		t.Fatalf("asked %+v", w.Asked)
	}
	w.press("1").save()
	for _, name := range rowA()[:3] {
		if n := w.inBook(name); n.Holds.Condition != book.Cell || n.MadeUp.Part != calendar.Afternoon || len(n.Gaps) > 0 || n.Bees.Value != 4 {
			t.Errorf("%s holds %v, made up %v, %v, bees %v", name, n.Holds.Condition, n.MadeUp, n.Gaps, n.Bees)
		}
	}
}

// TestThereIsAlwaysALine: when every row is written there is an open line for any
// nuc; it is one of the rows, for keys and clicks.
func TestThereIsAlwaysALine(t *testing.T) {
	w := inTheEvening(t, madeUpInTheEvening())
	any, ok := w.Walk.Row()
	if !ok || !any.Any() || !w.rowInSight() {
		t.Fatalf("all rows are written, and the line is %+v", any)
	}
	if w.Walk.Done != 12 || w.Walk.Nucs != 12 {
		t.Errorf("%d of %d", w.Walk.Done, w.Walk.Nucs)
	}
	w.types("A3 e0 s5")
	if now, _ := w.Walk.Row(); !now.Any() || !w.rowInSight() || w.Typed("walk.line") != "" {
		t.Errorf("after a line the walk stands at %+v", now)
	}
	if typed := func(r state.WalkRow) bool { return r.Title == "A3" && r.Typed == "e0 s5" }; !slices.ContainsFunc(w.Walk.Rows, typed) {
		t.Error("A3 has no row of what was typed")
	}
	w.write("A5 e").press("Up").press("Down")
	if now, _ := w.Walk.Row(); !now.Any() || w.Typed("walk.line") != "A5 e" {
		t.Errorf("the line says %q", w.Typed("walk.line"))
	}

	open := inTheEvening(t, yardOfTheEvening())
	if open.at() != "A1" {
		t.Fatalf("with rows open the walk begins at %q", open.at())
	}
	last := open.Walk.Rows[len(open.Walk.Rows)-1]
	if open.tap(last.Ref(), 0); open.Walk.At != last.RowName || !last.Any() || !open.rowInSight() {
		t.Errorf("a click on the last line leads to %+v", open.Walk.At)
	}
	if open.types("B4 n c4 s5"); open.at() != "B5" || open.row("B4").Open() {
		t.Errorf("after a line the walk stands at %q", open.at())
	}
	if open.types("F4 n").press("Return"); open.Walk.At != last.RowName {
		t.Errorf("behind the last row the walk stands at %q", open.at())
	}
}

// inBook is a nuc as the book has it, whatever the window shows.
func (w *window) inBook(name string) *book.Nuc {
	return w.Book.Season.At(w.Now).NucNamed(name)[0]
}

// rowInSight tells whether the row that is typed into shows as a whole.
func (w *window) rowInSight() bool {
	p := w.WalkPane(w.Layout())
	top := p.Y(p.Current) - p.Offset
	return p.Current >= 0 && top >= 0 && top+p.Tall <= p.Body.H
}
