package season

import (
	"math/rand/v2"
	"slices"
	"sort"
)

// How many promises a round takes up again, for how many steps each is looked
// for at most, and how few of the ways: the fewer, the farther it gets. Conventions of the search.
const (
	roundLeast = 2
	roundMost  = 7
	roundSteps = 20_000
	roundParts = 6 // a round looks at all ways, at one in two, in four and so on, so many times at most
)

// round takes up some promises that lie near each other, with all that their
// batches serve, and serves them anew; as it was, where nothing is better.
func (s *search) round(chance *rand.Rand) {
	order := s.wanted.byDay()
	n := min(len(order), roundLeast+chance.IntN(roundMost-roundLeast+1))
	out := s.takeUp(near(order, n, chance))
	var open []int
	was := s.cost
	for _, p := range out {
		open = append(open, s.groups[p.group].promises...)
		was = was.plus(s.costOf(p))
	}
	slices.SortFunc(open, func(a, b int) int { return slices.Index(order, a) - slices.Index(order, b) })
	b := best{cost: was}
	kept := len(s.chosen)
	s.steps = roundSteps
	if part := 1 << chance.IntN(roundParts); part > 1 {
		s.passes = func() bool { return chance.IntN(part) > 0 }
	}
	s.complete(open, &b)
	s.passes = nil
	if b.found {
		out = b.picks[kept:]
	}
	s.chooseAll(out)
}

// near are so many promises out of a row of twice as many.
func near(order []int, n int, chance *rand.Rand) []int {
	row := min(len(order), 2*n)
	from := chance.IntN(len(order) - row + 1)
	all := slices.Clone(order[from : from+row])
	chance.Shuffle(row, func(i, j int) { all[i], all[j] = all[j], all[i] })
	return all[:n]
}

// takeUp takes back all that serves some promises.
func (s *search) takeUp(promises []int) (out []pick) {
	touched := func(p pick) bool {
		return slices.ContainsFunc(s.groups[p.group].promises, func(i int) bool { return slices.Contains(promises, i) })
	}
	kept := s.chosen[:0:0]
	for _, p := range s.chosen {
		if touched(p) {
			s.release(p)
			out = append(out, p)
		} else {
			kept = append(kept, p)
		}
	}
	s.chosen = kept
	return out
}

// polish serves each promise by itself that is not kept whole anew beside all others, with as many of its queens as
// there is room for.
func (s *search) polish() {
	for _, p := range s.wanted.byDay() {
		g, of := s.alone(p), s.wanted.Promises[p]
		i := slices.IndexFunc(s.chosen, func(c pick) bool { return c.group == g && (c.given || c.way.short > 0) })
		if i < 0 {
			continue
		}
		was, now := s.chosen[i], of.kept
		if !was.given {
			now = of.Queens - was.way.short
		}
		s.chosen = slices.Delete(s.chosen, i, i+1)
		s.release(was)
		if n := s.most(p); n <= now || !s.serve(g, s.options(s.groups[g], level{short: of.Queens - n})) {
			s.chooseAll([]pick{was})
		}
	}
}

// most is how many queens of a promise there is room for, fewer than all of it.
func (s *search) most(promise int) int {
	p := s.wanted.Promises[promise]
	return p.kept + sort.Search(p.short()-1, func(i int) bool { return !s.fits(promise, p.kept+i+1, p.By) })
}
