package season

import (
	"math/rand/v2"
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// search is one search for batches.
type search struct {
	wanted  Wanted
	ground  *ground
	living  *living
	odds    *odds
	free    *free
	larvae  larvae
	latest  calendar.Day // of a graft that could be in time for anything
	sized   map[string][]size
	inYards [][]size // by yard: see [search.sizesIn]
	batches map[batchKey]*batched
	groups  []group
	of      [][]int    // by promise: the groups that it is in
	whole   [][]option // by group: its ways that keep all that is wished, there being room for them with nothing else chosen, the least cost first; nil: not asked for yet
	known   [][]option // by group: all its ways, likewise
	prices  prices     // nil: no bound yet
	have    [][]int32  // what there is of each good by day, nothing chosen yet
	had     []*had     // by promise; nil: nothing is there of it
	weights []int64    // by turn, of a queen short; the first served first
	turn    []int      // by promise
	least   cost       // no plan costs less; 0: no bound yet
	besides int64      // no plan costs more, besides the queens that are short
	chosen  []pick
	served  []bool              // by promise: a chosen group serves it, or it is given up
	cost    cost                // of all that is chosen and given up
	steps   int                 // left of the exact search
	ask     func(Progress) bool // whether to go on with it; nil: it goes on
	stopped bool                // it was not to go on
	passes  func() bool         // whether a way is passed over, in a round; nil: none is
}

// pick is a group with the way chosen for it; without one it is one promise that is
// given up.
type pick struct {
	group int
	way   option
	given bool
}

func newSearch(p *plan.Planner, w Wanted) *search {
	w = w.filled(p)
	first, last := w.From, w.From
	for _, pr := range w.Promises {
		last = max(last, pr.By+laterMost)
	}
	s := &search{
		wanted: w, ground: newGround(p, w.Yards, first, last), odds: newOdds(plan.RatesOf(p.View())), free: freeOf(p), larvae: larvaeOf(p.View()), latest: last,
		sized: map[string][]size{}, batches: map[batchKey]*batched{},
		groups: w.groups(), of: make([][]int, len(w.Promises)), served: make([]bool, len(w.Promises)),
	}
	s.weights, s.turn = w.turns()
	s.whole, s.known = make([][]option, len(s.groups)), make([][]option, len(s.groups))
	for g, group := range s.groups {
		for _, i := range group.promises {
			s.of[i] = append(s.of[i], g)
		}
	}
	for _, pr := range w.Promises {
		s.had = append(s.had, hadBy(p, pr))
	}
	s.limit()
	for _, left := range s.ground.left {
		s.have = append(s.have, slices.Clone(left))
	}
	return s
}

// limit sets what a day may hold, less what is planned already.
func (s *search) limit() {
	g := s.ground
	g.fill(g.besides(grafts), int32(s.wanted.Grafts))
	if s.wanted.Minutes > 0 {
		g.fill(g.besides(minutes), tenths(s.wanted.Minutes))
	}
	s.living = newLiving(g, slices.Max(s.wanted.Larvae))
	for _, b := range standings(g.planner) {
		for _, t := range g.takes(b.ladder, b.size) {
			g.add(t)
		}
		for _, t := range s.living.takes(b) {
			g.add(t)
		}
	}
}

// wholeWays are the ways of a group that keep all that is wished, reckoned when they are
// first asked for.
func (s *search) wholeWays(g int) []option {
	if s.whole[g] == nil {
		s.whole[g] = append([]option{}, s.options(s.groups[g], whole)...)
	}
	return s.whole[g]
}

// ways are the ways of a group, those that keep less than is wished among them: see [search.levels].
func (s *search) ways(g int) []option {
	if s.known[g] == nil {
		all := slices.Clone(s.wholeWays(g))
		for _, l := range s.levels(s.groups[g]) {
			all = append(all, s.options(s.groups[g], l)...)
		}
		slices.SortStableFunc(all, byCost)
		s.known[g] = all
	}
	return s.known[g]
}

// choose takes a way for a group, or gives its promise up; back takes the last one
// back.
func (s *search) choose(p pick) {
	s.chosen = append(s.chosen, p)
	s.mark(p, true)
}

func (s *search) back() {
	p := s.chosen[len(s.chosen)-1]
	s.chosen = s.chosen[:len(s.chosen)-1]
	s.release(p)
}

// release gives back what a pick that is no longer chosen took.
func (s *search) release(p pick) {
	if !p.given {
		s.ground.put(p.way, -1)
	}
	s.mark(p, false)
}

func (s *search) mark(p pick, served bool) {
	for _, i := range s.groups[p.group].promises {
		s.served[i] = served
	}
	if served {
		s.cost = s.cost.plus(s.costOf(p))
	} else {
		s.cost = s.cost.minus(s.costOf(p))
	}
}

func (s *search) costOf(p pick) cost {
	if p.given {
		return s.short(s.groups[p.group].promises[0])
	}
	return p.way.cost
}

// alone is the group of one promise.
func (s *search) alone(promise int) int {
	for _, g := range s.of[promise] {
		if len(s.groups[g].promises) == 1 {
			return g
		}
	}
	return -1
}

// first is the first answer: the promises in their turn and by their day, each by the
// cheapest way there is room for that keeps it whole, else by the cheapest there is, else
// given up.
func (s *search) first() {
	order := s.wanted.byDay()
	slices.SortStableFunc(order, func(a, b int) int { return s.turn[a] - s.turn[b] })
	for _, p := range order {
		g := s.alone(p)
		if !s.serve(g, s.wholeWays(g)) && !s.serve(g, s.ways(g)) {
			s.choose(pick{group: g, given: true})
		}
	}
}

// serve takes the cheapest of some ways of a group that there is room for; false where there
// is none.
func (s *search) serve(group int, ways []option) bool {
	for _, way := range ways {
		if s.ground.take(way, none) {
			s.choose(pick{group: group, way: way})
			return true
		}
	}
	return false
}

// chance is the source of chance of a seed.
func chance(seed uint64) *rand.Rand { return rand.New(rand.NewPCG(seed, 0)) }
