package handover

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
)

// A wish is for the open orders of its day and line that nothing is planned for, as far as its
// queens go round.
func TestWhichOrdersAWishIsFor(t *testing.T) {
	by, pen := calendar.Date(2027, 6, 30), (&booktest.Pen{}).At("2027-03-01 12:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
	turn := 0
	order := func(name, line string, queens, journey int) book.OrderTaken {
		turn++
		return book.OrderTaken{Priority: turn, Order: booktest.Order(name), Number: name, Customer: "K", Queens: queens, Line: line, By: by, Sent: journey > 0, Journey: journey}
	}
	later := order("later", "Rook", 1, 0)
	later.By++
	pen.Write(order("a", "Rook", 3, 0), order("b", "Wren", 1, 0), order("c", "", 2, 0), order("d", "Rook", 9, 0), order("e", "Rook", 1, 2), later,
		order("planned", "Rook", 1, 0), book.BatchPlanned{Batch: booktest.Batch("x"), Day: calendar.Date(2027, 5, 20), Larvae: 10, Nucs: 4, Line: "Rook", Orders: []book.OrderID{booktest.Order("planned")}})
	p := plannerOf(pen, "2027-05-02 08:00")
	for _, c := range []struct {
		queens int
		line   string
		back   int // days before
		want   string
	}{{6, "Rook", 0, "ace"}, {5, "Rook", 0, "ac"}, {4, "Rook", 0, "ae"}, {3, "Rook", 0, "a"}, {6, "", 0, "c"}, {6, "Wren", 0, "bc"}, {6, "Rook", 2, "e"}, {6, "Rook", 1, ""}} {
		var got strings.Builder
		for _, o := range OrdersFor(p, c.queens, c.line, by-calendar.Day(c.back)) {
			got.WriteString(o.Number)
		}
		if got.String() != c.want {
			t.Errorf("%d of %q %d days before: %q, want %q", c.queens, c.line, c.back, got.String(), c.want)
		}
	}
}
