package course_test

import (
	"testing"
	"time"

	"pgregory.net/rapid"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// written is A1 through deeds at random.
func written(t *rapid.T) *booktest.Pen {
	p := &booktest.Pen{}
	p.At("2027-05-01 08:00").Write(book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "America/Santiago"},
		book.NucNamed{Nuc: a1, Name: "A1"}, book.NucPlaced{Nuc: a1, Yard: yard})
	at := time.Date(2027, 5, 1, 9, 0, 0, 0, time.UTC)
	for range rapid.IntRange(0, 12).Draw(t, "deeds") {
		at = at.Add(time.Duration(rapid.IntRange(0, 200).Draw(t, "hours")) * time.Hour)
		p.At(at.Format("2006-01-02 15:04")).Write(rapid.SampledFrom([]book.Fact{
			book.Grafted{Batch: batch, Number: 4, Larvae: 20},
			book.NucMadeUp{Nuc: a1, Cups: 3, Open: 1},
			book.CellGiven{Nuc: a1, Batch: batch},
			book.VirginPutIn{Nuc: a1},
			book.VirginPutIn{Nuc: a1, Emerged: at.Add(-50 * time.Hour)},
			book.Looked{Nuc: a1, Eggs: book.SingleEggs},
			book.Looked{Nuc: a1, Eggs: book.NoEggs},
			book.Looked{Nuc: a1, Queen: book.VirginSeen},
			book.Looked{Nuc: a1, Cell: book.CellTornAtSide},
			book.Looked{Nuc: a1, Brood: book.Said(2)},
			book.Looked{Nuc: a1, Eggs: book.ManyEggs},
			book.QueenCaught{Nuc: a1},
			book.OwnCellsBroken{Nuc: a1},
			book.Robbed{Nuc: a1},
			book.ShakenOut{Nuc: a1},
		}).Draw(t, "deed"))
	}
	return p
}

// TestPresumptionsAreSound: whatever was written, and at whatever moment, what
// is seen is what the book has, windows are in order and nothing is younger
// than new.
func TestPresumptionsAreSound(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := written(t)
		on := time.Date(2027, 5, 1, 12, 0, 0, 0, time.UTC).Add(time.Duration(rapid.IntRange(0, 3000).Draw(t, "on")) * time.Hour)
		v := book.NewSeason(booktest.Zones, p.Entries).At(on)
		n := v.Nuc(a1)
		got := course.ByCalendar(v, n)
		if got.Seen && got.Condition != n.Condition() {
			t.Fatalf("seen as %v, the book has %v", got.Condition, n.Condition())
		}
		if got.Why == "" || got.Age < 0 || got.Since.After(on) {
			t.Fatalf("%+v", got)
		}
		if got.LookBest.Before(got.LookFrom) || got.LookBy.Before(got.LookBest) {
			t.Fatalf("look from %v, best %v, by %v", got.LookFrom, got.LookBest, got.LookBy)
		}
		if again := course.ByCalendar(v, n); again != got {
			t.Fatalf("asked twice: %+v and %+v", got, again)
		}
	})
}

// TestDaysThatChangeTheClock: a window of days begins and ends with the day
// also on the nights that have 23 or 25 hours.
func TestDaysThatChangeTheClock(t *testing.T) {
	zone, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	for _, row := range []struct {
		day   calendar.Day
		hours float64
	}{{calendar.Date(2027, 3, 28), 23}, {calendar.Date(2027, 10, 31), 25}, {calendar.Date(2028, 2, 29), 24}} {
		from, best, by := course.Days(row.day, row.day, row.day, zone)
		if got := by.Sub(from) + time.Second; got.Hours() != row.hours {
			t.Errorf("%v has %v, want %g h", row.day, got, row.hours)
		}
		if best.In(zone).Hour() != 12 {
			t.Errorf("%v is best at %v, want noon", row.day, best.In(zone))
		}
	}
}
