package season

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
)

// Promise is so many queens by a day, for an order or wished without one.
type Promise struct {
	Order  book.OrderID // zero: a wish
	Name   string       // what it is called; "" is called by its day
	Queens int
	Lines  []string     // that will do, the wished one first; none: any
	By     calendar.Day // on which they leave
	Laying bool         // laying by then; else ready to hand over
	Sure   float64      // wished certainty, 0 to 1; 0: as of all
	Turn   int          // in which its order is served when queens are dealt out, from 1; 0: not known

	Priority int // of its order: a smaller one is kept first; 0: none, after all that have one
}

// Title is what the promise is called.
func (p Promise) Title() string {
	if p.Name != "" {
		return p.Name
	}
	return "wish of " + p.By.Short()
}

// wish is 1 for a promise without an order, 0 for an order's.
func (p Promise) wish() int {
	if p.Order.IsZero() {
		return 1
	}
	return 0
}

// takes tells whether a line will do.
func (p Promise) takes(line string) bool {
	return len(p.Lines) == 0 || slices.Contains(p.Lines, line)
}

// Promises are the orders for which a graft is needed, by the day on which their
// queens leave, those of one day as they are served: what is missing of them when all who
// are ready are dealt out, less what stands in nucs and is to be expected in time, and what its
// batches are counted on to give.
func Promises(sheet *handover.Sheet) []Promise {
	var all []Promise
	for i, s := range sheet.Orders {
		if s.Missing() > 0 {
			p := promiseOf(s)
			p.Queens, p.Turn = s.Missing(), i+1
			all = append(all, p)
		}
	}
	slices.SortStableFunc(all, func(a, b Promise) int { return int(a.By) - int(b.By) })
	return all
}

func promiseOf(s handover.Served) Promise {
	p := Promise{Order: s.Order.Order, Name: "order " + s.Order.Number, Queens: s.Short - s.Coming, By: s.On, Priority: s.Order.Priority}
	if s.Order.Line != "" {
		p.Lines = append([]string{s.Order.Line}, s.Order.Substitute...)
	}
	return p
}
