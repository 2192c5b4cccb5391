package season

import "math/rand/v2"

// prices say what each promise costs at least: those of no group together are more
// than the group's cheapest way, and none is more than to be short of its queens.
// So the prices of some promises are a bound on what any plan for them costs,
// whatever it may take (the dual of the choice of groups).
type prices []cost

// pricesOf raises prices one by one until none can be raised, over and over from
// lower ones in another order, and keeps the best.
func (s *search) pricesOf(chance *rand.Rand) prices {
	order := make([]int, len(s.wanted.Promises))
	for i := range order {
		order[i] = i
	}
	best := make(prices, len(order))
	now := make(prices, len(order))
	for round := range priceRounds {
		s.raise(now, order)
		if best.sum(order).less(now.sum(order)) {
			copy(best, now)
		}
		chance.Shuffle(len(order), func(i, j int) { order[i], order[j] = order[j], order[i] })
		for i := range now {
			now[i] = best[i].part(int64(chance.IntN(priceCuts+1)), priceCuts)
		}
		if round%2 == 0 {
			s.share(now)
		}
	}
	return best
}

// How often prices are lowered and raised again, and into how many parts one is cut
// to be lowered. Conventions of the search.
const (
	priceRounds = 60
	priceCuts   = 8
)

// raise raises each price as far as its groups let it.
func (s *search) raise(now prices, order []int) {
	for _, p := range order {
		slack := s.short(p).minus(now[p])
		for _, g := range s.of[p] {
			if o := s.ways(g); len(o) > 0 {
				slack = lower(slack, o[0].cost.minus(now.sum(s.groups[g].promises)))
			}
		}
		now[p] = now[p].plus(slack)
	}
}

// share sets each price to its part, by queens, of the cheapest group for it.
func (s *search) share(now prices) {
	for p := range now {
		now[p] = s.short(p)
		for _, g := range s.of[p] {
			if o := s.ways(g); len(o) > 0 {
				now[p] = lower(now[p], o[0].cost.part(int64(s.wanted.Promises[p].Queens), int64(max(1, s.queensOf(g)))))
			}
		}
	}
}

// queensOf are the queens of all promises of a group.
func (s *search) queensOf(g int) (queens int) {
	for _, i := range s.groups[g].promises {
		queens += s.wanted.Promises[i].Queens
	}
	return queens
}

func (p prices) sum(of []int) (sum cost) {
	for _, i := range of {
		sum = sum.plus(p[i])
	}
	return sum
}

// short is what it costs to be short of a promise.
func (s *search) short(promise int) cost {
	return cost{short: s.weights[s.turn[promise]] * int64(s.wanted.Promises[promise].short())}
}
