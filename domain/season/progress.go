package season

import (
	"slices"

	"lidmark/domain/plan"
)

// Progress is how far a search is.
type Progress struct {
	Round, Rounds int     // of improvement; round 0 is the first answer
	Batches       int     // found so far
	Short         int     // queens of promises that are not kept
	Minutes       float64 // of the keeper
	Least         int     // queens that are short in any plan; see [Found.Least]
	Bound         float64 // no plan that is short of no more than these takes less; 0: not known yet
	Exact         bool    // nothing is better
	Found         func() Found
}

// Search looks for batches that keep promises: those that are short of the fewest queens
// of the orders served first, then of those served next, and so on; of them those with the
// least work, each clash counting as more than a graft takes, of them those with the fewest grafts, of
// them the latest. [Space] is what it looks through. Small seasons are searched through; in larger ones the first
// answer is improved, round by round, until a bound is reached. After each answer
// and round tell is asked whether to go on; it may be nil. The answer depends on
// what is asked alone.
func Search(p *plan.Planner, w Wanted, tell func(Progress) bool) Found {
	s := newSearch(p, w)
	if len(s.wanted.Promises) == 0 {
		return Found{Wanted: s.wanted, Exact: true}
	}
	if tell == nil {
		tell = func(Progress) bool { return true }
	}
	s.first()
	if !tell(s.progress(0, false)) {
		return s.found(false)
	}
	chance := chance(s.wanted.Seed)
	s.prices = s.pricesOf(chance)
	s.besides = s.dearest()
	if s.least = s.prices.sum(s.wanted.byDay()); s.least.less(s.cost) {
		s.least = s.relax(s.least, s.cost)
	}
	exact := s.allThrough(tell)
	if s.stopped {
		return s.found(false)
	}
	for round := 1; round <= s.wanted.Rounds && !exact; round++ {
		if !tell(s.progress(round, false)) {
			return s.found(false)
		}
		s.round(chance)
		exact = s.reached()
	}
	was := s.cost
	if s.polish(); s.reached() {
		exact, was = true, s.cost
	}
	tell(s.progress(s.wanted.Rounds, exact && s.cost == was))
	s.ease()
	return s.found(exact && s.cost == was)
}

// allThrough searches through all there is; it tells whether its steps were enough. Now and
// then it asks whether to go on.
func (s *search) allThrough(tell func(Progress) bool) bool {
	if s.reached() {
		return true
	}
	was := s.cost
	out := s.takeUp(s.wanted.byDay())
	b := best{cost: was, picks: slices.Clone(out)}
	s.steps, s.ask = s.wanted.Nodes, tell
	s.complete(s.wanted.byDay(), &b)
	s.ask = nil
	out = b.picks
	s.chooseAll(out)
	return s.steps >= 0
}

// reached tells whether nothing can be better, by the bound.
func (s *search) reached() bool { return !s.least.less(s.cost) }

func (s *search) progress(round int, exact bool) Progress {
	p := Progress{Round: round, Rounds: s.wanted.Rounds, Exact: exact, Minutes: s.cost.minutes() - s.gaps(), Found: func() Found { return s.found(exact) }}
	for _, pick := range s.chosen {
		if pick.given {
			p.Short += s.wanted.Promises[s.groups[pick.group].promises[0]].short()
		} else {
			p.Batches += len(pick.way.of)
			p.Short += pick.way.short
		}
	}
	p.Least, p.Bound = s.bound()
	return p
}
