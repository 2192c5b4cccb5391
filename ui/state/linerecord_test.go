package state_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
	"lidmark/ui/state"
)

// TestALookComesFirst: what is done after a look only has the look written down.
func TestALookComesFirst(t *testing.T) {
	w := keeper(t)
	looks := 0
	for _, l := range w.Lines() {
		if id, isNuc := l.Of[0].Nuc(); isNuc && len(l.Of) == 1 && strings.HasPrefix(l.Title, "Look; ") {
			w := keeper(t).tap(state.TaskOf(l.Number), 0).run("line record")
			if w.Form != nil || w.InField() != state.LineField(id) {
				t.Errorf("%q opens %+v, the keys go to %q", l.Title, w.Form, w.InField())
			}
			looks++
		}
	}
	if looks == 0 {
		t.Error("no line of the demo season has a look come first")
	}
}

// TestCagesForTheRest: the form of cells to be collected has a cage for each that no nuc
// is ready for, as a cell; a batch that nobody counted is counted first.
func TestCagesForTheRest(t *testing.T) {
	w := keeper(t)
	l := w.lineOf(rules.ActCollectCells, book.KindBatch)
	cages := 0
	for _, k := range w.Reading().Plan().Kit {
		if strings.HasPrefix(k.Goods, "cage") {
			cages += int(k.Amount)
		}
	}
	w.tap(state.TaskOf(l.Number), 0).run("line record")
	if w.Form == nil || w.Form.Record != "cage" {
		t.Fatalf("it opens %+v", w.Form)
	}
	facts := w.FormSays().Facts
	if len(facts) != cages || cages == 0 {
		t.Errorf("%d cages in the form, %d in the kit", len(facts), cages)
	}
	for _, f := range facts {
		if caged, ok := f.(book.VirginCaged); !ok || !caged.Cell {
			t.Errorf("it would write %+v of a cell", f)
		}
	}
}

// ripeRow is a window on twelve nucs made up this morning and a batch grafted ten days
// ago of which nobody counted more than its 40 larvae.
func ripeRow(t *testing.T) *window {
	t.Helper()
	pen := bareYard()
	pen.At("2027-05-16 06:00")
	for _, name := range rowA() {
		pen.Write(book.NucMadeUp{Nuc: booktest.Nuc(name), Cups: 3})
	}
	w := &window{t: t, State: state.State{Now: calendar.Date(2027, time.May, 16).At(7, 0, zone), Width: 1440, Height: 900}}
	w.send(state.Opened{Book: &state.Book{Season: book.NewSeason(time.LoadLocation, pen.Entries), Name: "Hill"}})
	w.Pen.IDs, w.Pen.Writer = book.NewIDs(w.Now, w.Book.Season, [32]byte{1}), "Ida"
	return w.run("today")
}

func TestUncountedCellsAreCountedFirst(t *testing.T) {
	w := ripeRow(t)
	l := w.lineOf(rules.ActCollectCells, book.KindBatch)
	if w.tap(state.TaskOf(l.Number), 0).run("line record"); w.Form == nil || w.Form.Record != "count" {
		t.Errorf("%q opens %+v", l.Title, w.Form)
	}
}

// TestNothingIsTickedUndone: nucs for which a count leaves no cell are not told as
// served; those that are given one are.
func TestNothingIsTickedUndone(t *testing.T) {
	w := ripeRow(t)
	l := w.lineOf(rules.ActGiveCell, book.KindNuc)
	if len(l.Of) != len(rowA()) {
		t.Fatalf("%d nucs are to get cells", len(l.Of))
	}
	w.take(booktest.Batch("1").Subject()).fill("count", "ripe=8").kept()
	if done := w.run("today").done(); len(done) != 0 {
		t.Errorf("counted, and done are %+v", done)
	}
	l = w.lineOf(rules.ActGiveCell, book.KindNuc)
	if len(l.Of) != 8 {
		t.Fatalf("8 cells are for %d nucs", len(l.Of))
	}
	w.tap(tickOf(l), 0).settle()
	for _, d := range w.done() {
		if d.Act == rules.ActGiveCell && len(d.Of) != 8 {
			t.Errorf("8 cells were given, done are %d nucs", len(d.Of))
		}
	}
	if len(w.done()) == 0 {
		t.Error("nothing is done")
	}
}

// TestTheLastChanceIsTheLast: what can wait for another day has its last chance on that
// day.
func TestTheLastChanceIsTheLast(t *testing.T) {
	pen := madeUpInTheEvening()
	pen.At("2027-05-15 20:30").Write(book.RipeCounted{Batch: booktest.Batch("1"), Ripe: 12})
	w := inTheEvening(t, pen)
	w.Now = calendar.Date(2027, time.May, 15).At(21, 0, zone)
	r := w.run("today").Reading()
	soon := r.Plan().Soon
	hard, tested := r.Course.Clock(booktest.Batch("1")).Hard(), false
	for _, l := range w.Lines() {
		tested = tested || l.Act == rules.ActCollectCells
	}
	if !tested || !hard.After(soon) {
		t.Fatalf("a line to collect cells: %v; hard is %v, soon %v", tested, hard, soon)
	}
	if says, _ := r.LessSays(state.Less{Nobody: true}); strings.Contains(says, "last chance") {
		t.Errorf("by %v: %q", hard, says)
	}
}
