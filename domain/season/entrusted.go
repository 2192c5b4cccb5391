package season

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Entrusted is an order that waits for batches that are planned or grafted, and how sure these are.
type Entrusted struct {
	Promise
	Chance  float64 // that they and what stands in nucs give all that it misses in time, see [handover.Sheet.Chance]
	Grafted bool    // one of them is grafted
	Less    string  // what takes from the chance of those that are planned, see [plan.Planner.Against]

	by string // its day, as it is written on the view's
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
	said := fmt.Sprintf("%s waits for what is %s: %s by %s, %s sure", plan.Sentence(e.Name), e.Stands(), plan.QueensSaid(e.Queens), e.by, plan.OfHundred(e.Chance))
	switch {
	case e.Chance >= e.Sure-nearly-even && e.Unsure():
		said += fmt.Sprintf(", %.0f wished: nearly kept", 100*e.Sure)
	case e.Unsure() && e.Less != "":
		said += fmt.Sprintf(", %.0f wished: %s", 100*e.Sure, e.Less)
	case e.Unsure():
		said += fmt.Sprintf(", %.0f wished: graft more for it, or promise fewer", 100*e.Sure)
	}
	return said + "."
}

// EntrustedTo are the orders that wait for batches, planned or grafted with cells that are
// still to be given, as they are served. Of cells that are given the nucs tell.
func EntrustedTo(p *plan.Planner, sheet *handover.Sheet) (all []Entrusted) {
	w := waitingOf(p)
	for i := range sheet.Orders {
		if e, ok := w.entrusted(p, sheet, i); ok {
			all = append(all, e)
		}
	}
	return all
}

// waiting are the batches for which orders wait: those that are planned, those grafted for somebody,
// and those grafted for nobody, which are for whoever takes their line.
type waiting struct{ plans, live, free []book.BatchPlan }

func waitingOf(p *plan.Planner) waiting {
	live, free := ungiven(p)
	return waiting{awaited(p, slices.Collect(p.View().ToGraft())), awaited(p, live), free}
}

// awaited are batches, each planned for those of its orders only that take its line.
func awaited(p *plan.Planner, all []book.BatchPlan) []book.BatchPlan {
	for i, b := range all {
		all[i].Orders = p.View().Awaiting(b.BatchPlanned)
	}
	return all
}

func (w waiting) serves(o book.OrderID) bool {
	return w.own(o) || slices.ContainsFunc(w.free, func(b book.BatchPlan) bool { return slices.Contains(b.Orders, o) })
}

// own tells whether a batch is planned, or grafted, for an order.
func (w waiting) own(o book.OrderID) bool {
	waits := func(b book.BatchPlan) bool { return slices.Contains(b.Orders, o) }
	return slices.ContainsFunc(w.plans, waits) || slices.ContainsFunc(w.live, waits)
}

// Waits tells whether an order waits for a batch that is for it, planned or grafted with cells that
// are still to be given.
func Waits(p *plan.Planner, o book.OrderID) bool { return waitingOf(p).own(o) }

// entrusted is an order of a sheet.
func (w waiting) entrusted(p *plan.Planner, sheet *handover.Sheet, i int) (e Entrusted, ok bool) {
	o := sheet.Orders[i]
	waits := func(b book.BatchPlan) bool { return slices.Contains(b.Orders, o.Order.Order) }
	e.Grafted = slices.ContainsFunc(w.live, waits) || slices.ContainsFunc(w.free, waits)
	if o.Short <= o.Coming || !e.Grafted && !slices.ContainsFunc(w.plans, waits) {
		return e, false
	}
	counted := sheet.Counted(p, i, o.On)
	e.Promise, e.Chance, e.Less = promiseOf(o), counted.Chances(p)[counted.Queens], p.Against(counted.Planned)
	e.Sure, e.by = p.View().Numbers().Get(practice.PlanSure), e.By.ShortFrom(p.View().Today())
	return e, true
}

// ungiven are the plans of the batches that are grafted and of which cells are still to be
// given, as long as there is the time for it: those for somebody, and those for nobody.
func ungiven(p *plan.Planner) (live, free []book.BatchPlan) {
	for b := range p.View().Batches() {
		l, forNobody := p.Unplanned(b)
		switch was := l.Plan; {
		case l.Nucs == 0:
		case forNobody:
			was.Orders = handover.Takers(p.View(), b.Line)
			free = append(free, was)
		case len(was.Orders) > 0:
			live = append(live, was)
		}
	}
	return live, free
}
