package handover

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// sinceBack is how many days are looked back for when a shortage was first known.
const sinceBack = 14

// ShortSince is the first of the days up to a view's on which the book, as it was
// known at their ends, has been short for an order ever since; the view's own day
// when it is short only now, and none when it is not short. It looks back two
// weeks, a sheet a day.
func ShortSince(v *book.View, id book.OrderID) (since calendar.Day) {
	zone := v.Zone()
	for d := v.Today(); d > v.Today()-sinceBack; d-- {
		on := v.On()
		if d < v.Today() {
			on = (d + 1).Start(zone)
		}
		s := New(course.New(v.Season().AsKnown(on, on)))
		if o := s.of(id); o == nil || o.Short == 0 {
			return since
		}
		since = d
	}
	return since
}

// of is what an order gets; nil when it is not open.
func (s *Sheet) of(id book.OrderID) *Served {
	for i := range s.Orders {
		if s.Orders[i].Order.Order == id {
			return &s.Orders[i]
		}
	}
	return nil
}
