package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// Besides is the planner of the book as it would be with some batches planned that nobody has written down.
func (p *Planner) Besides(all []book.BatchPlanned) *Planner {
	v := p.view
	ids := book.NewIDs(v.On(), v.Season(), [32]byte{})
	var facts []book.Fact
	for _, b := range all {
		b.Batch = book.BatchID(ids.Next())
		facts = append(facts, b)
	}
	with := v.Season().With(ids.Entries(calendar.Instantly(v.On()), v.On(), "", facts...)...)
	return New(course.New(with.Later(v.On(), v.From())))
}
