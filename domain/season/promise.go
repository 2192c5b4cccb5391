package season

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Promise is so many queens by a day, for an order or wished without one.
type Promise struct {
	Order  book.OrderID // zero: a wish
	Name   string       // what it is called; "" is called by its day
	Queens int
	Lines  []string     // that will do, the wished one first; none: any
	By     calendar.Day // on which they leave
	Laying bool         // laying by then; else ready to hand over
	Sure   float64      // wished certainty, 0 to 1; 0: the keeper's number
}

// Title is what the promise is called.
func (p Promise) Title() string {
	if p.Name != "" {
		return p.Name
	}
	return p.By.Short()
}

// takes tells whether a line will do.
func (p Promise) takes(line string) bool {
	return len(p.Lines) == 0 || slices.Contains(p.Lines, line)
}

// Promises are the open orders that no planned batch is for, by the day on which
// their queens leave: those that are sent leave as many days sooner as they travel.
func Promises(v *book.View) []Promise {
	planned := map[book.OrderID]bool{}
	for b := range v.Plans() {
		for _, o := range b.Orders {
			planned[o] = true
		}
	}
	var all []Promise
	for o := range v.Orders() {
		if o.Open() > 0 && !planned[o.Order] {
			all = append(all, promiseOf(o, v.Numbers()))
		}
	}
	slices.SortStableFunc(all, func(a, b Promise) int { return int(a.By) - int(b.By) })
	return all
}

func promiseOf(o *book.Order, n practice.Numbers) Promise {
	p := Promise{Order: o.Order, Name: "order " + o.Number, Queens: o.Open(), By: o.By}
	if o.Line != "" {
		p.Lines = append([]string{o.Line}, o.Substitute...)
	}
	switch {
	case o.Sent && o.Journey > 0:
		p.By -= calendar.Day(o.Journey)
	case o.Sent:
		p.By -= calendar.Day(n.Days(practice.JourneyUsual))
	}
	return p
}
