package handover

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/plan"
)

// sinceBack is how many days are looked back for when a shortage was first known.
const sinceBack = 14

// ShortSince is, for every order that misses queens who neither stand in nucs nor are
// planned, the first of the days up to a view's on which that was known at its end, and ever
// since: that the order cannot be kept, where it cannot any more, else that some of its queens
// are to be grafted anew. One that was so already two weeks ago is left out, since it is not
// known since when, and so is one that can be kept and of which nothing was planned from the
// first. It costs a sheet a day as long as there is any such order.
func ShortSince(v *book.View, now *Sheet) map[book.OrderID]calendar.Day {
	since, open := map[book.OrderID]calendar.Day{}, map[book.OrderID]Served{}
	for _, o := range now.Orders {
		if o.Missing() > 0 {
			since[o.Order.Order], open[o.Order.Order] = v.Today(), o
		}
	}
	for d := v.Today() - 1; d >= v.Today()-sinceBack && len(open) > 0; d-- {
		was := shortOn(v, d, open)
		for id, o := range open {
			short, told := was[id]
			switch {
			case short:
				since[id] = d
			case !told && !o.Lost:
				delete(since, id) // it was so when the order was taken
				fallthrough
			default:
				delete(open, id)
			}
		}
	}
	for id := range open {
		delete(since, id)
	}
	return since
}

// shortOn tells of some orders, as far as they were taken by the end of a day, whether each was
// as short then as it is.
func shortOn(v *book.View, d calendar.Day, as map[book.OrderID]Served) map[book.OrderID]bool {
	end := (d + 1).Start(v.Zone())
	c := course.New(v.Season().AsKnown(end, end))
	planner, short := plan.New(c), map[book.OrderID]bool{}
	for _, o := range reckoned(c).Orders {
		switch now, is := as[o.Order.Order]; {
		case !is:
		case now.Lost:
			o.graft(planner)
			short[o.Order.Order] = o.Lost
		default:
			short[o.Order.Order] = o.Missing() > 0
		}
	}
	return short
}
