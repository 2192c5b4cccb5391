package season

import "slices"

// best is the best that was found for some promises.
type best struct {
	cost  cost // of all, what stays as it is included; only less counts
	picks []pick
	found bool
}

// complete looks for the best way to serve some promises that are not served, all
// else staying as it is. It goes through all there are, but for those that cannot
// be better by the prices of what is left; when its steps are up, each a way that is tried, it
// stops short.
func (s *search) complete(open []int, b *best) {
	if len(open) == 0 {
		if s.cost.less(b.cost) {
			b.cost, b.found = s.cost, true
			b.picks = append(b.picks[:0], s.chosen...)
		}
		return
	}
	rest := s.prices.sum(open)
	for _, g := range s.candidates(open) {
		saved := s.prices.sum(s.groups[g].promises)
		for _, way := range s.ways(g) {
			if !s.cost.plus(way.cost).plus(rest).minus(saved).less(b.cost) {
				break
			}
			if s.passes != nil && s.passes() {
				continue
			}
			if !s.step(b) {
				return
			}
			if s.ground.take(way, none) {
				s.descend(pick{group: g, way: way}, open, b)
			}
		}
	}
	if p := open[0]; s.step(b) && s.cost.plus(s.short(p)).plus(rest).minus(s.prices[p]).less(b.cost) {
		s.descend(pick{group: s.alone(p), given: true}, open, b)
	}
}

// step tells whether a step is left, and every so many of them asks whether to go on.
func (s *search) step(b *best) bool {
	if s.steps--; s.steps >= 0 && s.steps%askEvery == 0 && s.ask != nil && !s.asked(b) {
		s.steps, s.stopped = -1, true
	}
	return s.steps >= 0
}

// askEvery is after how many steps of the exact search it is asked whether to go on. A convention
// of the search.
const askEvery = 100_000

// asked shows the best that was found and asks whether to go on.
func (s *search) asked(b *best) (on bool) {
	now := slices.Clone(s.chosen)
	for range now {
		s.back()
	}
	s.chooseAll(b.picks)
	on = s.ask(s.progress(0, false))
	for range b.picks {
		s.back()
	}
	s.chooseAll(now)
	return on
}

// chooseAll takes some ways for which there is room.
func (s *search) chooseAll(all []pick) {
	for _, p := range all {
		if !p.given {
			s.ground.put(p.way, 1)
		}
		s.choose(p)
	}
}

func (s *search) descend(p pick, open []int, b *best) {
	s.choose(p)
	s.complete(slices.DeleteFunc(slices.Clone(open), func(i int) bool { return s.served[i] }), b)
	s.back()
}

// candidates are the groups of the first of some promises that are within them,
// those first that cost least beyond their prices.
func (s *search) candidates(open []int) (all []int) {
	for _, g := range s.of[open[0]] {
		within := !slices.ContainsFunc(s.groups[g].promises, func(i int) bool { return !slices.Contains(open, i) })
		if within && len(s.ways(g)) > 0 {
			all = append(all, g)
		}
	}
	beyond := func(g int) cost { return s.ways(g)[0].cost.minus(s.prices.sum(s.groups[g].promises)) }
	slices.SortStableFunc(all, func(a, b int) int { return beyond(a).compare(beyond(b)) })
	return all
}
