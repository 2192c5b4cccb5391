package siting

import (
	"fmt"

	"lidmark/domain/practice"
	"lidmark/domain/spread"
	"lidmark/domain/yard"
)

// Search looks for a better layout, step by step. It may not be used by two at once.
type Search struct {
	plot   *plot
	chains []*chain
	now    Bill // how the boxes stand
	out    Bill // with all boxes turned outwards, as they stand and are marked
}

// chainsUsed is how many chains run, whatever the processors: the same on any machine.
const chainsUsed = 2

// New begins a search. It fails where there is no place for a stand that is added.
func New(t Task, n practice.Numbers) (*Search, error) {
	if t.Prices == (Prices{}) {
		t.Prices = PricesOf(n)
	}
	p := newPlot(t, n)
	p.begun = p.was
	if err := p.settle(); err != nil {
		return nil, err
	}
	s := &Search{plot: p, chains: make([]*chain, chainsUsed)}
	spread.Singly(len(s.chains), func(i int) { s.chains[i] = newChain(p, i, t.Tries/chainsUsed) })
	s.now = s.Bill(p.begun)
	s.out = s.Bill(p.outwards(p.begun))
	return s, nil
}

// Step goes on with so many tries, and tells whether there are more to come.
func (s *Search) Step(tries int) (more bool) {
	spread.Singly(len(s.chains), func(i int) {
		c := s.chains[i]
		c.run(min(tries/chainsUsed, c.of-c.tries))
	})
	return s.Tries() < s.Of()
}

// Tries is how many tries were made.
func (s *Search) Tries() (sum int) {
	for _, c := range s.chains {
		sum += c.tries
	}
	return sum
}

// Of is after how many tries the search is over.
func (s *Search) Of() (sum int) {
	for _, c := range s.chains {
		sum += c.of
	}
	return sum
}

// Bill reckons what a layout of the same boxes costs, anew and in full.
func (s *Search) Bill(l yard.Layout) Bill { return s.plot.bill(l, s.plot.walk(l), s.plot.numbers) }

// Found is the best layout so far.
type Found struct {
	Layout   yard.Layout
	Was, Now Bill // added stands stand in Was where the search began to look for places
	Outwards Bill // of Was with each box that may be turned on its place facing its own side
	Tries    int
	Of       int
	Steps    []Step   // what changes, with what it gains
	Left     []string // letters of the stands that are left as they are and could be changed
}

// Best is the best layout so far, without the changes that gain too little.
func (s *Search) Best() Found {
	best := s.best()
	t := newTrial(s.plot, best.bestSoFar(), best.order)
	t.walkAnew()
	t.prune()
	t.walkAnew()
	f := Found{Layout: t.layout, Was: s.now, Outwards: s.out, Now: s.plot.bill(t.layout, t.order, s.plot.numbers), Tries: s.Tries(), Of: s.Of()}
	f.Steps, f.Left = t.steps()
	return f
}

// best is the chain that has the best layout.
func (s *Search) best() *chain {
	best := s.chains[0]
	for _, c := range s.chains[1:] {
		if c.best < best.best-tiny {
			best = c
		}
	}
	return best
}

// NoRoom says that there is no place for a stand that is to be added.
type NoRoom struct {
	Stand  string // its letter
	Placed int    // stands for which there was one
	Of     int
}

// Error says for how many there is room and what to do.
func (e *NoRoom) Error() string {
	return fmt.Sprintf("stand %s: there is room for %d of %d more stands: add fewer, draw the boundary wider, or let stands stand nearer", e.Stand, e.Placed, e.Of)
}
