package allot

import (
	"math"
	"slices"
)

// mostWork is how much a search does before it says what it has, in arcs
// looked at: some half a second to a second.
const mostWork = 20_000_000

// A search is branch and bound, the core of the highest bound first. Each is
// bounded, tried for an answer, freed of what no better answer can hold, and
// parted in two at what the bound leaves undecided.
type search struct {
	model
	measure
	open    []*core // not yet bounded themselves: bound is that of where they come from
	best    float64
	settled []settled
	root    priced
	bound   float64
	work    int
}

func (s *search) run() {
	root := s.core.clone()
	root.bound = math.Inf(1)
	s.open = []*core{root}
	for len(s.open) > 0 && s.work < mostWork {
		c := s.next()
		if c.bound > s.best+s.near {
			s.expand(c)
		}
	}
	s.bound = s.best
	for _, c := range s.open {
		if c.bound > s.best+s.near {
			s.bound = max(s.bound, c.bound)
		}
	}
}

// next takes the open core of the highest bound, of equals the latest, which
// is the deepest.
func (s *search) next() *core {
	best := 0
	for i, c := range s.open {
		if c.bound >= s.open[best].bound {
			best = i
		}
	}
	c := s.open[best]
	s.open = slices.Delete(s.open, best, best+1)
	return c
}

// expand bounds a core, tries it for an answer, and parts it.
func (s *search) expand(c *core) {
	rounds := laterRounds
	if s.root.x == nil {
		rounds = firstRounds
	}
	p := c.relaxSplit(rounds)
	if s.root.x == nil {
		s.root = p
	}
	s.work += p.work
	c.bound = min(c.bound, s.floor(p.bound))
	if c.bound <= s.best+s.near {
		return
	}
	s.try(c, &p)
	arc, union := c.undecided(&p)
	if c.bound <= s.best+s.near || arc < 0 {
		return
	}
	d := c.clone()
	s.reduce(d, &p)
	if union != nil {
		s.partUnion(d, *union)
	} else {
		s.partArc(d, arc, int(math.Floor(p.x[arc]+tiny)))
	}
}

// partUnion parts a core in two: without a union, and with it.
func (s *search) partUnion(c *core, h halves) {
	with := c.clone()
	c.forbid(h)
	s.push(c)
	if with.fits(with.arcs[h[0]], 1) && with.fits(with.arcs[h[1]], 1) {
		s.unite(with, h)
		s.push(with)
	}
}

// partArc parts a core in two: with some at most along an arc, and with more.
func (s *search) partArc(c *core, arc, some int) {
	more := c.clone()
	c.arcs[arc].room = some
	s.push(c)
	if more.fits(more.arcs[arc], some+1) {
		more.settle(arc, some+1)
		s.push(more)
	}
}

// reduce takes out of a core what no better answer can have, and settles what
// every better answer must have, by what the bound would lose.
func (s *search) reduce(c *core, p *priced) {
	lost, gap := c.losses(p), p.bound-s.best-s.near
	must := make([]bool, len(c.arcs))
	for _, k := range c.classes {
		kept, last := 0, 0
		for i := k.first; i < k.last; i++ {
			if p.x[i] > 0 || lost[i] < gap {
				kept, last = kept+1, i
			}
		}
		must[last] = kept == 1 && !c.arcs[last].leaves()
	}
	for _, h := range c.halved() {
		if (must[h[0]] || must[h[1]]) && min(p.x[h[0]], p.x[h[1]]) > 1-tiny {
			s.unite(c, h)
		}
	}
	for i, a := range c.arcs {
		switch {
		case must[i] && a.union == 0:
			c.settle(i, c.classes[a.class].count)
		case p.x[i] == 0 && lost[i] >= gap:
			c.arcs[i].room = 0
		}
	}
}

func (s *search) unite(c *core, h halves) { c.unite(h, s.unions[c.arcs[h[0]].union-1].gain) }

func (s *search) push(c *core) {
	c.compact()
	s.open = append(s.open, c)
}

// undecided is the arc at which to part: a union that its subjects see
// differently, the largest first, or else what is mixed most evenly. It is -1
// where nothing is.
func (c *core) undecided(p *priced) (arc int, union *halves) {
	arc = -1
	for _, h := range c.halved() {
		a, b := p.x[h[0]], p.x[h[1]]
		if (math.Abs(a-b) > tiny || mixed(a) > 0) && (arc < 0 || c.both(h) > c.both(*union)) {
			arc, union = h[0], &h
		}
	}
	if arc >= 0 {
		return arc, union
	}
	evenly := 0.0
	for i, x := range p.x {
		if a := c.arcs[i]; !a.leaves() && a.union == 0 && mixed(x) > evenly {
			arc, evenly = i, mixed(x)
		}
	}
	return arc, nil
}

func (c *core) both(h halves) float64 { return c.arcs[h[0]].gain + c.arcs[h[1]].gain }

// mixed is how far a number is from a whole one; 0 within rounding.
func mixed(x float64) float64 {
	if d := math.Abs(x - math.Round(x)); d > tiny {
		return d
	}
	return 0
}
