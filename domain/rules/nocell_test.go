package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestQueenlessWithoutACell: it stands in the day's route, to be united or to
// be kept for cells that come in time.
func TestQueenlessWithoutACell(t *testing.T) {
	for _, row := range []struct {
		name  string
		graft string
		act   rules.Act
	}{
		{"no batch", "", rules.ActUnite},
		{"ripe in a week", "2027-05-12 18:00", rules.ActKeep},
	} {
		p := pen(t)
		p.At("2027-05-13 18:00").Write(madeUp("A1")...)
		if row.graft != "" {
			p.At(row.graft).Write(graft(4, 1))
		}
		v := p.View("2027-05-15 09:00")
		var acts []rules.Act
		for _, s := range rules.Day(v, v.Today()).Stops {
			for _, task := range s.Tasks {
				if task.Of[0] == a1.Subject() {
					acts = append(acts, task.Act)
				}
			}
		}
		if len(acts) != 1 || acts[0] != row.act {
			t.Errorf("%s: %v in the route, want %v", row.name, acts, row.act)
		}
	}
}

// TestNoDeadCellsAreGiven: half out, no cell of the batch is proposed or packed.
func TestNoDeadCellsAreGiven(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 2))
	p.At("2027-05-13 18:00").Write(madeUp("A1", "A2")...)
	for _, row := range []struct {
		at     string
		packed float64
	}{{"2027-05-15 09:00", 2}, {"2027-05-18 01:00", 0}} {
		v := p.View(row.at)
		packed := 0.0
		for _, k := range rules.Day(v, v.Today()).Kit {
			if k.Goods == "ripe cells" {
				packed += k.Amount
			}
		}
		if packed != row.packed {
			t.Errorf("at %s %g ripe cells are packed, want %g", row.at, packed, row.packed)
		}
	}
}

// TestCellsOnTheWayCanBeGiven: what was taken along is not gone.
func TestCellsOnTheWayCanBeGiven(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 2))
	p.At("2027-05-13 18:00").Write(madeUp("A1", "A2", "A3")...)
	p.At("2027-05-15 09:00").Write(book.TakenAlong{What: book.Cells, Batch: batch(4), Count: 2})
	give := func(name, at string) bool {
		return rules.Check(p.View(at), rules.GiveCell{Nuc: booktest.Nuc(name), Batch: batch(4)}).OK()
	}
	if !give("A1", "2027-05-15 10:00") {
		t.Error("two cells are on the way and none can be given")
	}
	p.At("2027-05-15 10:00").Write(cells(4, "A1", "A2")...)
	if give("A3", "2027-05-15 10:10") {
		t.Error("both are given and another can be")
	}
}

// TestOneSearchAVisit: what was put in on one day is one search; what is to be
// searched in one colony on one day is one line of the route.
func TestOneSearchAVisit(t *testing.T) {
	p := pen(t)
	s1 := booktest.Colony("S1").Subject()
	p.At("2027-05-12 18:00").Write(book.BroodGiven{To: s1, Combs: 1, Open: 3}, book.BroodGiven{To: s1, Combs: 1, Open: 3})
	p.At("2027-05-13 18:00").Write(book.BroodGiven{To: s1, Combs: 1, Open: 3})
	v := p.View("2027-05-17 09:00")
	found := of(v, rules.WildCells)
	if len(found) != 2 || !found[0].NeedsYou() || found[0].Why[:7] != "2 combs" {
		t.Errorf("%+v, want two searches, the first of two combs", found)
	}
	searches, minutes := 0, 0.0
	for _, s := range rules.Day(v, calendar.Date(2027, 5, 17)).Stops {
		for _, task := range s.Tasks {
			if task.Act == rules.ActSearchBrood {
				searches++
				minutes += task.Minutes
			}
		}
	}
	if one := rules.ActSearchBrood.Minutes(v.Numbers(), false); searches != 1 || minutes != one {
		t.Errorf("%d searches of %g min in all, want one of %g", searches, minutes, one)
	}
}

// TestACellFoundOtherwiseIsAskedFor: a cell cannot be shut after it was open.
func TestACellFoundOtherwiseIsAskedFor(t *testing.T) {
	for _, row := range []struct {
		before, now book.CellSight
		asks        bool
	}{
		{book.CellShut, book.CellOpenAtTip, false},
		{book.CellOpenAtTip, book.CellOpenAtTip, false},
		{book.CellOpenAtTip, book.CellShut, true},
		{book.CellTornAtSide, book.CellOpenAtTip, true},
	} {
		p := pen(t)
		celled(p)
		p.At("2027-05-19 18:00").Write(look("A1", book.Looked{Cell: row.before}))
		q, asks := rules.Ask(p.View("2027-05-19 18:00"), look("A1", book.Looked{Cell: row.now}))
		if asks != row.asks {
			t.Errorf("%v, then %v: asked %v, want %v (%s)", row.before, row.now, asks, row.asks, q.Asks)
		}
		if asks && (len(q.Answers) != 2 || len(q.Answers[0].Before) != 1 || !q.Answers[1].Leave) {
			t.Errorf("%v, then %v: answers %+v", row.before, row.now, q.Answers)
		}
	}
}

// TestCellsOfAnotherBatchAreNoGap: a nuc that got a cell of the other batch
// that evening is not where a missing one may be.
func TestCellsOfAnotherBatchAreNoGap(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 17:00").Write(graft(4, 3), graft(5, 1))
	p.At("2027-05-13 18:00").Write(madeUp("A1", "A2", "A3")...)
	p.At("2027-05-15 09:00").Write(book.TakenAlong{What: book.Cells, Batch: batch(4), Count: 2})
	p.At("2027-05-15 10:00").Write(append(cells(4, "A1"), cells(5, "A2")...)...)
	for _, name := range []string{"A1", "A2"} {
		p.At("2027-05-19 18:00").Write(look(name, book.Looked{Cell: book.CellTornAtSide}))
	}
	closing := rules.Close(p.View("2027-05-19 20:00"), calendar.Date(2027, 5, 15))
	if len(closing) != 1 || len(closing[0].Likely) != 1 || closing[0].Likely[0] != booktest.Nuc("A3") {
		t.Errorf("%+v, want the missing cell in A3 only", closing)
	}
}

// TestACatchHasALastDayOnSmallCombs: she is caught before her combs are full.
func TestACatchHasALastDayOnSmallCombs(t *testing.T) {
	p := pen(t)
	layingOn1June(p)
	p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	p.At("2027-06-12 18:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 1, By: calendar.Date(2027, 7, 25)})
	found := of(p.View("2027-06-20 09:00"), rules.Ready)
	if len(found) != 1 || found[0].Act != rules.ActCatchQueen || day(found[0].By) != "2027-06-15" {
		t.Errorf("%+v, want a catch by 15 June, two weeks after the first eggs", found)
	}
}

// TestLookedTooLate: a look without eggs past the age of mating settles it.
func TestLookedTooLate(t *testing.T) {
	p := pen(t)
	celled(p)
	p.At("2027-06-16 18:00").Write(look("A1", book.Looked{Eggs: book.NoEggs, Queen: book.VirginSeen}))
	found := of(p.View("2027-06-17 09:00"), rules.VirginsTime)
	if len(found) != 1 || found[0].Do != "Look; without worker brood take her out, then give a cell or unite" || day(found[0].By) != "2027-06-20" {
		t.Errorf("%+v, want her taken out, days after the look", found)
	}
}
