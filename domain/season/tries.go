package season

import (
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// tries are the ways to keep the promises of a group at a level that are tried: one graft, or
// two alike a week apart in one yard; those of least cost first.
func (s *search) tries(g group, l level) (all []option) {
	if !s.larvae.has(g.line) {
		return nil
	}
	for y := range s.ground.yards {
		all = append(all, s.inYard(g, y, l)...)
	}
	slices.SortStableFunc(all, byCost)
	return all
}

// options are the ways to keep the promises of a group at a level that there is room for with
// nothing else chosen, those of least cost first: see [Tried].
func (s *search) options(g group, l level) []option {
	all := s.fitting(s.tries(g, l))
	if len(all) == 0 && s.larvae.has(g.line) && s.wantsSeveral(g, l) {
		all = s.several(g, l)
	}
	return all
}

// wantsSeveral tells whether several unlike grafts are tried for a group at a level: for a promise, and
// to keep all of some of which one cannot be kept by itself without.
func (s *search) wantsSeveral(g group, l level) bool {
	if len(g.promises) == 1 {
		return true
	}
	return l == whole && slices.ContainsFunc(g.promises, func(i int) bool {
		ways := s.wholeWays(s.alone(i))
		return len(ways) == 0 || ways[0].several
	})
}

// daysOf are the days of a graft in a yard that could be in time for a promise at a level, the
// latest first, while more are asked for.
func (s *search) daysOf(g group, yard int, l level, yield func(calendar.Day) bool) {
	first := s.wanted.Promises[g.promises[0]]
	from, ok := s.ground.planner.GraftsFor(first.By, first.Laying, s.ground.yards[yard], s.wanted.From)
	if !ok {
		return
	}
	for d := first.By - s.soonest(g.promises[0]); d >= from; d-- {
		laid := s.ground.ladder(s.ground.yards[yard], d, 0).Laid
		if !s.tooLate(laid, first, l) && !yield(d) {
			return
		}
	}
}

// inYard goes back from the last day, until so many days are found.
func (s *search) inYard(g group, yard int, l level) (all []option) {
	found := 0
	s.daysOf(g, yard, l, func(d calendar.Day) bool {
		if on := s.onDay(g, yard, d, l); len(on) > 0 {
			all = append(all, on...)
			found++
		}
		return found < s.wanted.Window
	})
	return all
}

// soonest is how many days a graft lies before the day of a promise at least: half
// its queens are born on the middle day at the earliest, and have to be old enough.
func (s *search) soonest(promise int) calendar.Day {
	if s.wanted.Promises[promise].Laying {
		return least
	}
	n := s.ground.numbers
	return max(least, calendar.Day(n.Days(practice.GraftToEmerge)-1+n.Days(practice.LeastAgeAtHandOver)))
}

// onDay are the ways with the last graft on a day.
func (s *search) onDay(g group, yard int, d calendar.Day, l level) (all []option) {
	demand := s.demand(g, s.ground.ladder(s.ground.yards[yard], d, 0).Laid, l)
	for _, size := range s.sizes(demand) {
		if o, ok := s.option(g, l, batchKey{yard, d, size}); ok && !s.hardlyHelps(g, o) {
			all = append(all, o)
		}
	}
	slices.SortStableFunc(all, byCost)
	all = all[:min(len(all), s.wanted.Sizes)]
	if before := d - plan.UsualApart; before >= s.wanted.From {
		if size, ok := s.twice(demand); ok {
			if o, ok := s.option(g, l, batchKey{yard, before, size}, batchKey{yard, d, size}); ok && !s.hardlyHelps(g, o) {
				all = append(all, o)
			}
		}
	}
	return all
}
