package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestNoDayAfterTheHardHour: the days for cells into nucs end with the hour at
// which they must be out, also when warmth and old larvae bring it forward.
func TestNoDayAfterTheHardHour(t *testing.T) {
	warm := func(p *booktest.Pen) {
		g := graft(4, 24)
		g.LarvaAge = 60
		p.At("2027-05-05 18:00").Write(g, book.CellsMoved{Batch: batch(4)}, book.IncubatorRead{Batch: batch(4), Celsius: 36})
	}
	usual := func(p *booktest.Pen) { p.At("2027-05-05 18:00").Write(graft(4, 24)) }
	for _, row := range []struct {
		name  string
		write func(*booktest.Pen)
		do    string
		on    calendar.Day
	}{
		{"usual", usual, "from Fri 14 May to Sat 15 May 18:16", calendar.Date(2027, 5, 15)},
		{"warm and old", warm, "from Thu 13 May to Fri 14 May 00:16", calendar.Date(2027, 5, 13)}, // its last morning
	} {
		p := pen(t)
		row.write(p)
		v := p.View("2027-05-10 18:00")
		found := 0
		for _, d := range rules.Deadlines(v, calendar.Date(2027, 5, 1), calendar.Date(2027, 5, 31)) {
			if !strings.HasSuffix(d.What, bee.CellsIn.String()) {
				continue
			}
			found++
			if d.Do != row.do || d.Day != row.on {
				t.Errorf("%s: %s on %s, want %s on %s", row.name, d.Do, d.Day, row.do, row.on)
			}
		}
		if found != 1 {
			t.Errorf("%s: %d lines for cells into nucs, want 1", row.name, found)
		}
	}
}

// TestASearchPutOffIsNoDeadline: a search for wild cells that was put off rings no
// alarm until its day, and does again from then on.
func TestASearchPutOffIsNoDeadline(t *testing.T) {
	p := pen(t)
	s1 := booktest.Colony("S1")
	p.At("2027-05-12 18:00").Write(book.BroodGiven{To: s1.Subject(), Combs: 2, Open: 6, From: booktest.Colony("S2").Subject()})
	g := graft(5, 20)
	g.Starter = s1
	p.At("2027-05-15 18:00").Write(g)
	searches := func(at string) (n int) {
		for _, d := range rules.Deadlines(p.View(at), calendar.Date(2027, 5, 1), calendar.Date(2027, 5, 31)) {
			if d.Of == s1.Subject() && d.Hard {
				n++
			}
		}
		return n
	}
	if n := searches("2027-05-16 09:00"); n != 1 {
		t.Fatalf("%d deadlines of a search, want 1", n)
	}
	p.At("2027-05-16 10:00").Write(book.PutOff{Rule: string(rules.WildCells), Of: s1.Subject(), Until: calendar.Date(2027, 5, 18)})
	if n := searches("2027-05-17 09:00"); n != 0 {
		t.Errorf("put off, and still %d deadlines", n)
	}
	if n := searches("2027-05-18 09:00"); n != 1 {
		t.Errorf("on the day until which it was put off, %d deadlines, want 1", n)
	}
}
