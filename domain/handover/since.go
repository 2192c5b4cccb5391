package handover

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// sinceBack is how many days are looked back for when a shortage was first known.
const sinceBack = 14

// ShortSince is, for every order that cannot be kept any more on a view's day, the
// first of the days up to it on which the book, as it was known at their ends, could
// not keep that order ever since. One that was so already two weeks ago is left out:
// since when is not known then. It costs a sheet a day as long as any order of the
// sheet cannot be kept.
func ShortSince(v *book.View, now *Sheet) map[book.OrderID]calendar.Day {
	since, open := map[book.OrderID]calendar.Day{}, map[book.OrderID]bool{}
	for _, o := range now.Orders {
		if o.Lost {
			since[o.Order.Order], open[o.Order.Order] = v.Today(), true
		}
	}
	for d := v.Today() - 1; d >= v.Today()-sinceBack && len(open) > 0; d-- {
		end := (d + 1).Start(v.Zone())
		lost := map[book.OrderID]bool{}
		for _, o := range New(course.New(v.Season().AsKnown(end, end))).Orders {
			lost[o.Order.Order] = o.Lost
		}
		for id := range open {
			if !lost[id] {
				delete(open, id)
				continue
			}
			since[id] = d
		}
	}
	for id := range open {
		delete(since, id)
	}
	return since
}
