package book

import (
	"cmp"
	"iter"
	"math"
	"slices"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Order is what the book says of an order for queens. Where all its queens went before
// some were claimed, and its day had come, By is the day by which those are replaced.
type Order struct {
	OrderTaken
	Taken    calendar.Moment // when it was first written down
	Handed   []QueenID       // queens handed over for it
	Claimed  int             // queens claimed as dead or not accepted
	Reopened calendar.Moment // by a claim that gave it another day; zero: by none, or its day was said anew since
	Closed   bool
}

// Open is the number of queens still owed, claims included.
func (o *Order) Open() int {
	if o.Closed {
		return 0
	}
	return max(0, o.Queens+o.Claimed-len(o.Handed))
}

// Takes tells whether a queen of a line will do for the order.
func (o *Order) Takes(line string) bool {
	return o.Line == "" || o.Line == line || slices.Contains(o.Substitute, line)
}

// Lines are the lines that will do for the order, in words: "Plover or Yarrow"; "" where any does.
func (o *Order) Lines() string {
	if o.Line == "" {
		return ""
	}
	return strings.Join(append([]string{o.Line}, o.Substitute...), " or ")
}

// JourneyDays are the days for which the queens of an order that is sent are on the way: as it says, or as is usual.
func (o *Order) JourneyDays(n practice.Numbers) calendar.Day {
	if o.Journey > 0 {
		return calendar.Day(o.Journey)
	}
	return calendar.Day(n.Days(practice.JourneyUsual))
}

// LeavesBy is the last day on which the queens of an order leave in time.
func (o *Order) LeavesBy(n practice.Numbers) calendar.Day {
	if !o.Sent {
		return o.By
	}
	return o.By - o.JourneyDays(n)
}

// TakesSure tells whether a queen of a line will do for the order; one of whom it is
// not sure that she is of it only where any line does.
func (o *Order) TakesSure(line string, sure bool) bool {
	return o.Line == "" || sure && o.Takes(line)
}

// Awaiting are the orders for which a batch is planned and that take its line; all of them
// where nobody told its line yet.
func (v *View) Awaiting(b BatchPlanned) []OrderID {
	return slices.DeleteFunc(slices.Clone(b.Orders), func(id OrderID) bool { return b.Line != "" && !v.Order(id).Takes(b.Line) })
}

// LineIn is the line of the queen of a nuc: her own, else that of her batch.
func (v *View) LineIn(n *Nuc) string {
	return cmp.Or(v.Queen(n.Holds.Queen).Line, v.Batch(n.Holds.Batch).Line)
}

// DescentIn is how sure it is whose daughter the queen of a nuc is: doubtful where the
// nuc's history makes it so, or her own record.
func (v *View) DescentIn(n *Nuc) Descent {
	return max(n.Holds.Descent, v.Queen(n.Holds.Queen).Descent)
}

// Order is the order of an id.
func (v *View) Order(id OrderID) *Order { return v.orders.get(id, v.foldOrder) }

// Orders yields the orders that were taken, the one served first before the others: by
// priority, those without one after all that have one; then by the day they are due.
func (v *View) Orders() iter.Seq[*Order] {
	all := slices.DeleteFunc(collect(v, KindOrder, v.Order), func(o *Order) bool { return o.Taken.IsZero() })
	slices.SortFunc(all, func(a, b *Order) int {
		return cmp.Or(cmp.Compare(a.turn(), b.turn()), cmp.Compare(a.By, b.By), a.Order.compare(b.Order))
	})
	return slices.Values(all)
}

// turn is the priority of an order; none is after all.
func (o *Order) turn() int { return cmp.Or(o.Priority, math.MaxInt) }

func (v *View) foldOrder(id OrderID) *Order {
	begin := Order{OrderTaken: OrderTaken{Order: id}}
	o := v.season.folded.orders.get(id, v.lines(id.Subject()), practice.Numbers{}, begin)
	if o.Reopened.IsZero() {
		return o
	}
	next := o.again()
	if on := o.Reopened.Day(v.Zone()); !o.By.IsZero() && on >= o.By {
		next.By = on + calendar.Day(v.Numbers().Days(practice.ReplacedWithin))
	} else {
		next.Reopened = calendar.Moment{}
	}
	return &next
}

func (o *Order) again() Order {
	next := *o
	next.Handed = slices.Clip(o.Handed)
	return next
}

func (o *Order) take(e *Entry) {
	switch f := e.Fact.(type) {
	case OrderTaken:
		if o.OrderTaken, o.Reopened = f, (calendar.Moment{}); o.Taken.IsZero() {
			o.Taken = e.At
		}
	case OrderClosed:
		o.Closed = true
	case QueenHandedOver:
		if !slices.Contains(o.Handed, f.Queen) { // written twice, she went once
			o.Handed = append(o.Handed, f.Queen)
		}
	case Claimed:
		if o.Queens+o.Claimed <= len(o.Handed) { // closed or not: all went, and more are owed now
			o.Reopened, o.Closed = e.At, false
		}
		o.Claimed += f.Queens
	}
}
