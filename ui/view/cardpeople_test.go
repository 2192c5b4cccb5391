package view_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/ui/state"
)

// TestCardsOfPeopleAndOrdersTellAllThatWasSaid: the hours of single days, as last
// told and not those gone by, and how queens are wanted.
func TestCardsOfPeopleAndOrdersTellAllThatWasSaid(t *testing.T) {
	s := open(t)
	s.Room, s.Width, s.Height = state.Yard, 1440, 1200
	today := s.Reading().Day
	ida, order := booktest.Person("Ida"), booktest.Order("99")
	free := book.FreeHours{From: 14 * 60, Until: 18 * 60}
	pen := &booktest.Pen{}
	pen.At("2027-05-09 08:00").Write(
		book.PersonDescribed{Person: ida, Name: "Ida"},
		book.HoursOn{Person: ida, Day: today - 1, FreeHours: free},
		book.HoursOn{Person: ida, Day: today + 1, FreeHours: free},
		book.HoursOn{Person: ida, Day: today + 2, FreeHours: free},
		book.HoursOn{Person: ida, Day: today + 2},
		book.OrderTaken{Order: order, Number: "99", Customer: "Club", Queens: 2, By: today + 30, Disc: true, Clipped: true, Sent: true, Journey: 2},
	)
	s.Book = s.Book.With(pen.Entries...)
	s.Selection = state.Select(ida.Subject())
	said := cardTexts(t, s)
	for _, want := range []string{(today + 1).Short(), "14:00 to 18:00", (today + 2).Short(), "none"} {
		if !slices.Contains(said, want) {
			t.Errorf("the card of a person does not say %q: %q", want, said)
		}
	}
	if slices.Contains(said, (today - 1).Short()) {
		t.Error("the card of a person tells of a day gone by")
	}
	s.Selection = state.Select(order.Subject())
	if said := strings.Join(cardTexts(t, s), " "); !strings.Contains(said, "with disc, a wing clipped, sent, 2 days on the way") {
		t.Errorf("the card of an order says %q", said)
	}
}

// TestTheCardOfAnOrderSaysOnceThatItIsShort: with one number, how many are to be grafted; what is found of
// the order is not said below once more.
func TestTheCardOfAnOrderSaysOnceThatItIsShort(t *testing.T) {
	s := open(t)
	s.Width, s.Height = 1440, 1600
	order, pen := booktest.Order("99"), &booktest.Pen{}
	pen.At("2027-05-09 08:00").Write(book.OrderTaken{Order: order, Number: "99", Customer: "Club", Queens: 60, Line: "Siskin", By: s.Today() + 60})
	s.Book = s.Book.With(pen.Entries...)
	s, effects := state.Update(s, state.Ran{Command: "orders"})
	for _, e := range effects {
		if e, ok := e.(state.ReckonOrders); ok {
			s, _ = state.Update(s, e.Reckon())
		}
	}
	s.Selection = state.Select(order.Subject())
	o, known := s.Served(order)
	said := strings.Join(cardTexts(t, s), " ")
	if !known || o.Missing() == 0 || o.Missing() == o.Short {
		t.Fatalf("%d of %d are missing", o.Missing(), o.Short)
	}
	if n := strings.Count(said, "short"); n != 2 || !strings.Contains(said, fmt.Sprintf("%d short ", o.Missing())) || !strings.Contains(said, fmt.Sprintf("raft for %d by ", o.Missing())) || strings.Contains(said, "Short by") {
		t.Errorf("%d times short, %d are missing: %q", n, o.Missing(), said)
	}
}
