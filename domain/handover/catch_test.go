package handover_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// full is a nuc on six sides of 2 dm² in which a queen lays since 20 April: by the calendar
// her combs are full from 4 May on.
func full(p *booktest.Pen, roles ...book.Role) {
	p.At("2027-04-01 08:00").Write(
		book.YardDescribed{Yard: booktest.Yard("home"), Name: "Home", Home: true, Zone: "UTC"},
		book.ColonyDescribed{Colony: booktest.Colony("K"), Name: "K", Yard: booktest.Yard("home"), Roles: roles})
	proven(p, "Rook", 1)
	p.At("2027-05-03 12:00").Write(
		book.NucNamed{Nuc: booktest.Nuc("Rook0"), Name: "R1", Sides: 6, Side: 2},
		book.Looked{Nuc: booktest.Nuc("Rook0"), Sides: book.Said(6)})
}

// TestCaughtWhileSheHasRoom: who is for an order is caught by the last day on which her
// small combs have room, if a bank or cage keeps her until she goes; else she gets room and
// is caught on the order's day.
func TestCaughtWhileSheHasRoom(t *testing.T) {
	for _, c := range []struct {
		name  string
		roles []book.Role
		today string
		on    string
		want  string
	}{
		{"a bank keeps her for three weeks", []book.Role{book.Bank}, "2027-05-03", "2027-05-24", "catch by Tue 4 May, then in a bank"},
		{"past the last day at once", []book.Role{book.Bank}, "2027-05-11", "2027-05-24", "catch by Tue 11 May, then in a bank"},
		{"no bank, and three days in a cage", nil, "2027-05-03", "2027-05-07", "catch by Tue 4 May, then caged"},
		{"no bank, and four", nil, "2027-05-03", "2027-05-08", "give room, catch Sat 8 May"},
		{"longer than a bank keeps her", []book.Role{book.Bank}, "2027-05-03", "2027-06-19", "give room, catch Sat 19 Jun"},
		{"as long as a bank keeps her", []book.Role{book.Bank}, "2027-05-03", "2027-06-18", "catch by Tue 4 May, then in a bank"},
		{"fetched while she has room", []book.Role{book.Bank}, "2027-05-03", "2027-05-04", "catch Tue 4 May"},
	} {
		p := &booktest.Pen{}
		full(p, c.roles...)
		p.At("2027-05-03 13:00").Write(order("1", 1, "Rook", day(t, c.on)))
		o := sheetOf(p.View(c.today + " 14:00")).Orders[0]
		if len(o.Queens) != 1 || o.Queens[0].Words() != c.want {
			t.Errorf("%s: %+v, want %q", c.name, o.Queens, c.want)
		}
	}
}

// TestNoOneIsCaughtLaterThanSheMay: whatever the order's day, who is caught for it keeps
// until then, in a bank or not, and is caught neither before today nor after the last day
// on which her combs have room, unless that is past or she gets room.
func TestNoOneIsCaughtLaterThanSheMay(t *testing.T) {
	for _, roles := range [][]book.Role{nil, {book.Bank}} {
		for ahead := calendar.Day(1); ahead < 60; ahead++ { // ready from 4 May on
			p := &booktest.Pen{}
			full(p, roles...)
			today := day(t, "2027-05-03")
			p.At("2027-05-03 13:00").Write(order("1", 1, "Rook", today+ahead))
			v := p.View("2027-05-03 14:00")
			o := sheetOf(v).Orders[0]
			if len(o.Queens) != 1 {
				t.Fatalf("%d days ahead: %d queens", ahead, len(o.Queens))
			}
			q, most := o.Queens[0], calendar.Day(v.Numbers().Days(practice.CagedMost))
			if q.ToBank {
				most = calendar.Day(v.Numbers().Days(practice.MatedBankMost))
			}
			last := max(day(t, "2027-05-04"), q.Ready)
			if q.By < today || q.By > o.On || o.On-q.By > most || !q.Room && q.By > last || q.From > q.By || q.ToBank && roles == nil {
				t.Errorf("%d days ahead, bank %v: ready %s, %+v", ahead, roles != nil, q.Ready, q.Catching)
			}
		}
	}
}

// TestRobbersKeepHerWhereSheIs: nobody opens her box while robbers are about.
func TestRobbersKeepHerWhereSheIs(t *testing.T) {
	p := &booktest.Pen{}
	full(p, book.Bank)
	p.At("2027-05-03 13:00").Write(order("1", 1, "Rook", day(t, "2027-05-24")))
	robbed := booktest.Nuc("robbed")
	p.Write(book.NucNamed{Nuc: robbed, Name: "T1", Sides: 6}, book.NucPlaced{Nuc: robbed, Yard: booktest.Yard("home")}, book.NucMadeUp{Nuc: robbed, Cups: 3})
	p.At("2027-05-10 18:00").Write(book.Robbed{Nuc: robbed})
	v := p.View("2027-05-11 08:00")
	over := day(t, "2027-05-10") + calendar.Day(v.Numbers().Days(practice.RobbingLasts))
	if q := sheetOf(v).Orders[0].Queens[0]; q.By != over {
		t.Errorf("caught %s, the yard may be opened from %s", q.By, over)
	}
}

// TestWhoHasRoomGoesLater: of two queens of a line the one on full combs goes to the order
// that is due first.
func TestWhoHasRoomGoesLater(t *testing.T) {
	p := &booktest.Pen{}
	full(p)
	p.At("2027-05-03 12:00").Write(book.NucNamed{Nuc: booktest.Nuc("Rook0"), Name: "R1", Sides: 6, Side: 9})
	for i := range 2 {
		name := fmt.Sprint("later", i)
		p.At("2027-04-04 12:00").Write(book.NucNamed{Nuc: booktest.Nuc(name), Name: fmt.Sprintf("S%d", i), Sides: 6, Side: 2}, book.NucPlaced{Nuc: booktest.Nuc(name), Yard: booktest.Yard("home")}, book.CellGiven{Nuc: booktest.Nuc(name), Batch: booktest.Batch("Rook")})
		p.At("2027-04-20 12:00").Write(book.Looked{Nuc: booktest.Nuc(name), Queen: book.QueenSeen, Eggs: book.SingleEggs})
		p.At("2027-05-03 12:00").Write(book.Looked{Nuc: booktest.Nuc(name), Queen: book.QueenSeen, Brood: book.Said(4), Sides: book.Said(6)})
	}
	p.At("2027-05-03 13:00").Write(order("1", 2, "Rook", day(t, "2027-05-08")), order("2", 1, "Rook", day(t, "2027-05-28")))
	s := sheetOf(p.View("2027-05-03 14:00"))
	if late := s.Orders[1].Queens; len(late) != 1 || late[0].Nuc != booktest.Nuc("Rook0") || late[0].Room {
		t.Errorf("the later order gets %+v, want R1, who has room", late)
	}
}

// TestACageIsHungIntoABank: a queen in a cage by herself keeps for a later order where she
// can be hung into a bank in time, and the sheet says so; no longer when that time is over.
func TestACageIsHungIntoABank(t *testing.T) {
	for today, want := range map[string]string{"2027-05-07": "hang her into a bank", "2027-05-08": ""} {
		p := &booktest.Pen{}
		full(p, book.Bank)
		p.At("2027-05-04 07:00").Write(book.QueenCaught{Nuc: booktest.Nuc("Rook0"), Queen: booktest.Queen("caught"), Label: "7"})
		p.At("2027-05-04 13:00").Write(order("1", 1, "Rook", day(t, "2027-05-24")))
		o := sheetOf(p.View(today + " 08:00")).Orders[0]
		if (len(o.Queens) == 1) != (want != "") || want != "" && o.Queens[0].Words() != want {
			t.Errorf("%s: %+v, want %q", today, o.Queens, want)
		}
	}
}
