package handover

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// sinceBack is how many days are looked back for when a shortage was first known.
const sinceBack = 14

// ShortSince is, for every order that is short on a view's day, the first of the days
// up to it on which the book, as it was known at their ends, has been short for that
// order ever since. It looks back two weeks at most, and costs a sheet a day as long
// as any order of the sheet is short.
func ShortSince(v *book.View, now *Sheet) map[book.OrderID]calendar.Day {
	since, open := map[book.OrderID]calendar.Day{}, map[book.OrderID]bool{}
	for _, o := range now.Orders {
		if o.Short > 0 {
			since[o.Order.Order], open[o.Order.Order] = v.Today(), true
		}
	}
	for d := v.Today() - 1; d > v.Today()-sinceBack && len(open) > 0; d-- {
		end := (d + 1).Start(v.Zone())
		short := map[book.OrderID]bool{}
		for _, o := range New(course.New(v.Season().AsKnown(end, end))).Orders {
			short[o.Order.Order] = o.Short > 0
		}
		for id := range open {
			if !short[id] {
				delete(open, id)
				continue
			}
			since[id] = d
		}
	}
	return since
}
