package season

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Promise is so many queens by a day, for an order or wished without one.
type Promise struct {
	Order  book.OrderID // zero: a wish
	Name   string       // what it is called; "": a search calls it by its day
	Queens int
	Lines  []string     // that will do, the wished one first; none: any
	By     calendar.Day // on which they leave
	Laying bool         // laying by then; else ready to hand over
	Sure   float64      // wished certainty, 0 to 1; 0: as of all
	Turn   int          // in which its order is served when queens are dealt out, from 1; 0: not known

	Next calendar.Day // by which what stands in nucs gives its order all that it misses, as its hand-over tells it; 0: it does not

	Has *handover.Counted // what its order can count on already; nil: on nothing

	Priority int // of its order: a smaller one is kept first; 0: none, after all that have one

	kept int // queens of it that are there as surely as is wished without any graft
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

// short are the queens of it that are missing before any graft is found for it.
func (p Promise) short() int { return p.Queens - p.kept }

// Promises are the orders for which a graft is needed, by the day on which their
// queens leave, those of one day as they are served: what is missing of them when all who
// are ready are dealt out, less what stands in nucs and is to be expected in time. An order that
// waits for batches is one of them where these leave it less sure than is wished, by more than is
// nearly kept. Sure is the certainty that is wished, 0 to 1; 0: the keeper's number.
func Promises(p *plan.Planner, sheet *handover.Sheet, sure float64) []Promise {
	var all []Promise
	sure = cmp.Or(sure, p.View().Numbers().Get(practice.PlanSure))
	waits := waitingOf(p)
	for i, s := range sheet.Orders {
		if s.Short <= s.Coming {
			continue
		}
		promise := promiseOf(s)
		promise.Turn = i + 1
		if waits.serves(s.Order.Order) {
			has := sheet.Counted(p, i, s.On)
			if has.Chances(p)[has.Queens] >= sure-nearly-even {
				continue
			}
			promise.Has = &has
		}
		all = append(all, promise)
	}
	slices.SortStableFunc(all, func(a, b Promise) int { return int(a.By) - int(b.By) })
	return all
}

func promiseOf(s handover.Served) Promise {
	p := Promise{Order: s.Order.Order, Name: "order " + s.Order.Number, Queens: s.Short - s.Coming, By: s.On, Next: s.Next.Day, Priority: s.Order.Priority}
	if s.Order.Line != "" {
		p.Lines = append([]string{s.Order.Line}, s.Order.Substitute...)
	}
	return p
}
