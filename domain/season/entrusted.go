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

// Entrusted is an order that waits for planned batches, and how sure these are.
type Entrusted struct {
	Promise
	Chance float64 // that they give what is missing of it in time, and of the orders before it that wait for them too
}

// Unsure tells whether the order is less sure than is wished, as far as a reader is told.
func (e Entrusted) Unsure() bool { return plan.Unsure(e.Chance, e.Sure) }

// Said is how sure the order is, in a sentence.
func (e Entrusted) Said() string {
	said := fmt.Sprintf("%s waits for what is planned: %d queens by %s, %s sure", sentence(e.Title()), e.Queens, e.By.Short(), plan.OfHundred(e.Chance))
	if e.Unsure() {
		said += fmt.Sprintf(", %.0f wished: graft more for it, or promise fewer", 100*e.Sure)
	}
	return said + "."
}

// sentence begins a text as a sentence.
func sentence(text string) string { return strings.ToUpper(text[:1]) + text[1:] }

// EntrustedTo are the orders that wait for planned batches, as they are served. Orders
// for which a batch is grafted already are left out: its counts and nucs tell of them.
func EntrustedTo(p *plan.Planner, sheet *handover.Sheet) (all []Entrusted) {
	plans, rates := slices.Collect(p.View().Plans()), plan.RatesOf(p.View())
	for i, o := range sheet.Orders {
		grafts := graftsFor(p, plans, o)
		if o.Short <= o.Coming || len(grafts) == 0 || graftedFor(p.View(), o.Order.Order) {
			continue
		}
		queens := o.Short - o.Coming
		for _, before := range sheet.Orders[:i] {
			if waitsWith(plans, before.Order.Order, o.Order.Order) {
				queens += before.Short - before.Coming
			}
		}
		pr := promiseOf(o)
		pr.Sure = p.View().Numbers().Get(practice.PlanSure)
		all = append(all, Entrusted{pr, rates.Queens(grafts...).AtLeast(queens)})
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

// graftedFor tells whether a batch that was planned for an order is grafted.
func graftedFor(v *book.View, order book.OrderID) bool {
	for b := range v.Batches() {
		if was, _ := v.BatchPlan(b.Batch); slices.Contains(was.Orders, order) {
			return true
		}
	}
	return false
}

// waitsWith tells whether two orders wait for one batch.
func waitsWith(plans []book.BatchPlan, a, b book.OrderID) bool {
	return slices.ContainsFunc(plans, func(p book.BatchPlan) bool { return slices.Contains(p.Orders, a) && slices.Contains(p.Orders, b) })
}
