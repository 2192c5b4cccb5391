package course_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
)

var (
	a1    = booktest.Nuc("A1")
	yard  = booktest.Yard("Quillbank")
	batch = booktest.Batch("4")
)

// pen makes up A1 in the evening of 13 May 2027 and grafts batch 4 on 5 May at
// 18:00; its middle hour is Tue 18 May, half an hour after midnight.
func pen(t *testing.T) *booktest.Pen {
	t.Helper()
	berlin, err := time.LoadLocation("Europe/Berlin")
	if err != nil {
		t.Fatal(err)
	}
	p := &booktest.Pen{Zone: berlin}
	return p.At("2027-05-01 08:00").Write(
		book.YardDescribed{Yard: yard, Name: "Quillbank", Home: true, Zone: "Europe/Berlin"},
		book.NucNamed{Nuc: a1, Name: "A1", Sides: 6, Side: 2},
		book.NucPlaced{Nuc: a1, Yard: yard},
	).At("2027-05-05 18:00").Write(
		book.Grafted{Batch: batch, Number: 4, Larvae: 20, LarvaAge: 18},
	).At("2027-05-13 18:00").Write(book.NucMadeUp{Nuc: a1, Cups: 3})
}

func celled(p *booktest.Pen) {
	p.At("2027-05-15 10:00").Write(book.CellGiven{Nuc: a1, Batch: batch})
}

func laying(p *booktest.Pen) {
	celled(p)
	p.At("2027-06-01 18:00").Write(book.Looked{Nuc: a1, Eggs: book.SingleEggs})
}

func caught(p *booktest.Pen) {
	laying(p)
	p.At("2027-06-20 18:00").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("a")})
}

func virginPutIn(p *booktest.Pen) {
	berlin := p.Zone
	p.At("2027-05-20 18:00").Write(book.VirginPutIn{Nuc: a1, Batch: batch, Emerged: time.Date(2027, 5, 18, 7, 0, 0, 0, berlin)})
}

func lookedWithoutEggs(p *booktest.Pen) {
	celled(p)
	p.At("2027-06-03 18:00").Write(book.Looked{Nuc: a1, Eggs: book.NoEggs})
}

func TestByCalendar(t *testing.T) {
	for _, row := range []struct {
		name  string
		write func(*booktest.Pen)
		at    string
		want  book.Condition
		seen  bool
		age   int
		why   string
	}{
		{"before it was made up", func(*booktest.Pen) {}, "2027-05-12 12:00", book.Empty, true, 0, "empty"},
		{"made up", func(*booktest.Pen) {}, "2027-05-14 12:00", book.NoQueen, true, 0, "no queen since Thu 13 May"},
		{"long without queen", func(*booktest.Pen) {}, "2027-06-03 12:00", book.LayingWorkers, false, 0, "no queen since Thu 13 May, 21 days: laying workers to be expected"},
		{"cell", celled, "2027-05-16 12:00", book.Cell, true, 0, "cell of batch 4, emerges Tue 18 May by the calendar"},
		{"an hour before", celled, "2027-05-17 23:30", book.Cell, true, 0, "cell of batch 4, emerges Tue 18 May by the calendar"},
		{"emerged today", celled, "2027-05-18 12:00", book.Virgin, false, 0, "virgin, 0 days old by the calendar"},
		{"virgin", celled, "2027-05-26 12:00", book.Virgin, false, 8, "virgin, 8 days old by the calendar"},
		{"due", celled, "2027-06-01 06:00", book.Due, false, 14, "14 days old by the calendar, due for a look"},
		{"no eggs yesterday", lookedWithoutEggs, "2027-06-04 12:00", book.Virgin, false, 17, "virgin, 17 days old by the calendar"},
		{"no eggs three days ago", lookedWithoutEggs, "2027-06-06 12:00", book.Due, false, 19, "19 days old by the calendar, no eggs on Thu 3 Jun"},
		{"too late", celled, "2027-06-15 12:00", book.Due, false, 28, "28 days old by the calendar, due for a look: too late to mate"},
		{"virgin put in", virginPutIn, "2027-05-21 12:00", book.Virgin, true, 3, "virgin, 3 days old"},
		{"laying", laying, "2027-06-05 12:00", book.Laying, true, 18, "laying, eggs seen Tue 1 Jun"},
		{"good brood", laying, "2027-06-10 12:00", book.GoodBrood, false, 23, "good brood by the calendar, eggs seen Tue 1 Jun"},
		{"as it was before the look", laying, "2027-06-01 12:00", book.Due, false, 14, "14 days old by the calendar, due for a look"},
		{"caught", caught, "2027-06-21 12:00", book.NoQueen, true, 0, "no queen since Sun 20 Jun; a virgin of its own is possible from Fri 2 Jul"},
		{"own virgin", caught, "2027-07-03 12:00", book.NoQueen, false, 0, "no queen since Sun 20 Jun; a virgin of its own is possible from Fri 2 Jul"},
		{"own cells broken down", func(p *booktest.Pen) {
			caught(p)
			p.At("2027-06-26 18:00").Write(book.OwnCellsBroken{Nuc: a1})
		}, "2027-07-11 12:00", book.LayingWorkers, false, 0, "no queen since Sun 20 Jun, 21 days: laying workers to be expected"},
		{"robbed", func(p *booktest.Pen) {
			celled(p)
			p.At("2027-05-19 18:00").Write(book.Robbed{Nuc: a1})
		}, "2027-05-19 19:00", book.BeingRobbed, true, 1, "robbed, seen Wed 19 May"},
		{"shaken out", func(p *booktest.Pen) {
			celled(p)
			p.At("2027-05-19 18:00").Write(book.ShakenOut{Nuc: a1})
		}, "2027-05-20 19:00", book.Empty, true, 0, "empty, shaken out on Wed 19 May"},
	} {
		t.Run(row.name, func(t *testing.T) {
			p := pen(t)
			row.write(p)
			v := p.View(row.at)
			got := course.ByCalendar(v, v.Nuc(a1))
			got.Why = strings.TrimPrefix(got.Why, "most probably no queen; ") // by the chances, see TestLead
			if got.Calendar != row.want || got.Seen != row.seen || got.Age != row.age || got.Why != row.why {
				t.Errorf("%s = %v, seen %v, %d days, %q\nwant %v, seen %v, %d days, %q", row.at,
					got.Calendar, got.Seen, got.Age, got.Why, row.want, row.seen, row.age, row.why)
			}
		})
	}
}

func TestDates(t *testing.T) {
	p := pen(t)
	laying(p)
	day := func(at time.Time) string { return at.In(p.Zone).Format("2006-01-02") }
	v := p.View("2027-05-20 12:00")
	got := course.ByCalendar(v, v.Nuc(a1))
	for _, d := range []struct {
		what string
		at   time.Time
		want string
	}{
		{"emerged", got.Emerged, "2027-05-18"},
		{"old enough from", got.OldEnoughFrom, "2027-05-24"},
		{"look from", got.LookFrom, "2027-06-01"},
		{"look best", got.LookBest, "2027-06-02"},
		{"look by", got.LookBy, "2027-06-04"},
		{"too late at", got.TooLateAt, "2027-06-15"},
	} {
		if day(d.at) != d.want {
			t.Errorf("%s %s, want %s", d.what, day(d.at), d.want)
		}
	}
	v = p.View("2027-06-02 12:00")
	got = course.ByCalendar(v, v.Nuc(a1))
	if day(got.LookFrom) != "2027-06-10" || day(got.ReadyAt) != "2027-06-15" {
		t.Errorf("capped brood from %s, ready %s, want 10 and 15 June", day(got.LookFrom), day(got.ReadyAt))
	}
}

// TestLateCell: a cell given after its batch's middle hour was shut still, and
// emerges no sooner than it was given.
func TestLateCell(t *testing.T) {
	p := pen(t)
	p.At("2027-05-19 18:00").Write(book.CellGiven{Nuc: a1, Batch: batch})
	v := p.View("2027-05-20 12:00")
	got := course.ByCalendar(v, v.Nuc(a1))
	if want := v.Nuc(a1).Holds.Given.Instant; !got.Emerged.Equal(want) {
		t.Errorf("emerged %v, want when it was given, %v", got.Emerged, want)
	}
}

// TestCellOfNoBatch: a ripe cell from elsewhere emerges two days on.
func TestCellOfNoBatch(t *testing.T) {
	p := pen(t)
	p.At("2027-05-15 10:00").Write(book.CellGiven{Nuc: a1})
	v := p.View("2027-05-16 12:00")
	got := course.ByCalendar(v, v.Nuc(a1))
	if want := "cell, emerges Mon 17 May by the calendar"; got.Why != want {
		t.Errorf("why %q, want %q", got.Why, want)
	}
}

// TestOnlyTheTipWasSeen: where nobody saw the virgin, the cell she left is what
// was seen.
func TestOnlyTheTipWasSeen(t *testing.T) {
	p := pen(t)
	celled(p)
	p.At("2027-05-20 18:00").Write(book.Looked{Nuc: a1, Cell: book.CellOpenAtTip})
	why := func() string {
		v := p.View("2027-05-24 18:00")
		return course.ByCalendar(v, v.Nuc(a1)).Why
	}
	if want := "cell open at the tip Thu 20 May; virgin, 6 days old by the calendar"; why() != want {
		t.Errorf("why %q, want %q", why(), want)
	}
	p.At("2027-05-22 18:00").Write(book.Looked{Nuc: a1, Queen: book.VirginSeen})
	if want := "virgin, 6 days old by the calendar"; why() != want {
		t.Errorf("why %q, want %q", why(), want)
	}
}
