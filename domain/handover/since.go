package handover

import (
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// sinceBack is how many days are looked back for when a shortage was first known.
const sinceBack = 14

// ShortSince is, for every order that misses queens who neither stand in nucs nor are
// planned, the first of the days up to a view's at whose end that was so, and ever
// since, as the book has it now: the day of a poor take, or the last one of a graft that was not
// made. What was written down late is of its own day. Where it was so when the
// order was taken, or already two weeks ago, it is the day from which the order cannot be kept
// any more, if there is one in these weeks; else the order is left out. It costs a dealing a
// day as long as any such order is short.
func ShortSince(v *book.View, now *Sheet) map[book.OrderID]calendar.Day {
	since, p := map[book.OrderID]calendar.Day{}, past{v, map[calendar.Day]then{}}
	for _, o := range now.Orders {
		if o.Missing() == 0 || len(o.Look) > 0 {
			continue
		}
		d := p.shortSince(o.Order.Order)
		if d == 0 && o.Lost {
			d = p.lostSince(o.Order.Order)
		}
		if d != 0 {
			since[o.Order.Order] = d
		}
	}
	return since
}

// past is what was so at the end of earlier days than a view's, each reckoned once.
type past struct {
	view *book.View
	on   map[calendar.Day]then
}

type then struct {
	sheet   *Sheet
	planner *plan.Planner
}

// served is what an order got as of a day, as far as [Reckoned] says; nil: it was not taken yet.
func (p past) served(id book.OrderID, d calendar.Day) (*Served, *plan.Planner) {
	was, known := p.on[d]
	if !known {
		end := (d + 1).Start(p.view.Zone())
		was.planner = plan.New(course.New(p.at(end, d)))
		was.sheet = Reckoned(was.planner)
		p.on[d] = was
	}
	i := slices.IndexFunc(was.sheet.Orders, func(o Served) bool { return o.Order.Order == id })
	if i < 0 {
		return nil, nil
	}
	return &was.sheet.Orders[i], was.planner
}

// at is the book at the end of a day, as it is known now; of one ahead as it is looked at from the day
// that the view is looked at from.
func (p past) at(end time.Time, d calendar.Day) *book.View {
	if d >= p.view.From() && p.view.From() < p.view.Today() {
		return p.view.Season().Later(end, p.view.From())
	}
	return p.view.Season().AsKnown(end, p.view.Known())
}

// shortSince is the first day since which an order has missed queens; 0: it did when it was taken,
// or longer than is looked back.
func (p past) shortSince(id book.OrderID) calendar.Day {
	for d := p.view.Today(); d > p.view.Today()-sinceBack; d-- {
		o, _ := p.served(id, d-1)
		switch {
		case o == nil:
			return 0
		case o.Missing() == 0:
			return d
		}
	}
	return 0
}

// lostSince is the first day from which an order that is lost could not be kept any more; 0: it
// is so longer than is looked back. What is lost stays so, hence few days are asked: always the
// one in the middle between one on which it could be kept, or was not taken yet, and one on
// which it could not.
func (p past) lostSince(id book.OrderID) calendar.Day {
	lost := func(d calendar.Day) bool {
		o, planner := p.served(id, d)
		if o == nil {
			return false
		}
		o.graft(planner)
		return o.Lost
	}
	kept, not := p.view.Today()-sinceBack, p.view.Today()
	if lost(kept) {
		return 0
	}
	for not-kept > 1 {
		if mid := kept + (not-kept)/2; lost(mid) {
			not = mid
		} else {
			kept = mid
		}
	}
	return not
}
