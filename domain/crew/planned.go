package crew

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// planned is what a step of a planned batch costs that waits beyond its last day: the
// graft is as many days later, and fewer of the queens that it and the other grafts of its
// wish, planned and done, are for are there in time.
func (p *pricer) planned(t rules.Task, s book.Subject) Price {
	id, _ := s.Batch()
	b, ok := p.view.BatchPlan(id)
	of, begun := p.planner().WishOf(b), p.planner().Begun(b)
	for _, o := range slices.Concat(of, begun) {
		if o.Batch != b.Batch {
			b.Queens += o.Queens
		}
	}
	b = p.stillOwed(b)
	if !ok || b.Queens == 0 || b.By == 0 {
		return Price{}
	}
	by := calendar.DayOf(t.By, p.view.Zone())
	next := calendar.DayOf(p.next, p.view.Zone())
	if next <= by {
		return Price{}
	}
	given := plan.Chances{}
	for _, g := range begun {
		given = given.With(p.planner().Gives(p.view.Batch(g.Batch), b.By, b.Laying))
	}
	now, later := p.inTime(b, of, p.view.Today()-by).With(given), p.inTime(b, of, next-by).With(given)
	queens := 0.0
	for n := 1; n <= b.Queens; n++ {
		queens += now.AtLeast(n) - later.AtLeast(n)
	}
	return Price{max(0, queens), fmt.Sprintf("%s by %s: %s done today, %s then", plan.QueensSaid(b.Queens), b.By.Short(), plan.OfHundred(now.AtLeast(b.Queens)), plan.OfHundred(later.AtLeast(b.Queens)))}
}

// beside is what a step costs beside which the graft goes on when it is later than it should be: starters
// are grafted into all the same, and virgins fly all the same. What that costs nobody has counted.
func (p *pricer) beside(t rules.Task) Price {
	switch {
	case !t.By.Before(p.next):
		return Price{}
	case t.Findings[0].Step == plan.DroneComb:
		return Price{Why: "its drones are ripe as much later, nobody knows what that costs; the graft need not wait"}
	default:
		return Price{Why: "the starters may take fewer cells, nobody knows how many; the graft need not wait"}
	}
}

// goesOn is what a step after the graft of a planned batch costs that waits: ripe cells are lost by
// the clock, for all others there is time.
func (p *pricer) goesOn(t rules.Task, s book.Subject) Price {
	id, _ := s.Batch()
	b, ok := p.view.BatchPlan(id)
	if !ok || !t.Hard {
		return Price{}
	}
	late := p.planner().CellsLate(plan.Batch{Ladder: p.planner().LadderOf(b), Size: p.planner().SizeOf(b)})
	return Price{late.Queens, "its cells given " + late.Words(p.view.Zone())}
}

// stillOwed is a planned batch with what its orders wait for now: the queens that are open
// of them, by the last day on which these can leave. What is wished without an order stays.
func (p *pricer) stillOwed(b book.BatchPlan) book.BatchPlan {
	if len(b.Orders) == 0 {
		return b
	}
	open := 0
	for _, id := range b.Orders {
		if o := p.view.Order(id); o.Open() > 0 {
			open += o.Open()
			b.By = max(b.By, o.By-calendar.Day(o.Journey))
		}
	}
	b.Queens = min(b.Queens, open)
	return b
}

// inTime are the chances of the queens of a planned batch and the other grafts of its wish
// that are there by its day when its own graft is so many days late.
func (p *pricer) inTime(b book.BatchPlan, of []book.BatchPlan, late calendar.Day) plan.Chances {
	of = slices.Clone(of)
	for i := range of {
		if of[i].Batch == b.Batch {
			of[i].Day += max(0, late)
		}
	}
	return p.planner().Joint(of, b.By)
}
