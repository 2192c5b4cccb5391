package state_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// dayAfterGraft is a window on Today of the day after a graft into S1, with finishers of
// some names.
func dayAfterGraft(t *testing.T, finishers ...string) *window {
	t.Helper()
	pen := bareYard()
	for _, name := range finishers {
		pen.Write(book.ColonyDescribed{Colony: booktest.Colony(name), Name: name, Yard: booktest.Yard("Hill"), Roles: []book.Role{book.Finisher}})
	}
	pen.At("2027-06-01 18:00").Write(
		book.ColonyDescribed{Colony: booktest.Colony("S1"), Name: "S1", Yard: booktest.Yard("Hill"), Roles: []book.Role{book.Starter}},
		book.Grafted{Batch: booktest.Batch("9"), Number: 9, Larvae: 20, Starter: booktest.Colony("S1")})
	w := &window{t: t, State: state.State{Now: calendar.Date(2027, time.June, 2).At(17, 0, zone), Width: 1440, Height: 900}}
	w.send(state.Opened{Book: &state.Book{Season: book.NewSeason(time.LoadLocation, pen.Entries), Name: "Hill"}})
	w.Pen.IDs, w.Pen.Writer = book.NewIDs(w.Now, w.Book.Season, [32]byte{1}), "Ida"
	return w.run("today")
}

func (w *window) written() (all []book.Fact) {
	for _, e := range w.Pen.Done[len(w.Pen.Done)-1].Entries {
		all = append(all, e.Fact)
	}
	return all
}

// TestAMoveIsTicked: cells that can only go into one finisher are moved there by the tick,
// at the minutes of the line; undone they wait again.
func TestAMoveIsTicked(t *testing.T) {
	w := dayAfterGraft(t, "S3")
	l := w.lineOf(rules.ActMoveCells, book.KindBatch)
	if says := w.TickSays(l); l.Title != "Move the cells of batch 9 to finisher S3" || says.Asks || says.Cannot {
		t.Fatalf("%q, and its box %+v", l.Title, says)
	}
	w.tap(tickOf(l), 0).settle()
	want := book.CellsMoved{Batch: booktest.Batch("9"), To: booktest.Colony("S3")}
	if got := w.written(); len(got) != 1 || got[0] != want {
		t.Fatalf("the tick writes %+v", got)
	}
	done := w.done()
	if len(done) != 1 || done[0].Act != rules.ActMoveCells || w.Reading().DoneMinutes() != l.Minutes {
		t.Errorf("%d lines done, %v min of %v", len(done), w.Reading().DoneMinutes(), l.Minutes)
	}
	w.lineOf(rules.ActCountCells, book.KindBatch)
	w.run("undo").settle()
	w.lineOf(rules.ActMoveCells, book.KindBatch)
}

// TestAMoveAsksWhere: the tick of cells that several finishers can take asks into which;
// the form of the move has the one that is named, or none.
func TestAMoveAsksWhere(t *testing.T) {
	w := dayAfterGraft(t, "S3", "S4")
	l := w.lineOf(rules.ActMoveCells, book.KindBatch)
	if says := w.TickSays(l); !says.Asks {
		t.Errorf("two finishers, and the box says %+v", says)
	}
	if w.tap(tickOf(l), 0); w.Form == nil || w.Form.Record != "move cells" || w.FormSays().Answers.Mistakes["to"] == "" {
		t.Fatalf("it opens %+v, answered %+v", w.Form, w.FormSays().Facts)
	}
	w = dayAfterGraft(t, "S3")
	w.tap(state.TaskOf(w.lineOf(rules.ActMoveCells, book.KindBatch).Number), 0).run("line record")
	facts := w.FormSays().Facts
	if len(facts) != 1 || facts[0] != (book.CellsMoved{Batch: booktest.Batch("9"), To: booktest.Colony("S3")}) {
		t.Errorf("the form writes %+v", facts)
	}
}

// TestACountAsksHowMany: the tick of a count opens its form, and what is written there
// does the line and is minutes of work.
func TestACountAsksHowMany(t *testing.T) {
	w := dayAfterGraft(t, "S3")
	l := w.lineOf(rules.ActCountCells, book.KindBatch)
	if w.tap(tickOf(l), 0); w.Form == nil || w.Form.Record != "count" {
		t.Fatalf("it opens %+v", w.Form)
	}
	w.typedInto(state.FormField+"taken", "16")
	w.run("write").settle()
	if got := w.written(); len(got) != 1 || got[0] != (book.TakeCounted{Batch: booktest.Batch("9"), Accepted: 16}) {
		t.Fatalf("it writes %+v", got)
	}
	if done := w.done(); len(done) != 1 || done[0].Act != rules.ActCountCells || w.Reading().DoneMinutes() != l.Minutes {
		t.Errorf("%+v done, %v min of %v", done, w.Reading().DoneMinutes(), l.Minutes)
	}
}

// TestTheRoomOfABatchAsksForItsStep: its main button begins the record of the step that is
// due, the move before the count; a day later nothing of it is left where both are done.
func TestTheRoomOfABatchAsksForItsStep(t *testing.T) {
	w := dayAfterGraft(t, "S3")
	w.Selection = state.Select(booktest.Batch("9").Subject())
	w.run("batch room")
	for _, c := range []struct{ word, record string }{{"move cells", "move cells"}, {"count cells", "count"}} {
		if got := w.BatchWork(); got.Word != c.word || got.Command != "batch work" {
			t.Fatalf("the button says %+v, want %s", got, c.word)
		}
		if w.run("batch work"); w.Form == nil || w.Form.Record != c.record {
			t.Fatalf("%s opens %+v", c.word, w.Form)
		}
		if c.record == "count" {
			w.typedInto(state.FormField+"taken", "16")
		}
		w.run("write").settle()
	}
	if got := w.BatchWork(); got.Command != "batch nucs" {
		t.Errorf("all is done, and the button says %+v", got)
	}
}
