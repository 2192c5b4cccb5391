package rules_test

import (
	"strings"
	"testing"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/demo"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// TestTodayCatchesWhomOrdersName: over the demo's weeks, every catch that the rules find is
// of a queen whom the sheet of the orders deals out, best on the day that the sheet names,
// and every queen it deals out is found, or is kept by a standstill or a label.
func TestTodayCatchesWhomOrdersName(t *testing.T) {
	first := calendar.Date(2027, time.May, 11)
	s, checked := book.NewSeason(time.LoadLocation, demo.Season(first, time.UTC)), 0
	for ahead := range calendar.Day(21) {
		j := rules.Judge(s.At((first + ahead).At(7, 30, time.UTC)))
		named := map[book.Subject]calendar.Day{}
		for _, o := range handover.New(plan.New(j.Course())).Orders {
			for _, q := range o.Queens {
				if q.By != 0 {
					named[q.Nuc.Subject()] = q.By
				}
			}
		}
		for _, f := range j.Findings() {
			if f.Rule != rules.Ready || f.Act != rules.ActCatchQueen {
				continue
			}
			by, told := named[f.Of]
			best := max(calendar.DayOf(f.Best, time.UTC), first+ahead)
			if !told || best > by || f.PastDue(first.At(7, 30, time.UTC)) != strings.Contains(f.What, "combs full") && ahead == 0 {
				t.Errorf("day %d, %s: %q best %s, by the orders %s", ahead, rules.Name(j.Course().View(), f.Of), f.What, best, by)
			}
			delete(named, f.Of)
			checked++
		}
		if len(named) > 0 {
			t.Errorf("day %d: %d are dealt out and not to be caught", ahead, len(named))
		}
	}
	if checked == 0 {
		t.Error("nobody is caught in three weeks")
	}
}

// TestWhoHasRoomIsCaughtAsLateAsACageKeepsHer: on full combs she stays in her nuc until
// three days before she leaves, and the days ahead show her catch on the order's day.
func TestWhoHasRoomIsCaughtAsLateAsACageKeepsHer(t *testing.T) {
	p := pen(t)
	p.Write(book.NucNamed{Nuc: a1, Name: "A1", Sides: 6, Side: 9})
	layingOn1June(p)
	p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	p.At("2027-06-12 18:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 1, By: calendar.Date(2027, 6, 30)})
	v := p.View("2027-06-20 09:00")
	found := of(v, rules.Ready)
	if len(found) != 1 || found[0].Severity != rules.Ahead || day(found[0].From) != "2027-06-27" || day(found[0].Best) != "2027-06-30" || found[0].PastDue(v.On()) {
		t.Errorf("%+v, want a catch from 27 June, best on the 30th", found)
	}
	caught := func(on calendar.Day) (n int) {
		for _, task := range tasks(rules.Day(v, on).Stops) {
			if task.Act == rules.ActCatchQueen {
				n++
			}
		}
		return n
	}
	if today, then := caught(v.Today()), caught(calendar.Date(2027, 6, 30)); today != 0 || then != 1 {
		t.Errorf("%d catches today and %d on the order's day", today, then)
	}
}

// TestNoBankGivesRoom: on small combs with no bank she gets room, and is caught when a cage
// keeps her until she leaves; the card and the day say no more of a catch now.
func TestNoBankGivesRoom(t *testing.T) {
	p := pen(t)
	p.Write(book.ColonyDescribed{Colony: booktest.Colony("K1"), Name: "K1", Yard: atHome, Thousands: 30})
	layingOn1June(p)
	p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	p.At("2027-06-12 18:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 1, By: calendar.Date(2027, 7, 25)})
	v := p.View("2027-06-20 09:00")
	ready, full := of(v, rules.Ready), of(v, rules.Full)
	if len(ready) != 1 || ready[0].Severity != rules.Ahead || day(ready[0].Best) != "2027-07-25" {
		t.Errorf("%+v, want a catch on 25 July", ready)
	}
	if want := "Take a comb of brood or add room: she is caught Sun 25 Jul for order 1"; len(full) != 1 || full[0].Do != want {
		t.Errorf("%+v, want %q", full, want)
	}
}
