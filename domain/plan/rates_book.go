package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// RatesOf are the keeper's rates: the defaults of his numbers, moved by what the
// batches of the view tell. Only counts that are whole count. Take and capped cells
// need both counts that belong together, and a count that is more than there was
// is left out. Cells and virgins given count by batch, once the fate of each is
// seen or the time of its virgins is over: else those who lay early would make the
// rate look better than it is. What became of them is told by eggs and looks; where
// the book has a gap, or eggs whose mother is in doubt, it is left out. How far batches
// stray is learned from the same counts, see [Rate.Luck].
func RatesOf(v *book.View) Rates {
	return ratesOf(v, func(c *counting, b *book.Batch) {
		c.reared(b)
		c.given(b)
	})
}

// RearedOf are the rates of [RatesOf] up to the ripe cells, and the defaults from there on.
// Of no nuc anything is asked.
func RearedOf(v *book.View) Rates { return ratesOf(v, (*counting).reared) }

func ratesOf(v *book.View, count func(*counting, *book.Batch)) Rates {
	c := counting{view: v, rates: DefaultRates(v.Numbers())}
	for b := range v.Batches() {
		count(&c, b)
	}
	for l := range c.rates.Link {
		c.rates.Link[l] = c.rates.Link[l].told(c.told[l])
	}
	return c.rates
}

type counting struct {
	view  *book.View
	rates Rates             // the defaults, while it is counted
	told  [linkCount][]told // by batch
}

func (c *counting) count(l Link, won, tried float64) {
	if tried > 0 {
		c.told[l] = append(c.told[l], told{won, tried})
	}
}

// reared counts what became of the larvae. A take of none is a graft that failed
// outright and says nothing of the take of those that do not.
func (c *counting) reared(b *book.Batch) {
	larvae, taken, capped := float64(b.Larvae), float64(b.Taken.N), float64(b.Capped.N)
	switch {
	case b.Taken.Counted() && b.Taken.N > b.Larvae:
		return
	case b.Taken.Counted() && b.Taken.N == 0, !b.Taken.Counted() && b.Capped.Counted() && b.Capped.N == 0:
		c.count(GraftWorks, 0, 1)
		return
	case b.Taken.Counted():
		c.count(GraftWorks, 1, 1)
		c.count(Taken, taken, larvae)
	case b.Capped.Counted():
		c.count(GraftWorks, 1, 1)
		return
	}
	if b.Capped.Counted() && capped <= taken {
		c.count(RipeOfTaken, capped, taken)
	}
}

// given counts what became of the cells and virgins given, where that is settled
// for all.
func (c *counting) given(b *book.Batch) {
	var fates []fate
	for _, g := range b.Given {
		f := c.fate(b, g)
		if f.open {
			return
		}
		if !f.gap {
			fates = append(fates, f)
		}
	}
	var won, tried [linkCount]float64
	for _, f := range fates {
		c.settle(f, &won, &tried)
	}
	for l := range linkCount {
		c.count(l, won[l], tried[l])
	}
}

// settle adds one fate. A loss that nobody saw happen belongs to its links in the
// shares in which losses fall to them by the defaults.
func (c *counting) settle(f fate, won, tried *[linkCount]float64) {
	links := []Link{EmergedOfRipe, CellAccepted, LayingOfAccepted}
	if f.virgin {
		links = []Link{VirginAccepted, LayingOfAccepted}
	}
	through, lost := c.losses(links, f)
	for i, l := range links {
		won[l] += through[i]
		tried[l] += through[i] + lost[i]
	}
	if f.laid && f.caught {
		tried[GoodOfLaying]++
		if !f.culled {
			won[GoodOfLaying]++
		}
	}
}

// losses are, by link, the chance that she came through it and that she was lost
// at it, as far as the fate tells.
func (c *counting) losses(links []Link, f fate) (through, lost []float64) {
	through, lost = make([]float64, len(links)), make([]float64, len(links))
	reached, all := 1.0, 0.0
	for i, l := range links {
		share := c.rates.Link[l].Default
		lost[i] = reached * (1 - share)
		if f.laid || f.torn && l != EmergedOfRipe || !f.torn && f.passed(l) {
			lost[i] = 0
		}
		all += lost[i]
		reached *= share
	}
	if last := len(links) - 1; all == 0 && !f.laid {
		lost[last], all = 1, 1
	}
	sum := 0.0
	for i := range links {
		if all > 0 {
			lost[i] /= all
		}
		sum += lost[i]
		through[i] = 1 - sum
	}
	return through, lost
}

// fate is what became of a cell or virgin that was given.
type fate struct {
	virgin                 bool // a virgin was given
	open                   bool // not settled yet
	gap                    bool // the book does not tell
	laid                   bool
	caught, culled         bool
	torn, emerged, reigned bool // seen: cell torn at the side; cell open at the tip; virgin or queen
}

// passed tells whether she was seen to have come through a link.
func (f fate) passed(l Link) bool {
	switch l {
	case EmergedOfRipe:
		return f.emerged || f.reigned
	case CellAccepted, VirginAccepted:
		return f.reigned
	default:
		return false
	}
}

// over tells whether the time of a virgin is over who was given then, or in her
// cell.
func (c *counting) over(g book.Gift) bool {
	n := c.view.Numbers()
	days := n.Get(practice.VirginTooLate) + n.Get(practice.GraftToEmerge) - n.Get(practice.CellsIn)
	return c.view.On().Sub(g.At.Instant).Hours() > 24*days
}
