package season

import (
	"cmp"
	"math"
	"slices"
)

// cost is what plans are told apart by: queens short first, then work.
type cost struct {
	short int64 // queens short, each with the weight of its promise; see [Wanted.turns]
	rest  int64 // tenths of minutes, then grafts, then days by which a graft is earlier than the last that could be
}

const (
	dayCost   int64 = 1
	graftCost int64 = 100_000
	tenthCost int64 = 1000 * graftCost
	restMost        = 10_000_000 * float64(tenthCost) // more than any rest: a queen short as one number
)

func (c cost) plus(o cost) cost  { return cost{c.short + o.short, c.rest + o.rest} }
func (c cost) minus(o cost) cost { return cost{c.short - o.short, c.rest - o.rest} }

// less tells whether it is better: fewer queens short, or as many and less of the rest.
func (c cost) less(o cost) bool { return c.compare(o) < 0 }

func (c cost) compare(o cost) int {
	return cmp.Or(cmp.Compare(c.short, o.short), cmp.Compare(c.rest, o.rest))
}

// lower is the lower of two.
func lower(a, b cost) cost {
	if b.less(a) {
		return b
	}
	return a
}

// part is no more than so many of so many parts of a cost that is not negative.
func (c cost) part(n, of int64) cost { return cost{c.short / of * n, c.rest / of * n} }

// float is the cost as one number, and costOf the cost of such a number, rounded down.
func (c cost) float() float64 { return float64(c.short)*restMost + float64(c.rest) }

func costOf(float float64) cost {
	short := math.Floor(float / restMost)
	return cost{int64(short), int64(max(0, float-short*restMost))}
}

// minutes are the minutes of a cost.
func (c cost) minutes() float64 { return float64(c.rest/tenthCost) / 10 }

// turns are the weights of a queen short of the promises of each turn, the first served
// first, and by promise the turn in which it is: a queen of one turn weighs more than all
// of those after it together, so that no plan is better that serves a later one in its stead.
// Turns of which that is more than a number holds, the last of dozens, count as one.
func (w Wanted) turns() (weights []int64, of []int) {
	var all []int
	for _, p := range w.Promises {
		all = append(all, p.priority())
	}
	slices.Sort(all)
	all = slices.Compact(all)
	queens := make([]int64, len(all))
	of = make([]int, len(w.Promises))
	for i, p := range w.Promises {
		of[i] = slices.Index(all, p.priority())
		queens[of[i]] += int64(p.Queens)
	}
	for {
		weights, ok := weigh(queens)
		if ok {
			return weights, of
		}
		last := len(queens) - 1
		queens[last-1] += queens[last]
		queens = queens[:last]
		for i := range of {
			of[i] = min(of[i], last-1)
		}
	}
}

// weigh are the weights of a queen of each turn; not ok where they are too much for a
// number.
func weigh(queens []int64) (weights []int64, ok bool) {
	weights = make([]int64, len(queens))
	var sum int64
	for i, n := range slices.Backward(queens) {
		weights[i] = sum + 1
		if len(queens) > 1 && weights[i] > weighMost/max(1, n) {
			return nil, false
		}
		sum += weights[i] * n
	}
	return weights, true
}

// weighMost is the most that a turn may weigh in all: sums of two fit into a number.
const weighMost = math.MaxInt64 / 4

// priority is that of the order, as orders are served: those without one after all that
// have one, and with them what is wished without an order.
func (p Promise) priority() int { return cmp.Or(p.Priority, math.MaxInt) }
