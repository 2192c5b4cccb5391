package state_test

import (
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

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

// A book with another line reads as one that was opened with it, whether the day
// was read before or not.
func TestABookWithALine(t *testing.T) {
	entries := booktest.Big(12, 60)
	now, today := booktest.BigNow, calendar.DayOf(booktest.BigNow, nil)
	b := &state.Book{Season: book.NewSeason(booktest.Zones, entries)}
	pen := &booktest.Pen{Writer: "Ida M."}
	pen.At("2027-07-11 18:00")
	for i := range 6 {
		n := b.On(now, today).Nucs[2*i]
		b.On(now, today+2)
		pen.Write(book.Looked{Nuc: n.Nuc.Nuc, Queen: book.NoneSeen, Eggs: book.NoEggs, Sides: book.Said(float64(i))})
		b = b.With(pen.Entries[i])
		anew := &state.Book{Season: book.NewSeason(booktest.Zones, append(entries[:len(entries):len(entries)], pen.Entries...))}
		for _, d := range []calendar.Day{today - 1, today, today + 2} {
			want, got := anew.On(now, d), b.On(now, d)
			if diff := cmp.Diff(want.Findings, got.Findings); diff != "" {
				t.Fatalf("%v, what is found:\n%s", d, diff)
			}
			for j, w := range want.Nucs {
				if g := got.Nucs[j]; w.Presumed != g.Presumed || w.NeedsYou != g.NeedsYou || w.DueDay != g.DueDay || w.Used != g.Used {
					t.Fatalf("%v, %s is presumed %+v, want %+v", d, w.Name, g.Presumed, w.Presumed)
				}
			}
		}
	}
}
