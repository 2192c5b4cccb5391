package rules_test

import (
	"slices"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestOneLineForAYard: when most nucs of a yard are exposed for one cause, the
// yard is told of once, and the day has one line for them.
func TestOneLineForAYard(t *testing.T) {
	p := pen(t)
	p.At("2027-05-20 18:00").Write(book.ForageSeen{Yard: atFar, Forage: book.InDearth})
	p.Write(madeUp("A1", "A2", "B1")...)
	for _, name := range []string{"A1", "A2", "B1"} {
		p.Write(book.EntranceSet{Nuc: booktest.Nuc(name), Area: 4})
	}
	found := of(p.View("2027-05-20 20:00"), rules.Robbers)
	if len(found) != 1 || found[0].Of != atFar.Subject() || len(found[0].Also) != 3 {
		t.Fatalf("%d findings, first %+v; want one of the yard and its three nucs", len(found), found)
	}
	plan := rules.Day(p.View("2027-05-20 20:00"), calendar.Date(2027, 5, 20))
	lines, reducers := 0, 0.0
	for _, s := range plan.Stops {
		for _, task := range s.Tasks {
			if task.Act == rules.ActNarrowEntrance {
				lines += len(task.Of)
			}
		}
	}
	for _, k := range plan.Kit {
		if k.Goods == "entrance reducers" {
			reducers = k.Amount
		}
	}
	if lines != 3 || reducers != 3 {
		t.Errorf("entrances narrowed at %d nucs with %g reducers, want 3 and 3", lines, reducers)
	}
	p.Write(book.EntranceSet{Nuc: booktest.Nuc("A1"), Area: 1.2}, book.EntranceSet{Nuc: booktest.Nuc("A2"), Area: 1.2})
	found = of(p.View("2027-05-20 20:00"), rules.Robbers)
	if len(found) != 1 || found[0].Of != booktest.Nuc("B1").Subject() {
		t.Errorf("with two narrowed: %+v, want B1 alone", found)
	}
}

// TestMostOfAYard: of four nucs two are told of by themselves, three in one line.
func TestMostOfAYard(t *testing.T) {
	for wide, lines := range map[int]int{2: 2, 3: 1, 4: 1} {
		p := pen(t)
		p.At("2027-05-20 18:00").Write(book.ForageSeen{Yard: atFar, Forage: book.InDearth})
		names := []string{"A1", "A2", "B1", "B2"}
		p.Write(madeUp(names...)...)
		for _, name := range names[:wide] {
			p.Write(book.EntranceSet{Nuc: booktest.Nuc(name), Area: 4})
		}
		found := of(p.View("2027-05-20 20:00"), rules.Robbers)
		if len(found) != lines || (found[0].Of == atFar.Subject()) != (lines == 1) {
			t.Errorf("%d of four with a wide entrance: %d lines, the first of %v; want %d", wide, len(found), found[0].Of, lines)
		}
	}
}

// TestRobbersNotSeenYet: where robbing is likely the entrance is narrowed the same day,
// where it is possible within the two days in which fliers settle.
func TestRobbersNotSeenYet(t *testing.T) {
	seen := map[string]bool{}
	for area := 1.5; area < 9; area += 0.5 {
		p := pen(t)
		p.At("2027-05-20 18:00").Write(book.ForageSeen{Yard: atFar, Forage: book.InDearth})
		p.Write(madeUp("A1")...)
		p.Write(book.EntranceSet{Nuc: a1, Area: area}, book.Fed{To: a1.Subject(), Litres: 0.3})
		v := p.View("2027-05-20 20:00")
		for _, f := range of(v, rules.Robbers) {
			seen[f.What] = true
			want := map[string]calendar.Day{"robbing likely": v.Today(), "robbing possible": v.Today() + 2}[f.What]
			if by := calendar.DayOf(f.By, p.Zone); by != want {
				t.Errorf("%g cm²: %s by %s, want %s", area, f.What, by, want)
			}
		}
	}
	if len(seen) != 2 {
		t.Errorf("of all entrances only %v is told", seen)
	}
}

// TestOwnCellsThenCell: what is done at one nuc in one go is one line.
func TestOwnCellsThenCell(t *testing.T) {
	p := pen(t)
	layingOn1June(p)
	p.At("2027-06-12 18:00").Write(graft(6, 1))
	p.At("2027-06-16 18:00").Write(book.QueenCaught{Nuc: a1, Queen: booktest.Queen("a")})
	plan := rules.Day(p.View("2027-06-22 07:00"), calendar.Date(2027, 6, 22))
	var titles []string
	for _, s := range plan.Stops {
		for _, task := range s.Tasks {
			if slices.Contains(task.Of, a1.Subject()) {
				titles = append(titles, task.Title)
			}
		}
	}
	if want := []string{"Break down own cells, then give a cell of batch 6"}; !slices.Equal(titles, want) {
		t.Errorf("at A1: %q, want %q", titles, want)
	}
}

// TestOrdersCallForCatches: ready queens are caught when an open order wants
// them, as many as it wants beyond those in cages.
func TestOrdersCallForCatches(t *testing.T) {
	p := pen(t)
	layingOn1June(p)
	p.At("2027-06-11 18:00").Write(look("A1", book.Looked{Brood: book.Said(3)}))
	catches := func() int {
		n := 0
		for _, f := range of(p.View("2027-06-20 09:00"), rules.Ready) {
			if f.Act == rules.ActCatchQueen {
				n++
			}
		}
		return n
	}
	if n := catches(); n != 0 {
		t.Errorf("without an order %d catches, want none", n)
	}
	p.At("2027-06-12 18:00").Write(book.OrderTaken{Order: booktest.Order("1"), Number: "1", Queens: 2, By: calendar.Date(2027, 6, 25)})
	if n := catches(); n != 1 {
		t.Errorf("with an order of two and one ready, %d catches, want 1", n)
	}
}

// TestDeadlinesAreStable: the same deadline keeps its id from day to day, no
// two share one, and each hard one has its alarms before it.
func TestDeadlinesAreStable(t *testing.T) {
	p := evening(t)
	from, to := calendar.Date(2027, 5, 20), calendar.Date(2027, 6, 30)
	ids := map[string]rules.Deadline{}
	for _, d := range rules.Deadlines(p.View("2027-06-02 19:00"), from, to) {
		if _, twice := ids[d.ID]; twice {
			t.Errorf("two deadlines are called %q", d.ID)
		}
		ids[d.ID] = d
		if d.Hard && !d.Done && len(d.Alarms) != 2 {
			t.Errorf("%s has %d alarms, want 2", d.What, len(d.Alarms))
		}
		for _, a := range d.Alarms {
			if !a.Before(d.At) {
				t.Errorf("%s rings at %v, after %v", d.What, a, d.At)
			}
		}
	}
	again := rules.Deadlines(p.View("2027-06-03 19:00"), from, to)
	if len(again) == 0 || len(ids) == 0 {
		t.Fatal("no deadlines")
	}
	for _, d := range again {
		if was, known := ids[d.ID]; !known || !was.At.Equal(d.At) {
			t.Errorf("%s (%s) at %v was not told the day before, or for %v", d.What, d.ID, d.At, was.At)
		}
	}
}

// TestWorkIsSpreadOverItsBestDays: what is past its best day is today's.
func TestWorkIsSpreadOverItsBestDays(t *testing.T) {
	p := pen(t)
	celled(p)
	p.At("2027-06-01 18:00").Write(book.ForageSeen{Yard: atFar, Forage: book.InFlow})
	look := calendar.Date(2027, 6, 2)
	for _, row := range []struct {
		at   string
		want calendar.Day
	}{{"2027-05-26 09:00", look}, {"2027-06-10 09:00", calendar.Date(2027, 6, 10)}} {
		minutes := rules.Judge(p.View(row.at)).Work(calendar.Date(2027, 5, 20), calendar.Date(2027, 6, 30))
		if minutes[row.want] != 2 || len(minutes) != 1 {
			t.Errorf("at %s: %v, want the two minutes of a look on %s", row.at, minutes, row.want)
		}
	}
}
