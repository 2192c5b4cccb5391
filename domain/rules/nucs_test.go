package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/course"
	"lidmark/domain/rules"
)

// TestNothingIsPastBeforeItBegins: a nuc that takes no cell before the hard hour of a
// batch is not past due by that hour.
func TestNothingIsPastBeforeItBegins(t *testing.T) {
	for _, caught := range []string{"2027-05-16 17:00", "2027-05-15 23:00"} {
		p := pen(t)
		p.At("2027-05-01 18:00").Write(madeUp("A1")...)
		p.At("2027-05-05 18:00").Write(graft(4, 24))
		p.At("2027-05-08 10:00").Write(look("A1", book.Looked{Eggs: book.SingleEggs}))
		p.At(caught).Write(book.QueenCaught{Nuc: a1}, book.OwnCellsBroken{Nuc: a1})
		v := p.View("2027-05-16 17:30")
		found := of(v, rules.Queenless)
		if len(found) != 1 || found[0].Act != rules.ActGiveCell || found[0].Hard || found[0].PastDue(v.On()) || found[0].From.After(found[0].By) {
			t.Errorf("caught %s: %+v", caught, found)
		}
	}
}

// TestANucMadeUpNowIsCalm: what cannot be done yet asks for nobody, and does once it can.
func TestANucMadeUpNowIsCalm(t *testing.T) {
	p := pen(t)
	p.At("2027-05-13 22:59").Write(madeUp("A1")...)
	for at, needs := range map[string]bool{"2027-05-13 23:00": false, "2027-05-14 04:58": false, "2027-05-14 04:59": true} {
		v := p.View(at)
		found := of(v, rules.Queenless)
		if len(found) != 1 || found[0].NeedsYou() != needs {
			t.Errorf("%s: %+v, want it to need you: %v", at, found, needs)
		}
	}
}

// TestATornCellHasSomebodyLookFirst: the virgin who tore one cell would tear the next.
func TestATornCellHasSomebodyLookFirst(t *testing.T) {
	p := pen(t)
	celled(p)
	p.At("2027-05-17 10:00").Write(look("A1", book.Looked{Cell: book.CellTornAtSide}))
	p.At("2027-05-07 18:00").Write(graft(5, 3), book.BatchReadied{Batch: batch(5), Step: book.NucsReady})
	v := p.View("2027-05-17 19:00")
	found := of(v, rules.Queenless)
	if len(found) != 1 || found[0].Act != rules.ActLookInside || found[0].Then != rules.ActGiveCell ||
		found[0].Do != "Look first for a virgin of its own; none there: give a cell of batch 5" {
		t.Fatalf("%+v", found)
	}
	if cells, _ := packed(v, "ripe cell"); cells != 1 {
		t.Errorf("%g cells are packed for it", cells)
	}
	p.At("2027-05-17 18:00").Write(look("A1", book.Looked{Queen: book.NoneSeen, Eggs: book.NoEggs}))
	if found = of(p.View("2027-05-17 19:00"), rules.Queenless); len(found) != 1 || found[0].Act != rules.ActGiveCell {
		t.Errorf("looked and none seen: %+v", found)
	}
}

// TestALateBeginnerIsDoubtful: eggs from a queen too old to mate are told as doubtful.
func TestALateBeginnerIsDoubtful(t *testing.T) {
	for at, doubtful := range map[string]bool{"2027-06-01 18:00": false, "2027-06-17 18:00": true} {
		p := pen(t)
		celled(p)
		p.At(at).Write(look("A1", book.Looked{Eggs: book.SingleEggs}))
		found := of(p.View("2027-06-20 09:00"), rules.LookAgain)
		if len(found) == 0 && !doubtful {
			found = of(p.View("2027-06-05 09:00"), rules.LookAgain)
		}
		if len(found) != 1 || strings.Contains(found[0].Why, "she began late, first eggs seen at 30 days") != doubtful || strings.Contains(found[0].Do, "see good brood") != doubtful {
			t.Errorf("eggs %s: %+v", at, found)
		}
	}
}

// TestALateBeginnerIsProvenFirst: who is doubted is not offered as ready before her brood
// has proven her, and is doubted no more once it has; nor is she to be caught before for
// her full combs.
func TestALateBeginnerIsProvenFirst(t *testing.T) {
	p := pen(t)
	celled(p)
	p.At("2027-06-17 18:00").Write(look("A1", book.Looked{Eggs: book.SingleEggs}))
	v := p.View("2027-06-29 09:00")
	if got := course.ByCalendar(v, v.Nuc(a1)); !got.BegunLate || got.Proven || got.ReadyOnce() != "doubtful until her capped worker brood is seen" {
		t.Errorf("before her brood is seen: late %v, proven %v, ready %q", got.BegunLate, got.Proven, got.ReadyOnce())
	}
	if found := of(v, rules.Ready); len(found) != 0 {
		t.Errorf("offered before she is proven: %+v", found)
	}
	if found := of(v, rules.Full); len(found) != 1 || found[0].Do != "Catch her once she is proven, take a comb of brood, or add room" {
		t.Errorf("on full combs: %+v", found)
	}
	p.At("2027-06-29 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	v = p.View("2027-06-30 09:00")
	if once := course.ByCalendar(v, v.Nuc(a1)).ReadyOnce(); once != "" {
		t.Errorf("proven, and ready %q", once)
	}
	found := of(v, rules.Ready)
	if len(found) != 1 || !strings.HasSuffix(found[0].Why, "her worker brood proves that she did") || strings.Contains(found[0].Why, "doubtful") {
		t.Errorf("proven: %+v", found)
	}
}

// TestADoubtfulDescentIsSaid: a ready queen of whom it is not sure whose daughter she is
// is offered for orders of any line alone, whether her nuc's history or her record makes it so.
func TestADoubtfulDescentIsSaid(t *testing.T) {
	p := pen(t)
	layingOn1June(p)
	p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	if found := of(p.View("2027-06-15 09:00"), rules.Ready); len(found) != 1 || found[0].Do != "Catch her when an order wants her" {
		t.Fatalf("%+v", found)
	}
	her := booktest.Queen("her")
	p.At("2027-06-11 18:05").Write(book.QueenMarked{Queen: her, Nuc: a1, Colour: "white"}, book.QueenDescribed{Queen: her, Descent: book.DescentDoubtful})
	found := of(p.View("2027-06-15 09:00"), rules.Ready)
	if len(found) != 1 || found[0].Do != "Catch her when an order that takes any line wants her" || !strings.HasSuffix(found[0].Why, "for no order that asks for a line") {
		t.Errorf("%+v", found)
	}
}

// TestAnOrderWantsItsLine: a queen is caught for an order only of a line that it
// takes, and a queen caged of another line does not stand for her.
func TestAnOrderWantsItsLine(t *testing.T) {
	for _, row := range []struct {
		name  string
		order book.OrderTaken
		caged string // the line of a caged queen; "": none
		want  bool
	}{
		{"any line", book.OrderTaken{Queens: 1}, "", true},
		{"her line", book.OrderTaken{Queens: 1, Line: "Plover"}, "", true},
		{"another line", book.OrderTaken{Queens: 1, Line: "Heron"}, "", false},
		{"hers will do", book.OrderTaken{Queens: 1, Line: "Heron", Substitute: []string{"Plover"}}, "", true},
		{"one of another line is caged", book.OrderTaken{Queens: 1, Line: "Plover"}, "Heron", true},
		{"one of her line is caged", book.OrderTaken{Queens: 1, Line: "Plover"}, "Plover", false},
	} {
		p := pen(t)
		g := graft(4, 1)
		g.Line = "Plover"
		p.At("2027-05-05 18:00").Write(g)
		p.At("2027-05-13 18:00").Write(madeUp("A1", "B1")...)
		p.At("2027-05-15 10:00").Write(cells(4, "A1")...)
		p.At("2027-06-01 18:00").Write(look("A1", book.Looked{Eggs: book.SingleEggs}), look("B1", book.Looked{Eggs: book.SingleEggs}))
		p.At("2027-06-12 18:00").Write(look("A1", book.Looked{Eggs: book.SingleEggs, Brood: book.Said(2)}))
		row.order.Order, row.order.By = booktest.Order("1"), p.View("2027-06-18 00:00").Today()
		p.At("2027-06-13 18:00").Write(row.order)
		if row.caged != "" {
			q := booktest.Queen("caged")
			p.At("2027-06-14 10:00").Write(book.QueenDescribed{Queen: q, Line: row.caged, Descent: book.DescentSure}, book.QueenCaught{Nuc: booktest.Nuc("B1"), Queen: q, Label: "1"})
		}
		caught := false
		for _, f := range of(p.View("2027-06-17 09:00"), rules.Ready) {
			caught = caught || f.Of == a1.Subject() && f.Act == rules.ActCatchQueen
		}
		if caught != row.want {
			t.Errorf("%s: caught for it %v, want %v", row.name, caught, row.want)
		}
	}
}
