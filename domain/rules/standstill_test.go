package rules_test

import (
	"strings"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/rules"
)

// TestStandstillKeepsCells: cells of a yard on standstill go into no nuc of another
// yard, on the route, in the kit and on the late day; a suspicion elsewhere does
// not hold them.
func TestStandstillKeepsCells(t *testing.T) {
	for _, c := range []struct {
		suspect book.Subject
		given   int
		barred  bool
	}{
		{booktest.Colony("S1").Subject(), 0, true},
		{booktest.Nuc("C4").Subject(), 2, false},
	} {
		p := pen(t)
		p.At("2027-05-01 18:00").Write(book.BatchPlanned{Batch: batch(4), Day: calendar.Date(2027, 5, 5), Minute: 18 * 60, Larvae: 9, Nucs: 2, Yard: atFar})
		p.At("2027-05-05 18:00").Write(graft(4, 9), book.CellsMoved{Batch: batch(4), To: booktest.Colony("S1")})
		p.At("2027-05-13 18:00").Write(madeUp("A1", "B1")...)
		p.At("2027-05-14 18:00").Write(book.DiseaseSuspected{Of: c.suspect, What: "foul brood"})
		v := p.View("2027-05-15 10:00")
		plan := rules.Day(v, v.Today())
		given, why := 0, ""
		for _, task := range tasks(plan.Stops) {
			if task.Act == rules.ActGiveCell {
				given += len(task.Of)
			}
			why += task.Why
		}
		packed := 0
		for _, k := range plan.Kit {
			if strings.HasPrefix(k.Goods, "ripe cell") {
				packed += int(k.Amount)
			}
		}
		late, _ := rules.LateDay(v, batch(4), v.On())
		if given != c.given || packed != c.given || late.Fit != c.given {
			t.Errorf("%v: %d given, %d packed, %d on the late day; want %d each", c.suspect, given, packed, late.Fit, c.given)
		}
		if said := strings.Contains(why, "is on standstill, the cells of batch 4 stay there"); said != c.barred {
			t.Errorf("%v: the reason is said %v: %s", c.suspect, said, why)
		}
		if len(plan.Waits) != 1 || plan.Waits[0].Findings[0].Rule != rules.Standstill {
			t.Errorf("%v: the head of the day says %+v, want the standstill once", c.suspect, plan.Waits)
		}
	}
}

// TestLateDayCountsAsTheRoute: nucs kept for the cells of an earlier batch are not
// ready for a later one.
func TestLateDayCountsAsTheRoute(t *testing.T) {
	p := pen(t)
	p.At("2027-05-05 08:00").Write(graft(4, 2))
	p.At("2027-05-05 19:00").Write(graft(5, 9))
	p.At("2027-05-13 18:00").Write(madeUp("A1", "A2", "A3", "B1", "B2")...)
	v := p.View("2027-05-15 10:00")
	given := map[string]int{}
	for _, task := range tasks(rules.Day(v, v.Today()).Stops) {
		if task.Act == rules.ActGiveCell {
			given[task.Title] += len(task.Of)
		}
	}
	late, _ := rules.LateDay(v, batch(5), v.On())
	if got := given["Give a cell of batch 5"]; got != 3 || late.Fit != got {
		t.Errorf("the route gives %d, the late day has %d ready; want 3", got, late.Fit)
	}
}
