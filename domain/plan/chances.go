package plan

import (
	"math"
	"slices"
)

// Chances are the chances of how many queens there will be. The zero Chances are
// of none for sure.
type Chances struct {
	of []float64 // by number
}

// Exactly is the chance of just so many.
func (c Chances) Exactly(n int) float64 {
	switch {
	case n == 0 && len(c.of) == 0:
		return 1
	case n < 0, n >= len(c.of):
		return 0
	}
	return c.of[n]
}

// AtLeast is the chance of so many or more.
func (c Chances) AtLeast(n int) float64 {
	if n <= 0 {
		return 1
	}
	var sum float64
	for _, p := range c.of[min(n, len(c.of)):] {
		sum += p
	}
	return min(1, sum)
}

// Sure is the greatest number that is reached or exceeded with a chance.
func (c Chances) Sure(chance float64) int {
	sum := 0.0
	for n := c.Most(); n > 0; n-- {
		if sum += c.of[n]; sum >= chance-rounding {
			return n
		}
	}
	return 0
}

// Most is how many there can be at most.
func (c Chances) Most() int { return max(0, len(c.of)-1) }

// Mean is how many are to be expected on average over many such batches.
func (c Chances) Mean() (sum float64) {
	for n, p := range c.of {
		sum += float64(n) * p
	}
	return sum
}

// Quantile is the number that is not exceeded with a chance of p at least: half
// of such batches give Quantile(0.5) or fewer.
func (c Chances) Quantile(p float64) int {
	var sum float64
	for n, q := range c.of {
		if sum += q; sum >= p-rounding {
			return n
		}
	}
	return c.Most()
}

// rounding is what sums of chances may be off by: a chance that is so near to one
// asked for counts as it.
const rounding = 1e-9

// Trials are the numbers of queens of n batches that stand for all: they lie as
// far apart as the chances have it, rising.
func (c Chances) Trials(n int) []int {
	all := make([]int, n)
	for i := range all {
		all[i] = c.Quantile((float64(i) + 0.5) / float64(n))
	}
	return all
}

// Graft is one graft for a promise.
type Graft struct {
	Larvae int
	Nucs   int     // that are free for its cells and for no earlier graft's; those which earlier ones leave free are added
	Late   float64 // share of its queens who come too late for the promise, 0 to 1: see [Laid.InTime]; those lost of cells given late among them
	Again  bool    // it shares its nucs with no earlier graft: those stand in another yard, or the queens of all earlier ones are out of theirs by then, and Nucs are all there are, those come free again among them
}

// Queens are the chances of how many queens come of some grafts together, in the
// order in which their cells are ripe. What the keeper's rates are is shared by all
// of them, luck is each graft's own. Each cell or virgin gets a nuc of her own as
// long as there are some; a nuc that was given one is taken for all later grafts,
// also where she fails, up to the next that has the nucs [Graft.Again].
func (r Rates) Queens(grafts ...Graft) Chances {
	switch len(grafts) {
	case 0:
		return Chances{}
	case 1:
		along := r.Along(grafts[0])
		return along[len(along)-1].Chances
	default:
		return Chances{r.shared(grafts, usual)}
	}
}

// about are the chances of what some grafts give, near enough to know where to look.
func (r Rates) about(grafts ...Graft) Chances {
	if len(grafts) < 2 {
		return r.Queens(grafts...)
	}
	return Chances{r.shared(grafts, rough)}
}

// Stage is how many there are after one link of a chain.
type Stage struct {
	Link
	Share   float64 // the mean rate of the link; 1 where it has none
	Chances Chances
}

// Likely is what there is most probably: as often more as fewer.
func (s Stage) Likely() int { return s.Chances.Quantile(0.5) }

// Low is what there is at least, nine times in ten.
func (s Stage) Low() int { return s.Chances.Quantile(0.1) }

// High is what there is at most, nine times in ten.
func (s Stage) High() int { return s.Chances.Quantile(0.9) }

// Along are the chances of how many there are after each link of one graft, from
// the larvae to the queens. Each link is a thinning that depends on nothing but how
// many enter it, so the whole is exact but for the integral over the rate of a link
// with luck.
func (r Rates) Along(g Graft) []Stage {
	larvae := make([]float64, max(0, g.Larvae)+1)
	larvae[len(larvae)-1] = 1
	c := chain{rates: r, all: []Stage{{Grafted, 1, Chances{larvae}}}}
	c.works()
	c.links(r.before())
	c.add(Placed, 1, placed(c.last(), max(0, g.Nucs)))
	c.links(r.after())
	if in := 1 - min(1, g.Late); in < 1 {
		c.add(InTime, in, c.all[len(c.all)-1].Chances.inTime(in).of)
	}
	return c.all
}

// inTime are the chances of how many of them come in time, each with a chance.
func (c Chances) inTime(in float64) Chances { return Chances{each(beta{in, math.Inf(1)}).of(c.of)} }

type chain struct {
	rates Rates
	all   []Stage
}

func (c *chain) last() []float64 { return c.all[len(c.all)-1].Chances.of }

func (c *chain) add(l Link, share float64, of []float64) {
	c.all = append(c.all, Stage{l, share, Chances{of}})
}

// works is the link at which all of a graft come through, or none.
func (c *chain) works() {
	share := c.rates.Link[GraftWorks].Mean()
	of := slices.Clone(c.last())
	for n := range of {
		of[n] *= share
	}
	of[0] += 1 - share
	c.add(GraftWorks, share, of)
}

func (c *chain) links(all []Link) {
	for _, l := range all {
		c.add(l, c.rates.Link[l].Mean(), c.rates.thinning(l).of(c.last()))
	}
}

// placed are the chances of how many find a nuc.
func placed(of []float64, nucs int) []float64 {
	if nucs >= len(of)-1 {
		return of
	}
	capped := slices.Clone(of[:nucs+1])
	for _, p := range of[nucs+1:] {
		capped[nucs] += p
	}
	return capped
}
