package plan_test

import (
	"fmt"
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/book/booktest"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// Two batches of one week need their finishers side by side: the second has none of those of the
// first, so that both together miss what is not there. Once the turn of the first is over, the
// second has them all.
func TestFinishersServeInTurn(t *testing.T) {
	free := func(apart calendar.Day, graft bool) (have []float64) {
		pen := yardOf(60)
		for i := range 2 {
			pen.Write(book.ColonyDescribed{Colony: booktest.Colony(fmt.Sprint("F", i)), Name: fmt.Sprint("F", i), Yard: booktest.Yard("home"), Roles: []book.Role{book.Finisher}})
		}
		first := day(t, "2027-05-03")
		var plans []book.BatchPlanned
		for i := range 2 {
			b := book.BatchPlanned{Batch: booktest.Batch(fmt.Sprint("b", i)), Day: first + calendar.Day(i)*apart, Larvae: 40, Nucs: 25, Yard: booktest.Yard("home")}
			plans = append(plans, b)
			pen.At("2027-04-20 08:00").Write(b)
		}
		on := "2027-04-21 08:00"
		if graft {
			pen.At("2027-05-03 18:00").Write(book.Grafted{Batch: plans[0].Batch, Number: 1, Larvae: 40})
			plans, on = plans[1:], "2027-05-03 20:00"
		}
		p := plannerOf(pen, on)
		for _, b := range plans {
			for _, n := range p.Planned(book.BatchPlan{BatchPlanned: b}).Needs {
				if n.Good == plan.Finishers {
					have = append(have, n.Amount, n.Have)
				}
			}
		}
		return have
	}
	const turn = 5 // days; practice.FinisherTurn
	for _, c := range []struct {
		apart calendar.Day
		graft bool
		want  string
	}{
		{1, false, "[2 2 2 0]"},
		{turn - 1, false, "[2 2 2 0]"},
		{turn, false, "[2 2 2 2]"},
		{1, true, "[2 0]"},
		{turn, true, "[2 2]"},
	} {
		if got := fmt.Sprint(free(c.apart, c.graft)); got != c.want {
			t.Errorf("%d days apart, the first grafted: %v: wanted and free %s, want %s", c.apart, c.graft, got, c.want)
		}
	}
}
