package season

import (
	"math"
	"slices"
)

// relaxed looks for a bound on what any plan costs that knows how much there is of
// each good: every plan is charged a toll for each unit of a good on each day, and
// gets back what all there is of it would cost. Within the limits a plan pays no more
// than it gets back, so the least that any choice costs with its tolls, limits
// forgotten, less what comes back, is a bound; the tolls are raised where the cheapest
// choice takes more than there is and lowered where it takes less (Lagrangian
// relaxation by subgradients: Held, Wolfe & Crowder 1974, Math Programming 6:62-88). The
// least cost of a choice is itself bounded by prices of the promises, see [prices].
type relaxed struct {
	*search
	batches []*batched
	units   []float64   // by good: what amounts are told in, the most there is
	tolls   [][]float64 // by good and day, of a unit
	sums    [][]float64 // of the tolls up to before a day
	least   []float64   // by group: its cheapest way, tolls included
	way     []int       // by group: that way
}

// How often tolls are changed, how far at first, after how many times without a better
// bound by half as much, and after how many times without any gain no more. Conventions
// of the search.
const (
	relaxRounds = 120
	relaxStep   = 1.5
	relaxWait   = 8
	relaxVain   = 30
)

// relax is the best bound that was found on the cost of any plan, where one is known
// already, and a plan.
func (s *search) relax(least, known cost) cost {
	r := newRelaxed(s)
	best, step, waited := 0.0, relaxStep, 0
	for round := range relaxRounds {
		if round == relaxVain && best <= least.float() {
			break
		}
		r.charge()
		prices := r.priced()
		paid := r.comesBack()
		value := sumOf(prices) - paid
		value -= digits * (math.Abs(value) + 2*paid)
		if waited++; value > best {
			best, waited = value, 0
		}
		if waited > relaxWait {
			step, waited = step/2, 0
		}
		if !r.change(prices, step*max(0, known.float()-value)) {
			break
		}
	}
	if found := costOf(best); least.less(found) {
		return found
	}
	return least
}

// digits is more than sums of so many floats are off by.
const digits = 1e-12

func newRelaxed(s *search) *relaxed {
	r := &relaxed{search: s, least: make([]float64, len(s.groups)), way: make([]int, len(s.groups))}
	for _, left := range s.have {
		days := len(left)
		r.tolls, r.sums = append(r.tolls, make([]float64, days)), append(r.sums, make([]float64, days+1))
		r.units = append(r.units, float64(max(1, slices.Max(left))))
	}
	for _, b := range s.batches {
		r.batches = append(r.batches, b)
	}
	return r
}

// charge reckons what each batch pays, and the cheapest way of each group.
func (r *relaxed) charge() {
	for good, tolls := range r.tolls {
		for d, toll := range tolls {
			r.sums[good][d+1] = r.sums[good][d] + toll
		}
	}
	for _, b := range r.batches {
		b.pays = 0
		for _, t := range b.takes {
			if from, to := r.ground.within(t); from < to {
				b.pays += float64(t.amount) / r.units[t.good] * (r.sums[t.good][to] - r.sums[t.good][from])
			}
		}
	}
	for g := range r.groups {
		r.least[g] = math.Inf(1)
		for i, way := range r.ways(g) {
			pays := way.cost.float()
			for _, b := range way.of {
				pays += b.pays
			}
			if pays < r.least[g] {
				r.least[g], r.way[g] = pays, i
			}
		}
	}
}

// comesBack is what all there is of each good would pay.
func (r *relaxed) comesBack() (sum float64) {
	for good, tolls := range r.tolls {
		for d, toll := range tolls {
			sum += toll * float64(max(0, r.have[good][d])) / r.units[good]
		}
	}
	return sum
}

// priced are prices of the promises: those of no group together are more than its
// cheapest way. Each gets its part of a group by its queens, and then as much more as
// there is room for, by the day.
func (r *relaxed) priced() []float64 {
	prices := make([]float64, len(r.of))
	for p := range prices {
		prices[p] = r.short(p).float()
		for _, g := range r.of[p] {
			if len(r.ways(g)) > 0 {
				part := float64(r.wanted.Promises[p].Queens) / float64(max(1, r.queensOf(g)))
				prices[p] = min(prices[p], part*r.least[g])
			}
		}
	}
	for _, p := range r.wanted.byDay() {
		slack := r.short(p).float() - prices[p]
		for _, g := range r.of[p] {
			slack = min(slack, r.slack(g, prices))
		}
		prices[p] += max(0, slack)
	}
	return prices
}

// slack is what the cheapest way of a group costs beyond the prices of its promises.
func (r *relaxed) slack(g int, prices []float64) float64 {
	slack := r.least[g]
	for _, p := range r.groups[g].promises {
		slack -= prices[p]
	}
	return slack
}

// change moves each toll by how much more or less the cheapest choice takes of its
// good than there is; false where there is nothing to move.
func (r *relaxed) change(prices []float64, far float64) bool {
	over := r.over(prices)
	var squares float64
	for good, days := range over {
		for d := range days {
			if days[d] > 0 || r.tolls[good][d] > 0 {
				squares += days[d] * days[d]
			} else {
				days[d] = 0
			}
		}
	}
	if squares == 0 || far == 0 {
		return false
	}
	for good, days := range over {
		for d := range days {
			r.tolls[good][d] = max(0, r.tolls[good][d]+far*days[d]/squares)
		}
	}
	return true
}

// over is how much more than there is the cheapest choice takes of each good on each
// day, in units: each promise by the group that costs least beyond its prices, or
// given up.
func (r *relaxed) over(prices []float64) [][]float64 {
	over := make([][]float64, len(r.have))
	for good, left := range r.have {
		over[good] = make([]float64, len(left))
		for d, n := range left {
			over[good][d] = -float64(max(0, n)) / r.units[good]
		}
	}
	served := make([]bool, len(prices))
	for _, p := range r.wanted.byDay() {
		if served[p] {
			continue
		}
		g, slack := -1, r.short(p).float()-prices[p]
		for _, of := range r.of[p] {
			open := !slices.ContainsFunc(r.groups[of].promises, func(i int) bool { return served[i] })
			if s := r.slack(of, prices); open && s < slack {
				g, slack = of, s
			}
		}
		served[p] = true
		if g < 0 {
			continue
		}
		for _, i := range r.groups[g].promises {
			served[i] = true
		}
		r.use(over, r.ways(g)[r.way[g]])
	}
	return over
}

func (r *relaxed) use(over [][]float64, way option) {
	for _, b := range way.of {
		for _, t := range b.takes {
			from, to := r.ground.within(t)
			for d := from; d < to; d++ {
				over[t.good][d] += float64(t.amount) / r.units[t.good]
			}
		}
	}
}

func sumOf(all []float64) (sum float64) {
	for _, x := range all {
		sum += x
	}
	return sum
}
