package state_test

import (
	"slices"
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// ordered is a window on a book with more in it, three days before all orders of [allocated] are due.
func ordered(t testing.TB, more func(*booktest.Pen)) *window {
	w := allocated(t)
	p := (&booktest.Pen{Writer: "Ida"}).At("2027-05-14 08:00")
	more(p)
	season := w.Book.Season.With(p.Entries...)
	w.send(state.Opened{Book: &state.Book{Season: season, Name: "S8"}, IDs: book.NewIDs(w.Now, season, [32]byte{1})})
	return w
}

// The room opens on the first order that can be kept: not on one that a graft of tomorrow is too
// late for, nor so far ahead that none can be planned, nor one of a line that nobody breeds, nor one that waits for a graft.
func TestPlanOpensOnAnOrderThatCanBeKept(t *testing.T) {
	taken := func(number string, queens int, line string, by calendar.Day) book.OrderTaken {
		return book.OrderTaken{Order: booktest.Order(number), Number: number, Customer: "Farm " + number, Queens: queens, Line: line, By: by}
	}
	w := ordered(t, func(p *booktest.Pen) {
		far := taken("9", 2, "", calendar.Date(2029, time.May, 20))
		far.Priority = 1
		p.Write(far, taken("4", 3, "", calendar.Date(2027, time.June, 20)), // by the calendar alone a graft of tomorrow is in time
			taken("5", 4, "Teal", calendar.Date(2027, time.August, 1)),
			taken("6", 5, "", calendar.Date(2027, time.August, 3)),
			taken("7", 6, "", calendar.Date(2027, time.August, 9)),
			taken("8", 7, "", calendar.Date(2027, time.August, 20)))
		p.Write(book.BatchPlanned{Batch: booktest.Batch("p"), Day: calendar.Date(2027, time.June, 10), Minute: 600, Larvae: 20, Nucs: 12, Yard: booktest.Yard("home"), Orders: []book.OrderID{booktest.Order("6")}})
	})
	w.run("plan").settled()
	sheet, _ := w.PlanSheet()
	if got := w.Typed(state.WishQueens) + " by " + w.Typed(state.WishDay); got != "6 by Mon 9 Aug" || !sheet.InTime || sheet.Nucs == 0 {
		t.Errorf("it opens on %s, in time %v, in %d nucs", got, sheet.InTime, sheet.Nucs)
	}
}

// An order that waits for a batch that is grafted says so.
func TestAnOrderThatWaitsForAGraftedBatchSaysSo(t *testing.T) {
	for grafted, want := range map[bool]string{false: "Planned: 3 more; the plan gives them ", true: "Grafted: 3 more; the graft gives them "} {
		w := ordered(t, func(p *booktest.Pen) {
			p.Write(book.OrderTaken{Order: booktest.Order("9"), Number: "9", Customer: "Farm 9", Queens: 3, By: calendar.Date(2027, time.August, 1), Priority: 9},
				book.BatchPlanned{Batch: booktest.Batch("p"), Day: calendar.Date(2027, time.May, 18), Minute: 600, Larvae: 20, Nucs: 12, Queens: 3, Yard: booktest.Yard("home"), Orders: []book.OrderID{booktest.Order("9")}})
			if grafted {
				p.At("2027-05-16 10:00").Write(book.Grafted{Batch: booktest.Batch("p"), Number: 9, Larvae: 20})
			}
		})
		w.run("orders").settled()
		if all := w.ofOrder("9"); !slices.ContainsFunc(all, func(l state.OrderLine) bool { return strings.HasPrefix(l.Cells[0], want) }) {
			t.Errorf("grafted %v, want %q: %+v", grafted, want, all)
		}
	}
}
