package siting

import (
	"math"
	"math/rand/v2"

	"lidmark/domain/yard"
)

// chain is one walk through layouts: a change that saves is kept, and one that costs
// is kept the more rarely the more it costs and the longer the chain has run.
type chain struct {
	trial  *trial
	chance *rand.Rand
	tries  int // so far
	of     int
	hot    float64 // queens: what is still risked in the beginning

	best  float64
	order []int        // in which the best is walked
	kept  *yard.Layout // the best, where it is not the present one with since taken back
	since []change     // what takes the changes since the best back, in order
	now   []change     // memory that is used again
	back  []change
}

func newChain(p *plot, seed, of int) *chain {
	begun := p.start(seed)
	t := newTrial(p, begun, p.walk(begun))
	c := &chain{trial: t, chance: rand.New(rand.NewPCG(p.task.Seed, uint64(seed))), of: of, best: t.queens}
	c.warm()
	return c
}

// warmTries is how many changes are looked at to know what one costs.
const warmTries = 200

// warm sets what is risked in the beginning: a tenth of what a change costs in the
// mean, for most that cost more make no sense at all.
func (c *chain) warm() {
	r := rand.New(rand.NewPCG(c.trial.task.Seed, math.MaxUint64))
	sum, n := 0.0, 0
	for range warmTries {
		was := c.trial.queens
		if c.try(r) {
			if more := c.trial.queens - was; more > 0 {
				sum, n = sum+more, n+1
			}
			c.undo()
		}
	}
	const risked = 0.1
	c.hot = risked * sum / float64(max(1, n))
	c.trial.resum()
	c.best, c.order = c.trial.queens, c.trial.order
}

// try does a proposed change that keeps the rules.
func (c *chain) try(r *rand.Rand) bool {
	t := c.trial
	c.now, c.back = t.deal(r, c.now[:0]), c.back[:0]
	idle := true
	for _, ch := range c.now {
		idle = idle && t.nothing(ch)
		if ch.nuc < 0 && !t.roomy(ch.stand, ch.at) {
			return false
		}
	}
	if idle {
		return false
	}
	for _, ch := range c.now {
		c.back = append(c.back, t.apply(ch))
	}
	ok := t.stocked()
	for _, ch := range c.now {
		ok = ok && (ch.nuc >= 0 || t.fits(ch.stand))
	}
	if !ok {
		c.undo()
	}
	return ok
}

func (c *chain) undo() {
	for k := len(c.back) - 1; k >= 0; k-- {
		c.trial.apply(c.back[k])
	}
}

// run goes on with some tries.
func (c *chain) run(tries int) {
	for range tries {
		if c.tries++; c.tries%max(1, c.of/walksAnew) == 0 {
			c.trial.walkAnew()
			c.keep(nil)
		}
		was, heat := c.trial.queens, c.heat()
		if !c.try(c.chance) {
			continue
		}
		if more := c.trial.queens - was; more > 0 && c.chance.Float64() >= math.Exp(-more/heat) {
			c.undo()
			continue
		}
		c.keep(c.back)
	}
	c.trial.resum()
}

// walksAnew is how often a chain looks for a shorter walk.
const walksAnew = 40

// coldest is what is risked in the end, against the beginning.
const coldest = 1e-3

func (c *chain) heat() float64 {
	return c.hot * math.Pow(coldest, min(1, float64(c.tries)/float64(max(1, c.of))))
}

// tiny is what errors of arithmetic come to, in queens.
const tiny = 1e-9

// keep notes the layout where it is the best so far, else how to come back to it.
func (c *chain) keep(back []change) {
	if c.trial.queens < c.best-tiny {
		c.best, c.order, c.kept, c.since = c.trial.queens, c.trial.order, nil, c.since[:0]
		return
	}
	if c.kept != nil {
		return
	}
	if c.since = append(c.since, back...); len(c.since) > 4*len(c.trial.loss)+64 {
		l := c.bestSoFar()
		c.kept, c.since = &l, c.since[:0]
	}
}

// bestSoFar is the best layout.
func (c *chain) bestSoFar() yard.Layout {
	if c.kept != nil {
		return *c.kept
	}
	l := c.trial.layout.Clone()
	for k := len(c.since) - 1; k >= 0; k-- {
		c.since[k].on(l)
	}
	return l
}
