package state_test

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// TestTakenInNamesTheTwins: who takes in what another typed is told which nucs
// both have, and where to strike them.
func TestTakenInNamesTheTwins(t *testing.T) {
	pen := yardOfTheEvening()
	pen.In("2027-05-15", calendar.Evening)
	jon := &booktest.Pen{Zone: zone, Writer: "Jon"}
	jon.In("2027-05-15", calendar.Evening)
	for i := range 12 {
		name := fmt.Sprint("D", i+1)
		look := book.Looked{Nuc: booktest.Nuc(name), Sides: book.Said(4)}
		pen.Write(look, book.CellGiven{Nuc: booktest.Nuc(name), Batch: booktest.Batch("4")})
		jon.Write(look, book.CellGiven{Nuc: booktest.Nuc(name), Batch: booktest.Batch("4")})
	}
	before := book.NewSeason(time.LoadLocation, pen.Entries)
	said := state.TakenIn(before, before.With(jon.Entries...), evening)
	want := "24 entries that were not in the book; 12 nucs were typed by both: close the walk of Sat 15 May to strike the later ones"
	if said != want {
		t.Errorf("%q\nwant %q", said, want)
	}
	for n, want := range []string{"nothing that was not in the book", "1 entry that was not in the book"} {
		lone := &booktest.Pen{Zone: zone, Writer: "Jon"}
		lone.At("2027-05-15 12:00")
		for range n {
			lone.Write(book.Fed{To: booktest.Nuc("E1").Subject(), Litres: 1})
		}
		if said := state.TakenIn(before, before.With(lone.Entries...), evening); said != want {
			t.Errorf("%q, want %q", said, want)
		}
	}
}

// TestPlannedStaysForTheDay: what the sheet said in the morning stands in the walk
// when it is opened again, whatever was written since.
func TestPlannedStaysForTheDay(t *testing.T) {
	pen := yardOfTheEvening()
	morning := inTheEvening(t, pen).row("A9").Planned
	pen.In("2027-05-15", calendar.Evening).Write(book.Dropped{What: book.Cells, Batch: booktest.Batch("4"), Count: 48})
	if again := inTheEvening(t, pen).row("A9").Planned; again != morning || !strings.HasPrefix(again, "cell from batch 4") {
		t.Errorf("A9 is planned %q, in the morning %q", again, morning)
	}
}

// TestAnEntranceIsPlannedAsOne: a weak nuc's entrance is not own cells.
func TestAnEntranceIsPlannedAsOne(t *testing.T) {
	pen := yardOfTheEvening()
	for at, sides := range map[string]float64{"2027-05-14 12:00": 2, "2027-05-14 18:00": 4} { // so that a few bees are wanting, not a cup
		pen.At(at).Write(book.Looked{Nuc: booktest.Nuc("A1"), Sides: book.Said(sides), Stores: book.Said(3)})
	}
	w := inTheEvening(t, pen)
	if got := w.row("A1").Planned; !strings.Contains(got, "entrance to ") || strings.Contains(got, "own cells") {
		t.Errorf("A1 is planned %q", got)
	}
}

// TestWaitingIsNeverToToday: what there is no time for waits to a day to come, and
// what is due on this one is said.
func TestWaitingIsNeverToToday(t *testing.T) {
	pen := &booktest.Pen{Zone: zone, Writer: "Ida"}
	yard, nuc := booktest.Yard("Ostermead"), booktest.Nuc("A1")
	pen.At("2027-04-10 10:00").Write(book.YardDescribed{Yard: yard, Name: "Ostermead", Zone: "Europe/Berlin"},
		book.NucNamed{Nuc: nuc, Name: "A1", Sides: 6}, book.NucPlaced{Nuc: nuc, Yard: yard})
	pen.At("2027-05-14 10:00").Write(book.NucMadeUp{Nuc: nuc, Cups: 3})
	says := func() string {
		s := inTheEvening(t, pen).State
		says, more := s.Reading().LessSays(state.Less{Nobody: true})
		return says + more
	}
	if got := says(); !strings.HasPrefix(got, "all of it waits") || strings.Contains(got, "due today") {
		t.Errorf("with nothing due today: %q", got)
	}
	pen.At("2027-05-15 18:00").Write(book.Looked{Nuc: nuc, Sides: book.Said(2), Stores: book.Said(3)})
	if got := says(); !strings.Contains(got, "due today") || strings.Contains(got, saturday.Short()) {
		t.Errorf("weak since this evening: %q", got)
	}
}
