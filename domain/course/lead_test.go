package course_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// TestLead: what a lid says is the calendar's, unless the chances make something
// else more probable than not and nobody saw what the calendar says.
func TestLead(t *testing.T) {
	for _, row := range []struct {
		name           string
		write          func(*booktest.Pen)
		at             string
		want, calendar book.Condition
		says           string
	}{
		{"a virgin like others", celled, "2027-05-26 12:00", book.Virgin, book.Virgin, "virgin, 8 days old"},
		{"no eggs when nearly all lay", lookedWithoutEggs, "2027-06-04 12:00", book.NoQueen, book.Virgin, "most probably no queen; virgin, 17 days old"},
		{"but she was seen", func(p *booktest.Pen) {
			celled(p)
			p.At("2027-06-03 18:00").Write(book.Looked{Nuc: a1, Eggs: book.NoEggs, Queen: book.VirginSeen})
		}, "2027-06-04 12:00", book.Virgin, book.Virgin, "virgin, 17 days old"},
		{"an old virgin", func(p *booktest.Pen) {
			celled(p)
			p.At("2027-06-01 18:00").Write(book.Looked{Nuc: a1, Eggs: book.NoEggs, Queen: book.VirginSeen})
			p.At("2027-06-15 18:00").Write(book.Looked{Nuc: a1, Eggs: book.NoEggs, Queen: book.VirginSeen})
		}, "2027-07-02 12:00", book.DroneLayer, book.Due, "most probably drone layer; 45 days old"},
		{"no queen so long that workers may lay", func(*booktest.Pen) {}, "2027-06-03 12:00", book.NoQueen, book.LayingWorkers, "no queen since Thu 13 May"},
		{"and that they do", func(*booktest.Pen) {}, "2027-06-10 12:00", book.LayingWorkers, book.LayingWorkers, "no queen since Thu 13 May"},
		{"left on its brood, its own queen young", func(p *booktest.Pen) {
			caught(p)
			p.At("2027-06-26 18:00").Write(book.Looked{Nuc: a1, OwnCells: book.Said(3)})
		}, "2027-07-05 12:00", book.Virgin, book.NoQueen, "most probably queenright by now; no queen since"},
		{"and old enough to lay", func(p *booktest.Pen) {
			caught(p)
			p.At("2027-06-26 18:00").Write(book.Looked{Nuc: a1, OwnCells: book.Said(3)})
		}, "2027-07-20 12:00", book.Due, book.NoQueen, "most probably queenright by now; no queen since"},
	} {
		p := pen(t)
		row.write(p)
		signs(p, calendar.Date(2027, 5, 10), repeat("+", 80))
		v := p.View(row.at)
		c := course.New(v)
		got := c.Of(v.Nuc(a1))
		if got.Condition != row.want || got.Calendar != row.calendar {
			t.Errorf("%s: %v, by the calendar %v, want %v and %v; %+v", row.name, got.Condition, got.Calendar, row.want, row.calendar, c.Held(v.Nuc(a1)).Chances())
		}
		if !strings.HasPrefix(got.Why, row.says) {
			t.Errorf("%s: %q", row.name, got.Why)
		}
	}
}
