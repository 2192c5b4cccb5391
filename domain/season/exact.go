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
// be better by the prices of what is left; when its steps are up it stops short.
func (s *search) complete(open []int, b *best) {
	if s.steps--; s.steps < 0 {
		return
	}
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
			if s.ground.take(way, none) == none {
				s.descend(pick{group: g, way: way}, open, b)
			}
		}
	}
	if p := open[0]; s.cost.plus(s.short(p)).plus(rest).minus(s.prices[p]).less(b.cost) {
		s.descend(pick{group: s.alone(p), given: true}, open, b)
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
