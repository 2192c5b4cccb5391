package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// nucLines are the tasks of a day by the names of their nucs.
func nucLines(v *book.View) map[string]rules.Task {
	all := map[string]rules.Task{}
	for _, s := range rules.Day(v, v.Today()).Stops {
		for _, t := range s.Tasks {
			if t.Act == rules.ActNarrowEntrance {
				continue
			}
			var names []string
			for _, of := range t.Of {
				names = append(names, rules.Name(v, of))
			}
			all[strings.Join(names, " ")] = t
		}
	}
	return all
}

// TestALineLendsNobodyAReason: of nucs in one line each has its own reason; one that all
// share is told once, and of many only the first three.
func TestALineLendsNobodyAReason(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 18:00").Write(graft(4, 24))
	names := []string{"A1", "A2", "A3", "A4", "B1"}
	for i, name := range names {
		p.At([]string{"2027-05-11 18:00", "2027-05-11 18:00", "2027-05-12 18:00", "2027-05-13 18:00", "2027-05-14 18:00"}[i]).
			Write(madeUp(name)...)
	}
	all := nucLines(p.View("2027-05-15 10:00"))
	line, ok := all["A1 A2 A3 A4 B1"]
	if !ok {
		t.Fatalf("no line of all five: %v", all)
	}
	want := "A1 A2: no queen since Tue 11 May, 4 days; A3: no queen since Wed 12 May, 3 days; A4: no queen since Thu 13 May, 2 days; 1 nuc more, each its own reason"
	if line.Why != want {
		t.Errorf("said %q, want %q", line.Why, want)
	}
	for i, name := range []string{"A3", "A4", "B1"} {
		p.At("2027-05-15 10:0" + string(rune('1'+i))).Write(book.CellGiven{Nuc: booktest.Nuc(name), Batch: batch(4)})
	}
	if line := nucLines(p.View("2027-05-15 10:05"))["A1 A2"]; line.Why != "no queen since Tue 11 May, 4 days" {
		t.Errorf("of a shared reason is said %q", line.Why)
	}
}

// TestOwnCellsComeDownWithTheCellAmongRobbers: what clears a nuc for a cell by its hard
// hour is done with it, at dusk where that hour has gone or is later; without such a cell
// it waits until robbers have gone.
func TestOwnCellsComeDownWithTheCellAmongRobbers(t *testing.T) {
	for _, row := range []struct {
		cells    int
		at, want string
	}{
		{0, "2027-05-15 10:00", ""},
		{24, "2027-05-15 10:00", "Break down own cells, then give a cell of batch 4"},
		{24, "2027-05-15 19:00", "Break down own cells, then give a cell of batch 4, at dusk, 20:00"},
	} {
		p := pen(t)
		if row.cells > 0 {
			p.At("2027-05-05 18:00").Write(graft(4, row.cells))
		}
		p.At("2027-05-01 18:00").Write(madeUp("A1", "B1")...)
		p.At("2027-05-08 10:00").Write(look("A1", book.Looked{Eggs: book.SingleEggs, Larvae: true, Sides: book.Said(6)}))
		p.At("2027-05-09 10:00").Write(book.QueenCaught{Nuc: a1})
		p.At("2027-05-15 09:00").Write(book.Robbed{Nuc: booktest.Nuc("B1")})
		if got := nucLines(p.View(row.at))["A1"].Title; got != row.want {
			t.Errorf("%d cells at %s: %q, want %q", row.cells, row.at, got, row.want)
		}
	}
}

// TestTooFewBeesTakeNoCell: a nuc with fewer bees than the keeper's share of what the
// night needs gets no cell, is none of those ready for one, and is united.
func TestTooFewBeesTakeNoCell(t *testing.T) {
	for sides, takes := range map[float64]bool{0.5: false, 6: true} {
		p := pen(t)
		p.At("2027-05-05 18:00").Write(graft(4, 3))
		p.At("2027-05-12 18:00").Write(madeUp("A1")...)
		p.At("2027-05-14 18:00").Write(look("A1", book.Looked{Queen: book.NoneSeen, Eggs: book.NoEggs, Sides: book.Said(sides)}))
		v := p.View("2027-05-15 10:00")
		found := of(v, rules.Queenless)
		if len(found) != 1 || (found[0].Act == rules.ActGiveCell) != takes || (found[0].Do == "Too few bees for a cell: unite it, or add bees first") == takes {
			t.Errorf("%v sides: %+v", sides, found)
		}
		card, _ := rules.LateDay(v, batch(4), v.On().AddDate(0, 0, 1))
		if (card.Fit == 1) != takes {
			t.Errorf("%v sides: %d nucs ready on a late day", sides, card.Fit)
		}
	}
}

// TestDecidedAfterTheHardHour: a cell decided for a nuc once its hard hour has gone is given
// that day, though robbers are about; one decided for a later day is bound by no hour.
func TestDecidedAfterTheHardHour(t *testing.T) {
	for _, row := range []struct {
		day  calendar.Day
		what book.Plan
		want string
	}{
		{calendar.Date(2027, 5, 16), book.PlanGiveCell, "Give a cell of batch 4, at dusk, 20:00"},
		{calendar.Date(2027, 5, 17), book.PlanGiveCell, ""},
		{calendar.Date(2027, 5, 16), book.PlanLookOrGive, "Look; nothing found: give a cell of batch 4, at dusk, 20:00"},
	} {
		p := pen(t)
		p.At("2027-05-05 18:00").Write(graft(4, 24))
		p.At("2027-05-12 18:00").Write(madeUp("A1", "B1")...)
		p.At("2027-05-15 19:00").Write(book.Robbed{Nuc: booktest.Nuc("B1")})
		p.At("2027-05-16 08:00").Write(book.Planned{Nuc: a1, What: row.what, Day: row.day, Batch: batch(4)})
		v := p.View("2027-05-16 08:10")
		if got := nucLines(v)["A1"].Title; got != row.want {
			t.Errorf("%v for %s: %q, want %q", row.what, row.day.Short(), got, row.want)
		}
		if cells, _ := packed(v, "ripe cell"); row.what == book.PlanLookOrGive && cells != 1 {
			t.Errorf("%g cells are packed", cells)
		}
		if cages, _ := packed(v, "cages for cells"); row.what == book.PlanLookOrGive && cages < 1 {
			t.Errorf("%g cages are packed for what a look may spare", cages)
		}
	}
}
