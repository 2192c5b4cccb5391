package handover_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/handover"
)

// A queen whose yard robbers keep shut is dealt to no order that leaves before it is opened:
// it waits, told why and from which day on; to one that leaves later she goes, and is caught
// then. One who stands elsewhere, or in a cage, goes.
func TestAQueenAmongRobbersIsNotDealt(t *testing.T) {
	p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.YardDescribed{Yard: booktest.Yard("far"), Name: "Far", Zone: "UTC", Drive: 20})
	proven(p, "Rook", 4)
	p.At("2027-05-05 08:00").Write(book.NucPlaced{Nuc: booktest.Nuc("Rook3"), Yard: booktest.Yard("far")})
	p.At("2027-05-17 12:00").Write(order("1", 2, "Rook", day(t, "2027-05-18")), order("2", 1, "Rook", day(t, "2027-05-25")))
	dealt := func() (soon, later handover.Served) {
		s := sheetOf(p.View("2027-05-18 08:00"))
		return s.Orders[0], s.Orders[1]
	}
	if soon, later := dealt(); soon.Short != 0 || later.Short != 0 {
		t.Fatalf("nobody robs: %d and %d short", soon.Short, later.Short)
	}
	p.At("2027-05-17 17:00").Write(book.Robbed{Nuc: booktest.Nuc("Rook0")})
	soon, later := dealt()
	if len(soon.Queens) != 1 || soon.Queens[0].Nuc != booktest.Nuc("Rook3") || soon.Short != 1 {
		t.Errorf("order 1 gets %+v, short by %d: want the queen from far, and one short", soon.Queens, soon.Short)
	}
	open := day(t, "2027-05-19")
	if !strings.Contains(soon.Warning, "1 who would do may not go: robbers keep its yard shut until "+open.Short()) {
		t.Errorf("order 1 says %q", soon.Warning)
	}
	if soon.Next.Day != open {
		t.Errorf("order 1 expects her on %s, want %s", soon.Next.Day.Short(), open.Short())
	}
	if len(later.Queens) != 1 || later.Queens[0].Nuc == booktest.Nuc("Rook3") || later.Queens[0].From < open || later.Queens[0].By < open {
		t.Errorf("order 2 gets %+v", later.Queens)
	}
	stays := 0
	v := p.View("2027-05-18 08:00")
	for _, q := range handover.Catchable(course.New(v), v.Order(booktest.Order("1"))) {
		if strings.HasPrefix(q.Closed, "robbers") {
			stays++
		}
	}
	if stays != 2 {
		t.Errorf("%d of three in health are told to stay, want 2", stays)
	}
	p.At("2027-05-17 18:00").Write(book.ForageSeen{Yard: booktest.Yard("home"), Forage: book.InDearth})
	if soon, later := dealt(); soon.Next.Day <= open || later.Queens[0].From <= open {
		t.Errorf("in dearth they come back: expected %s, caught from %s", soon.Next.Day.Short(), later.Queens[0].From.Short())
	}
}

// A queen is caught on the very day on which her yard is opened. Of several nucs that were
// robbed the one robbed last says which day that is, wherever it stands in the row; one that
// was shaken out calls no robbers any more.
func TestAYardIsOpenFromTheDayOfItsLastRobbedNuc(t *testing.T) {
	open := day(t, "2027-05-20") // robbed on the 18th, two days shut
	for _, c := range []struct {
		name        string
		early, late string // robbed a day earlier, and last
		shaken      bool   // the one robbed last
		before, on  int    // queens for the day before it is opened, and for that day
	}{
		{"the one robbed last comes last", "Rook0", "Rook1", false, 0, 2},
		{"and first", "Rook1", "Rook0", false, 0, 2},
		{"it was shaken out", "Rook0", "Rook3", true, 2, 2},
	} {
		for by, want := range map[calendar.Day]int{open - 1: c.before, open: c.on} {
			p := (&booktest.Pen{}).At("2027-04-01 08:00").Write(book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"})
			proven(p, "Rook", 4)
			p.At("2027-05-17 12:00").Write(book.Robbed{Nuc: booktest.Nuc(c.early)})
			p.At("2027-05-18 06:00").Write(book.Robbed{Nuc: booktest.Nuc(c.late)})
			if c.shaken {
				p.At("2027-05-18 06:30").Write(book.ShakenOut{Nuc: booktest.Nuc(c.late)})
			}
			p.At("2027-05-18 07:00").Write(order("1", 2, "Rook", by))
			if got := len(sheetOf(p.View("2027-05-18 08:00")).Orders[0].Queens); got != want {
				t.Errorf("%s: for %s %d queens, want %d", c.name, by.Short(), got, want)
			}
		}
	}
}
