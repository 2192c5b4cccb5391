package book_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
)

// An order with a priority is served before all that have none; a smaller number first,
// then the earlier day, then the order that was taken first.
func TestOrdersAreServedByPriority(t *testing.T) {
	june := calendar.Date(2027, 6, 1)
	p := (&booktest.Pen{}).At("2027-05-01 08:00")
	for _, o := range []book.OrderTaken{
		{Number: "late", By: june + 20},
		{Number: "soon", By: june},
		{Number: "second, soon", By: june + 1, Priority: 2},
		{Number: "ninth", By: june, Priority: 9},
		{Number: "second, late", By: june + 9, Priority: 2},
		{Number: "first", By: june + 40, Priority: 1},
		{Number: "before the first", By: june + 50, Priority: -1},
	} {
		o.Order = booktest.Order(o.Number)
		p.Write(o)
	}
	var got []string
	for o := range p.View("2027-05-02 08:00").Orders() {
		got = append(got, o.Number)
	}
	if want := []string{"before the first", "first", "second, soon", "second, late", "ninth", "soon", "late"}; !slices.Equal(got, want) {
		t.Errorf("served in the order %q, want %q", got, want)
	}
}
