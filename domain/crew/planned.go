package crew

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/rules"
)

// planned is what a step of a planned batch costs that waits beyond its last day: the
// graft is as many days later, and fewer of the queens that it is for are there in time.
func (p *pricer) planned(t rules.Task, s book.Subject) Price {
	id, _ := s.Batch()
	b, ok := p.view.BatchPlan(id)
	b = p.stillOwed(b)
	if !ok || b.Queens == 0 || b.By == 0 {
		return Price{}
	}
	if p.planner == nil {
		p.planner = plan.New(p.judged.Course())
	}
	by := calendar.DayOf(t.By, p.view.Zone())
	next := calendar.DayOf(p.next, p.view.Zone())
	if next <= by {
		return Price{}
	}
	now, later := p.inTime(b, p.view.Today()-by), p.inTime(b, next-by)
	queens := 0.0
	for n := 1; n <= b.Queens; n++ {
		queens += now.AtLeast(n) - later.AtLeast(n)
	}
	return Price{max(0, queens), fmt.Sprintf("%d queens by %s: %s done today, %s then", b.Queens, b.By.Short(), plan.OfHundred(now.AtLeast(b.Queens)), plan.OfHundred(later.AtLeast(b.Queens)))}
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

// inTime are the chances of the queens of a planned batch that are there in time when its
// graft is so many days late.
func (p *pricer) inTime(b book.BatchPlan, late calendar.Day) plan.Chances {
	b.Day += max(0, late)
	return p.planner.Gives(b)
}
