package allot

import "math"

// Priced is a core under a price of minutes: two flows at the best price, one
// within the limit and one beyond it, and the mixture of both that uses up the
// minutes. Where minutes do not bind the price is 0 and both are one.
type priced struct {
	price float64 // units a step of minutes
	more  []float64
	bound float64   // above what the core gains, settled and open
	x     []float64 // the mixture: how many of the class go along each arc
	under []int     // the flow within the limit
	over  []int     // the flow beyond it, or the same
	work  int
}

// fine rounds down to the fraction that prices have, so that sums are exact.
func fine(price float64) float64 {
	return math.Floor(math.Ldexp(price, priceBits)) * (1.0 / (1 << priceBits))
}

// point is a flow with its totals, a line over the prices: what it gains less
// the price of what it is beyond the limit.
type point struct {
	x             []int
	gain, minutes float64
}

func (p point) at(price, limit float64) float64 { return p.gain - price*(p.minutes-limit) }

// relax bounds a core from above. The bound as a function of the price is the
// upper hull of the lines of all flows; it is least where the best line within
// the limit crosses the best one beyond, and each step finds a line above the
// crossing or proves that there is none.
func (c *core) relax() priced {
	f := c.fill(0)
	over := f.point()
	p := priced{more: f.more, work: f.work}
	if over.minutes <= c.minutes {
		p.bound = c.gain + over.gain
		p.mix(over, over, c.minutes)
		return p
	}
	under := c.leaving()
	least := over.gain
	for {
		p.price = max(0, fine((over.gain-under.gain)/(over.minutes-under.minutes)))
		f = c.fill(p.price)
		p.more, p.work = f.more, p.work+f.work
		next := f.point()
		hull := next.at(p.price, c.minutes)
		known := max(over.at(p.price, c.minutes), under.at(p.price, c.minutes))
		least = min(least, max(hull, known))
		if hull <= known {
			break
		}
		if next.minutes > c.minutes {
			over = next
		} else {
			under = next
		}
	}
	p.bound = c.gain + least
	p.mix(over, under, c.minutes)
	return p
}

func (f *flow) point() point {
	gain, minutes := f.total()
	return point{f.x, gain, minutes}
}

// leaving is the flow that leaves everybody.
func (c *core) leaving() point {
	x := make([]int, len(c.arcs))
	for _, k := range c.classes {
		x[k.first] = k.count
	}
	return point{x: x}
}

// mix mixes two flows so that their minutes are those of the limit.
func (p *priced) mix(over, under point, limit float64) {
	share := 0.0
	p.over, p.under = over.x, under.x
	if over.minutes > under.minutes {
		share = (limit - under.minutes) / (over.minutes - under.minutes)
	}
	p.x = make([]float64, len(over.x))
	for i := range p.x {
		p.x[i] = float64(under.x[i]) + share*float64(over.x[i]-under.x[i])
	}
}

// worth is what an arc brings after what its minutes and its supply are priced
// at: of a class, those in use bring the most.
func (p *priced) worth(a arc) float64 { return a.gain - p.price*a.minutes - p.more[a.supply] }

// losses says by arc how much of the bound is lost at least if one more of
// its class goes along.
func (c *core) losses(p *priced) []float64 {
	lost := make([]float64, len(c.arcs))
	for _, k := range c.classes {
		used := math.Inf(1)
		for i := k.first; i < k.last; i++ {
			if p.x[i] > 0 {
				used = min(used, p.worth(c.arcs[i]))
			}
		}
		for i := k.first; i < k.last; i++ {
			lost[i] = max(0, used-p.worth(c.arcs[i]))
		}
	}
	return lost
}
