package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// Besides is the planner of the book as it would be with some batches planned that nobody has written down.
func (p *Planner) Besides(all []book.BatchPlanned) *Planner {
	ids := p.newIDs()
	var facts []book.Fact
	for _, b := range all {
		b.Batch = book.BatchID(ids.Next())
		facts = append(facts, b)
	}
	return p.with(ids, facts)
}

// planned is the planner of the book as it would be with some batches planned, the first in place of one of the
// book if one is named, and these as they are planned there.
func (p *Planner) planned(all []book.BatchPlanned, first book.BatchID) (then *Planner, of []book.BatchPlan) {
	ids := p.newIDs()
	var facts []book.Fact
	for i, b := range all {
		if b.Batch = book.BatchID(ids.Next()); i == 0 && !first.IsZero() {
			b.Batch = first
		}
		facts, of = append(facts, b), append(of, book.BatchPlan{BatchPlanned: b})
	}
	then = p.with(ids, facts)
	for i, b := range of {
		of[i], _ = then.view.BatchPlan(b.Batch)
	}
	return then, of
}

// Without is the planner of the book as it would be without some planned batches.
func (p *Planner) Without(all []book.BatchPlan) *Planner {
	var facts []book.Fact
	for _, b := range all {
		facts = append(facts, book.BatchDropped{Batch: b.Batch})
	}
	return p.with(p.newIDs(), facts)
}

func (p *Planner) newIDs() book.IDs { return book.NewIDs(p.view.On(), p.view.Season(), [32]byte{}) }

// with is the planner of the book with some facts more.
func (p *Planner) with(ids book.IDs, facts []book.Fact) *Planner {
	v := p.view
	with := v.Season().With(ids.Entries(calendar.Instantly(v.On()), v.On(), "", facts...)...)
	return New(course.New(with.Later(v.On(), v.From())))
}
