package handover

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Next is when the queens that an order misses are to be expected: the first day
// by which so many more of its lines are ready with the wished chance. None is
// zero: what stands in nucs will not do, and a graft is needed.
type Next struct {
	Day    calendar.Day
	Chance float64
	Most   float64 // the chance that is reached in the end, where that is too little
}

// nextAhead is how many days ahead of an order's day more queens are looked for.
const nextAhead = 45

// expect says of an order that misses queens when they are to be expected, of those nucs that
// nobody before it waits for.
func (s *Sheet) expect(p *plan.Planner, i int) (best Next) {
	v, o, all := p.View(), s.Orders[i], s.supply(p, i, nil)
	wanted, sure := s.before(i)+o.Short, v.Numbers().Get(practice.NextSure)
	for d := o.On; d <= o.On+nextAhead; d++ {
		chance := atLeast(wanted, all, o.Order, catchDay(v, Day{On: d}).Catch)
		best.Most = max(best.Most, chance)
		if chance >= sure {
			return Next{Day: d, Chance: chance, Most: chance}
		}
	}
	return best
}

// inTime is how many of those that an order misses are ready by its day with a chance: who
// goes on a day must be ready when she is caught.
func (s *Sheet) inTime(i int, all []coming, sure float64) int {
	o := s.Orders[i]
	if o.Short == 0 {
		return 0
	}
	before := s.before(i)
	return max(0, most(before+o.Short, all, o.Order, o.Catch, sure)-before)
}

// before is how many queens the orders before one miss that it could take: they count as
// wanting them first.
func (s *Sheet) before(i int) (missing int) {
	for _, o := range s.Orders[:i] {
		if o.Short > 0 && shares(o.Order, s.Orders[i].Order) {
			missing += o.Short
		}
	}
	return missing
}

// shares tells whether two orders may want the same queen.
func shares(a, b *book.Order) bool {
	if a.Takes(b.Line) || b.Takes(a.Line) {
		return true
	}
	return slices.ContainsFunc(a.Substitute, b.Takes)
}
