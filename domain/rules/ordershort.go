package rules

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// ordersShort: an order misses queens. It is said with the last graft that helps, and presses as soon as
// what was planned for it is known to give fewer, it cannot be kept any more, or the first step that
// cannot be made up for is near; where a look may show that none are missing, the look is the work, and
// from the day on which its queens leave the hand-over is. One for which all is planned, and less surely
// than is wished, is said too.
func (p *pass) ordersShort() {
	missing := func(o handover.Served) bool { return o.Missing() > 0 }
	p.ordersUnsure()
	if !slices.ContainsFunc(p.sheet.Orders, missing) {
		return
	}
	since := handover.ShortSince(p.view, p.sheet)
	for i := range p.sheet.Orders {
		p.sheet.Explain(p.ladders(), i)
		if o := p.sheet.Orders[i]; missing(o) && len(o.Look) == 0 && o.Leaves() > p.today {
			p.orderShort(o, since[o.Order.Order])
		}
	}
}

func (p *pass) orderShort(o handover.Served, since calendar.Day) {
	y, more := p.home(), o.Missing()
	f := Finding{
		Rule: OrderShort, Severity: Open, Of: o.Order.Order.Subject(), Act: ActSeeToOrder, Amount: float64(more),
		What: fmt.Sprintf("short by %d", o.Short), Sure: sureRecorded, Used: []practice.Key{practice.NextSure, practice.PlanSure},
	}
	f.From = p.today.Start(y.zone)
	f.Best = f.From
	if since != 0 {
		f.What += " since " + since.ShortFrom(p.today)
		f.Since, f.From = since.Start(y.zone), since.Start(y.zone)
	}
	f.Why = strings.Join(slices.DeleteFunc([]string{
		o.FellWords(), toCome(o), "as it stands all are there in time with " + plan.OfHundred(o.Sure),
	}, func(s string) bool { return s == "" }), "; ")
	if o.Lost || len(o.Fell) > 0 {
		f.Severity = Pressing
	}
	f.Do = fmt.Sprintf("Ring %s: %s", customer(o.Order), o.TooLate().Said(func(d calendar.Day) string { return d.ShortFrom(p.today) }))
	if by := o.GraftBy; by.Day != 0 {
		begin, first := p.beforeGraft(by)
		f.Do = fmt.Sprintf("Plan a graft for %s more, by %s; %s", count(more, "queen"), by.Said(func(d calendar.Day) string { return d.ShortFrom(p.today) }), first)
		if begin <= p.today+soonToBegin {
			f.Severity = Pressing
		}
		if few := p.ladders().TooFew(by); few != "" {
			f.Do += "; " + few
		}
		f.By = max(begin, p.today).Start(y.zone)
	}
	p.note(y, f)
}

// beforeGraft says which steps before a graft that nobody planned yet have their days, and which is the first of
// them: its breeder is confined, and before that drone comb is hung in, where a drone colony is there, no comb
// serves already and its drones can still be ripe when the first virgins fly.
func (p *pass) beforeGraft(by plan.GraftBy) (begin calendar.Day, said string) {
	l, yard := p.ladders().LadderBy(by)
	begin = l.Rung(plan.Confine).By
	said = "its breeder is confined on " + begin.ShortFrom(p.today)
	comb := l.Rung(plan.DroneComb).By
	flies := book.BatchPlan{BatchPlanned: book.BatchPlanned{Yard: yard}}
	if comb < p.today || len(p.ladders().DroneColoniesNear(yard)) == 0 || !p.wantsComb(flies, l, p.combsIn()) {
		return begin, said
	}
	return min(comb, begin), "drone comb is hung in by " + comb.ShortFrom(p.today) + ", " + said
}

// soonToBegin is within how many days of the first step that cannot be made up for a graft that nobody
// planned presses. A bound of telling: a week, in which most keepers have free hours.
const soonToBegin = 7

// ordersUnsure: all that an order misses is planned or grafted, and less sure than is wished: then its
// customer is to know how many can be promised, or more is grafted.
func (p *pass) ordersUnsure() {
	for i, o := range p.sheet.Orders {
		if m, unsure := p.sheet.Promised(p.ladders(), i); unsure && o.Leaves() > p.today {
			p.orderUnsure(o, m)
		}
	}
}

func (p *pass) orderUnsure(o handover.Served, m handover.Promised) {
	y, less := p.home(), o.Short-m.Queens
	f := Finding{
		Rule: OrderShort, Severity: Open, Of: o.Order.Order.Subject(), Act: ActSeeToOrder, Amount: float64(less),
		What: fmt.Sprintf("%d less sure than is wished", o.Short),
		Sure: sureRecorded, Used: []practice.Key{practice.NextSure, practice.PlanSure}, From: p.today.Start(y.zone), Best: p.today.Start(y.zone),
	}
	f.Why = fmt.Sprintf("as planned all %d are there in time with %s, and %.0f are wished", o.Short, plan.OfHundred(m.Chance), 100*m.Sure)
	if m.Less != "" {
		f.Why += ": " + m.Less
	}
	f.Do = fmt.Sprintf("Tell %s: %s", customer(o.Order), m.Words(o.Short))
	if by := p.ladders().GraftBy(plan.Wish{Queens: less, By: o.On}); by.Day > p.today {
		f.Do += "; or graft again by " + by.Said(func(d calendar.Day) string { return d.ShortFrom(p.today) })
		if few := p.ladders().TooFew(by); few != "" {
			f.Do += "; " + few
		}
		f.By = by.Day.Start(y.zone)
	}
	p.note(y, f)
}
