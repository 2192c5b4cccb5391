package plan_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// The nucs of a planned batch are its own from the day they are made up, and free again on
// the very day its queens are ready.
func TestNucsAreFreeOnTheDayTheQueensAreReady(t *testing.T) {
	pen := yardOf(10).Write(book.BatchPlanned{Batch: booktest.Batch("b"), Day: day(t, "2027-05-10"), Larvae: 30, Nucs: 6, Yard: booktest.Yard("home")})
	p := plannerOf(pen, "2027-04-02 08:00")
	b, _ := p.View().BatchPlan(booktest.Batch("b"))
	l := p.LadderOf(b)
	up, ready := l.Rung(plan.MakeUpNucs).Best, l.Rung(plan.Ready).By
	for _, c := range []struct {
		from, to calendar.Day
		want     int
	}{
		{up - 3, up - 1, 10}, {up - 3, up, 4}, {up, up, 4}, {ready - 1, ready + 9, 4}, {ready, ready + 9, 10},
	} {
		if got := p.Free(booktest.Yard("home"), c.from, c.to, book.BatchID{}); got != c.want {
			t.Errorf("made up %s, ready %s: from %s to %s %d of 10 nucs are free, want %d", up.Short(), ready.Short(), c.from.Short(), c.to.Short(), got, c.want)
		}
	}
}

// A comb whose drones are ripe on the last day of the flights is not too late, a day later
// it is; it serves those whose flights lie within the days of its drones.
func TestTheEdgesOfADroneComb(t *testing.T) {
	p := plannerOf(yardOf(1), "2027-04-02 08:00")
	l := p.Ladder(p.GraftAt(day(t, "2027-05-10")), 30, booktest.Yard("home"))
	fly := l.Rung(plan.Fly)
	last := fly.By - calendar.Day(p.View().Numbers().Days(practice.DroneRipe))
	if p.CombTooLate(last, l) || !p.CombTooLate(last+1, l) {
		t.Errorf("in on %s for flights until %s: too late %v, a day later %v", last.Short(), fly.By.Short(), p.CombTooLate(last, l), p.CombTooLate(last+1, l))
	}
	drones := p.DronesOf(0)
	for in, serves := range map[calendar.Day]bool{
		fly.From - drones.From: true, fly.From - drones.From + 1: false,
		fly.By - drones.By: true, fly.By - drones.By - 1: false,
	} {
		if p.CombServes(in, l) != serves {
			t.Errorf("in on %s, flights from %s: serves is not %v", in.Short(), fly.From.Short(), serves)
		}
	}
}

// One comb for each drone colony, as far as the virgins want them: 60 nucs want the least that a yard
// wants, 260 want eleven, one for 25 virgins.
func TestAsManyDroneCombsAsTheVirginsWant(t *testing.T) {
	home := booktest.Yard("home")
	for _, c := range []struct {
		colonies, nucs int
		want           float64
	}{{0, 60, 8}, {0, 260, 11}, {3, 60, 3}, {12, 60, 8}, {12, 260, 11}, {9, 260, 9}} {
		pen := yardOf(1)
		for i := range c.colonies {
			id := booktest.Colony(fmt.Sprint("d", i))
			pen.Write(book.ColonyDescribed{Colony: id, Name: fmt.Sprint("D", i), Yard: home, Roles: []book.Role{book.DroneSource}})
		}
		if got := plannerOf(pen, "2027-04-02 08:00").DroneCombs(plan.Size{Nucs: c.nucs, Yard: home}); got != c.want {
			t.Errorf("%d drone colonies, %d nucs: %v combs, want %v", c.colonies, c.nucs, got, c.want)
		}
	}
}
