package view_test

import (
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
