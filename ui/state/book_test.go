package state_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/ui/state"
)

// A past day is shown as it stood when it ended, today as it stands now, a day
// ahead by its noon.
func TestWhenADayIsRead(t *testing.T) {
	a1 := booktest.Nuc("A1")
	pen := &booktest.Pen{}
	pen.At("2027-05-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("Hill"), Name: "Hill", Zone: "UTC"})
	pen.At("2027-05-09 19:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3})
	pen.At("2027-05-11 19:00").Write(book.CellGiven{Nuc: a1})
	b := &state.Book{Season: book.NewSeason(booktest.Zones, pen.Entries)}
	now := time.Date(2027, 5, 11, 7, 30, 0, 0, time.UTC)
	for day, want := range map[string]book.Condition{
		"2027-05-08": book.Empty, "2027-05-09": book.NoQueen, "2027-05-11": book.NoQueen, "2027-05-12": book.Cell,
	} {
		d, err := calendar.ParseDay(day)
		if err != nil {
			t.Fatal(err)
		}
		if got := b.On(now, d).View.Nuc(a1).Condition(); got != want {
			t.Errorf("%s: %v, want %v", day, got, want)
		}
	}
	evening := now.Add(13 * time.Hour)
	if got := b.On(evening, calendar.DayOf(evening, nil)).View.Nuc(a1).Condition(); got != book.Cell {
		t.Errorf("in the evening: %v, want the cell", got)
	}
}

// A reading is made once: the same day at the same instant is the same value.
func TestADayIsReadOnce(t *testing.T) {
	b := &state.Book{Season: book.NewSeason(nil, booktest.Big(4, 20))}
	today := calendar.DayOf(booktest.BigNow, nil)
	if again := b.On(booktest.BigNow, today); again != b.On(booktest.BigNow, today) {
		t.Error("a day was read twice")
	}
	first := b.On(booktest.BigNow, today+3)
	b.On(booktest.BigNow.Add(time.Minute), today)
	if b.On(booktest.BigNow.Add(time.Minute), today+3) != first {
		t.Error("the turn of a minute forgets the days ahead")
	}
}
