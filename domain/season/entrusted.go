package season

import (
	"fmt"
	"slices"
	"strings"

	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Entrusted is an order that waits for batches that are planned or grafted, and how sure these are.
type Entrusted struct {
	Promise
	Chance  float64 // that they give what is missing of it in time, and of the orders before it that wait for them too
	Grafted bool    // one of them is grafted
}

// Unsure tells whether the order is less sure than is wished, as far as a reader is told.
func (e Entrusted) Unsure() bool { return plan.Unsure(e.Chance, e.Sure) }

// Stands is how the batches stand that it waits for, in a word.
func (e Entrusted) Stands() string {
	if e.Grafted {
		return "grafted"
	}
	return "planned"
}

// Said is how sure the order is, in a sentence.
func (e Entrusted) Said() string {
	said := fmt.Sprintf("%s waits for what is %s: %d queens by %s, %s sure", sentence(e.Title()), e.Stands(), e.Queens, e.By.Short(), plan.OfHundred(e.Chance))
	if e.Unsure() {
		said += fmt.Sprintf(", %.0f wished: graft more for it, or promise fewer", 100*e.Sure)
	}
	return said + "."
}

// sentence begins a text as a sentence.
func sentence(text string) string { return strings.ToUpper(text[:1]) + text[1:] }

// EntrustedTo are the orders that wait for batches, planned or grafted with cells that are
// still to be given, as they are served. Of cells that are given the nucs tell.
func EntrustedTo(p *plan.Planner, sheet *handover.Sheet) (all []Entrusted) {
	plans, live := slices.Collect(p.View().Plans()), ungiven(p.View())
	of := slices.Concat(plans, live)
	for i, o := range sheet.Orders {
		waits := func(b book.BatchPlan) bool { return slices.Contains(b.Orders, o.Order.Order) }
		grafted := slices.ContainsFunc(live, waits)
		if o.Short <= o.Coming || !grafted && !slices.ContainsFunc(plans, waits) {
			continue
		}
		queens := o.Short - o.Coming
		for _, before := range sheet.Orders[:i] {
			if waitsWith(of, before.Order.Order, o.Order.Order) {
				queens += before.Short - before.Coming
			}
		}
		chances := plan.RatesOf(p.View()).Queens(graftsFor(p, plans, o)...)
		for _, b := range live {
			if waits(b) {
				chances = chances.With(p.StillGives(p.View().Batch(b.Batch), o.On))
			}
		}
		pr := promiseOf(o)
		pr.Sure = p.View().Numbers().Get(practice.PlanSure)
		all = append(all, Entrusted{pr, chances.AtLeast(queens), grafted})
	}
	return all
}

// ungiven are the plans of the batches that are grafted and of which cells are still to be given.
func ungiven(v *book.View) (all []book.BatchPlan) {
	for b := range v.Batches() {
		if was, _ := v.BatchPlan(b.Batch); len(was.Orders) > 0 && b.Unplaced() > 0 {
			all = append(all, was)
		}
	}
	return all
}

// graftsFor are the planned batches that an order waits for, as grafts for its day.
func graftsFor(p *plan.Planner, plans []book.BatchPlan, o handover.Served) (all []plan.Graft) {
	for _, b := range plans {
		if slices.Contains(b.Orders, o.Order.Order) {
			all = append(all, p.GraftFor(b, o.On, false))
		}
	}
	return all
}

// waitsWith tells whether two orders wait for one batch.
func waitsWith(plans []book.BatchPlan, a, b book.OrderID) bool {
	return slices.ContainsFunc(plans, func(p book.BatchPlan) bool { return slices.Contains(p.Orders, a) && slices.Contains(p.Orders, b) })
}
