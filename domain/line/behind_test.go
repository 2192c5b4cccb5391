package line_test

import (
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/line"
)

// TestALineComesAfterTheBookOfTheDay: a part of the day that nobody typed tells no
// order within it; what was typed stays as it is.
func TestALineComesAfterTheBookOfTheDay(t *testing.T) {
	v := yard(t)
	entry := func(id byte, at string, f book.Fact) book.Entry {
		moment, err := time.Parse("2006-01-02 15:04:05", at)
		if err != nil {
			t.Fatal(err)
		}
		return book.Entry{ID: book.EntryID{15: id}, At: calendar.Instantly(moment), Fact: f}
	}
	fed := func(name string) book.Fact { return book.Fed{To: booktest.Nuc(name).Subject(), Litres: 0.3} }
	c := line.Context{Day: calendar.Date(2027, time.May, 11), Part: calendar.Afternoon, Yard: booktest.Yard("Hill"), Now: now(t)}
	c.View = v.Season().With(
		entry(1, "2027-05-11 20:12:00", fed("A1")),
		entry(2, "2027-05-11 20:12:00", fed("A2")), entry(3, "2027-05-11 09:00:00", fed("A2")),
		entry(4, "2027-05-11 08:00:00", fed("A3")),
		entry(5, "2027-05-11 20:40:00", fed("A4")),
		entry(6, "2027-05-10 23:59:59", fed("A5")),
		entry(7, "2027-05-11 18:00:00", book.NucPlaced{Nuc: booktest.Nuc("A6"), Yard: booktest.Yard("Hill")}),
		entry(8, "2027-05-11 20:12:00", fed("A7")), entry(9, "2027-05-11 17:00:00", fed("A7")),
	).At(c.Now)
	c.Instead = []book.EntryID{{15: 8}}
	for _, row := range []struct {
		text string
		want []string // the time of each entry
	}{
		{"A1 s4", []string{"20:12:01"}},
		{"A1 s4 c3", []string{"20:12:01", "20:12:01"}},
		{"A1 s4 @am", []string{"09:00:00"}},
		{"A1 s4 @14:30", []string{"14:30:00"}},
		{"A1-A3 s4", []string{"20:12:01", "20:12:01", "16:00:00"}},
		{"A4 s4", []string{"20:40:00"}}, // nothing happens after now
		{"A5 s4", []string{"16:00:00"}},
		{"A6 s4", []string{"16:00:00"}},
		{"A7 s4", []string{"17:00:01"}}, // another line is taken back
	} {
		l, err := line.Parse(row.text, c)
		if err != nil {
			t.Errorf("%s: %v", row.text, err)
			continue
		}
		ids := book.NewIDs(c.Now, v.Season(), [32]byte{1})
		entries := l.Entries(&ids, c.Now, "Ida")
		var got []string
		for _, e := range entries {
			got = append(got, e.At.Instant.Format("15:04:05"))
			if exact := e.At.Part == calendar.Exact; exact == (got[len(got)-1] == "16:00:00" || row.text == "A1 s4 @am") {
				t.Errorf("%s: %v", row.text, e.At)
			}
		}
		if len(got) != len(row.want) {
			t.Errorf("%s: at %v, want %v", row.text, got, row.want)
			continue
		}
		for i := range got {
			if got[i] != row.want[i] {
				t.Errorf("%s: at %v, want %v", row.text, got, row.want)
			}
		}
	}
}
