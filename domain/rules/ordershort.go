package rules

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// ordersShort: an order misses queens, and what was planned for it is known to give fewer, or it cannot
// be kept any more. It is said as soon as that is known, with the last graft that helps; where a
// look may show that none are missing, the look is the work, and from the day on which its queens
// leave the hand-over is. An order for which nobody planned anything yet is no news.
func (p *pass) ordersShort() {
	missing := func(o handover.Served) bool { return o.Missing() > 0 }
	if !slices.ContainsFunc(p.sheet.Orders, missing) {
		return
	}
	since := handover.ShortSince(p.view, p.sheet)
	for i := range p.sheet.Orders {
		p.sheet.Explain(p.ladders(), i)
		if o := p.sheet.Orders[i]; missing(o) && len(o.Look) == 0 && p.leaves(o) > p.today && (o.Lost || len(o.Fell) > 0) {
			p.orderShort(o, since[o.Order.Order])
		}
	}
}

func (p *pass) orderShort(o handover.Served, since calendar.Day) {
	y, more := p.home(), o.Missing()
	f := Finding{
		Rule: OrderShort, Severity: Pressing, Of: o.Order.Order.Subject(), Act: ActSeeToOrder, Amount: float64(more),
		What: fmt.Sprintf("short by %d", o.Short), Sure: sureRecorded, Used: []practice.Key{practice.NextSure, practice.PlanSure},
	}
	f.From = p.today.Start(y.zone)
	if since != 0 {
		f.What += " since " + since.ShortFrom(p.today)
		f.Since, f.From = since.Start(y.zone), since.Start(y.zone)
	}
	f.Why = strings.Join(slices.DeleteFunc([]string{
		o.FellWords(), toCome(o), "as it stands all are there in time with " + plan.OfHundred(o.Sure),
	}, func(s string) bool { return s == "" }), "; ")
	f.Do = fmt.Sprintf("Ring %s: no graft is in time for %s any more", customer(o.Order), count(more, "queen"))
	if by := o.GraftBy; by.Day != 0 {
		f.Do = fmt.Sprintf("Plan a graft for %s more, by %s", count(more, "queen"), by.Said(func(d calendar.Day) string { return d.ShortFrom(p.today) }))
		if few := by.TooFew(more); few != "" {
			f.Do += "; " + few
		}
		f.Best, f.By = by.Day.Start(y.zone), by.Day.Start(y.zone)
	}
	p.note(y, f)
}
