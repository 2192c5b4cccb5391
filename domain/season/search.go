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
	latest  calendar.Day // of a graft that could be in time for anything
	sized   map[string][]size
	batches map[batchKey]*batched
	groups  []group
	of      [][]int    // by promise: the groups that it is in
	known   [][]option // by group: its ways, the least cost first; nil: not asked for yet
	prices  prices     // nil: no bound yet
	have    [][]int32  // what there is of each good by day, nothing chosen yet
	least   cost       // no plan costs less; 0: no bound yet
	besides cost       // no plan costs more, besides the queens that are short
	chosen  []pick
	served  []bool // by promise: a chosen group serves it, or it is given up
	cost    cost   // of all that is chosen and given up
	steps   int    // left of the exact search
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
		wanted: w, ground: newGround(p, w.Yards, first, last), odds: newOdds(plan.RatesOf(p.View())), latest: last,
		sized: map[string][]size{}, batches: map[batchKey]*batched{},
		groups: w.groups(), of: make([][]int, len(w.Promises)), served: make([]bool, len(w.Promises)),
	}
	s.known = make([][]option, len(s.groups))
	for g, group := range s.groups {
		for _, i := range group.promises {
			s.of[i] = append(s.of[i], g)
		}
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
		for _, t := range s.living.takes(b.ladder, b.size.Yard, b.size.Nucs, b.virgins) {
			g.add(t)
		}
	}
}

// ways are the ways of a group, reckoned when they are first asked for.
func (s *search) ways(g int) []option {
	if s.known[g] == nil {
		s.known[g] = append([]option{}, s.options(s.groups[g])...)
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
	sign := cost(1)
	if !served {
		sign = -1
	}
	for _, i := range s.groups[p.group].promises {
		s.served[i] = served
	}
	s.cost += sign * s.costOf(p)
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

// first is the first answer: the promises by their day, each by the cheapest way
// there is room for, else given up.
func (s *search) first() {
	for _, p := range s.wanted.byDay() {
		if !s.served[p] {
			s.serve(p, s.alone(p))
		}
	}
}

func (s *search) serve(promise, group int) {
	for _, way := range s.ways(group) {
		if s.ground.take(way, none) == none {
			s.choose(pick{group: group, way: way})
			return
		}
	}
	s.choose(pick{group: s.alone(promise), given: true})
}

// chance is the source of chance of a seed.
func chance(seed uint64) *rand.Rand { return rand.New(rand.NewPCG(seed, 0)) }
