package allot

import (
	"math"
	"slices"
)

// try makes answers out of a bounded core: of the flow within the limit and of
// the mixture, rounded down. Where subjects see their unions differently, the
// unions that both want are chosen, the others are out, and the rest is
// bounded anew.
func (s *search) try(c *core, p *priced) {
	pairs := c.halved()
	agreed := func(h halves) bool { return p.x[h[0]] > 1-tiny && p.x[h[1]] > 1-tiny }
	if !slices.ContainsFunc(pairs, func(h halves) bool { return !agreed(h) && max(p.x[h[0]], p.x[h[1]]) > 0 }) {
		s.offer(c, p, pairs)
		return
	}
	d := c.clone()
	for _, h := range pairs {
		if agreed(h) && d.fits(d.arcs[h[0]], 1) && d.fits(d.arcs[h[1]], 1) {
			s.unite(d, h)
		} else {
			d.forbid(h)
		}
	}
	d.compact()
	q := d.relax()
	s.work += q.work
	s.offer(d, &q, nil)
}

// offer keeps the better of two roundings of a core if it is the best so far:
// the mixture rounded down, and the flow within the limit, led towards the one
// beyond it as far as that goes. What is left over is used for better ways.
func (s *search) offer(c *core, p *priced, pairs []halves) {
	near := &rest{core: c, x: slices.Clone(p.under)}
	near.count()
	near.follow(p.over)
	down := &rest{core: c, x: make([]int, len(p.x))}
	for i, x := range p.x {
		down.x[i] = int(math.Floor(x + tiny))
	}
	for _, k := range c.classes {
		down.x[k.first] = k.count
		for i := k.first + 1; i < k.last; i++ {
			down.x[k.first] -= down.x[i]
		}
	}
	for _, r := range []*rest{near, down} {
		for _, h := range pairs {
			if r.x[h[0]] != r.x[h[1]] {
				c.reset(r.x, h[0])
				c.reset(r.x, h[1])
			}
		}
		if c.gainOf(r.x) < p.bound-s.near {
			r.upgrade()
		}
		if gain := c.gainOf(r.x); gain > s.best {
			s.best, s.settled = gain, c.settledBy(r.x)
		}
	}
}

// reset leaves the subject of half a union.
func (c *core) reset(x []int, half int) {
	x[c.classes[c.arcs[half].class].first] += x[half]
	x[half] = 0
}

// gainOf is what a core gains by a flow, with what is settled.
func (c *core) gainOf(x []int) float64 {
	gain := c.gain
	for i, a := range c.arcs {
		gain += a.gain * float64(x[i])
	}
	return gain
}

// settledBy lists what is settled, with all of a flow.
func (c *core) settledBy(x []int) []settled {
	all := slices.Clone(c.settled)
	for i, a := range c.arcs {
		if x[i] > 0 && !a.leaves() && !a.second {
			all = append(all, settled{group: c.classes[a.class].group, way: a.way, many: x[i], union: a.union})
		}
	}
	return all
}
