package allot

import (
	"math"
	"slices"
)

const (
	firstRounds = 25 // of splitting anew, at the root and below it
	laterRounds = 1
	sweeps      = 20 // over all unions, a round
	tiny        = 1e-7
)

// relaxSplit bounds a core with unions. A union's worth may be split over its
// two subjects at will, each split gives a bound, and the least is wanted:
// with the prices held, splits are evened out union by union, which lowers the
// bound or leaves it (the scheme is that of max-product linear programming,
// Globerson and Jaakkola, NIPS 20, 2007); then the prices are found anew.
func (c *core) relaxSplit(rounds int) priced {
	p := c.relax()
	pairs := c.halved()
	best, gains, work := p, c.splitOf(pairs), p.work
	for i := 0; i < rounds && p.torn(pairs); i++ {
		for range sweeps {
			c.even(&p, pairs)
		}
		if p = c.relax(); p.bound < best.bound {
			best, gains = p, c.splitOf(pairs)
		}
		work += p.work + sweeps*len(pairs)
	}
	for i, h := range pairs {
		c.arcs[h[0]].gain, c.arcs[h[1]].gain = gains[i][0], gains[i][1]
	}
	best.work = work
	return best
}

// torn says whether there is a union that one subject wants and one does not.
func (p *priced) torn(pairs []halves) bool {
	return slices.ContainsFunc(pairs, func(h halves) bool { return math.Abs(p.x[h[0]]-p.x[h[1]]) > tiny })
}

func (c *core) splitOf(pairs []halves) [][2]float64 {
	gains := make([][2]float64, len(pairs))
	for i, h := range pairs {
		gains[i] = [2]float64{c.arcs[h[0]].gain, c.arcs[h[1]].gain}
	}
	return gains
}

// even splits the unions so that both subjects would gain as much by each, or
// lose as much, over the best that they have besides.
func (c *core) even(p *priced, pairs []halves) {
	for _, h := range pairs {
		a, b := &c.arcs[h[0]], &c.arcs[h[1]]
		shift := math.Round((p.worth(*a) - c.next(p, h[0]) - p.worth(*b) + c.next(p, h[1])) / 2)
		a.gain -= shift
		b.gain += shift
	}
}

// next is the best that a subject has besides an arc.
func (c *core) next(p *priced, but int) float64 {
	best, k := math.Inf(-1), c.classes[c.arcs[but].class]
	for i := k.first; i < k.last; i++ {
		if i != but {
			best = max(best, p.worth(c.arcs[i]))
		}
	}
	return best
}
