package season

import (
	"math"

	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// odds are the chances of graft sizes by the keeper's rates, each reckoned once.
//
// What becomes of a cell that has a nuc does not depend on how many larvae it took
// to have it. So of a size there are the chances of so many ripe cells, and of so
// many cells in nucs the chances of so many queens in time: the same as those of
// [plan.Rates.Queens], which has both in one chain.
type odds struct {
	rates  plan.Rates
	ripe   map[int][]float64 // by larvae: the chances of so many ripe cells
	given  [2][][]float64    // ready or laying, by cells in nucs: the chances of so many queens
	inTime map[lateness]*family
	pairs  map[pair]plan.Chances
	apart  map[plan.Graft]plan.Apart
	joint  map[joint][]float64 // the chances of so many or more
}

// lateness is how many of the queens come too late, in parts of lateParts, rounded
// up: no chance is said to be better than it is.
type lateness struct {
	laying bool
	late   int
}

// lateParts is how finely lateness is told apart, and lateMost the share of those who ever
// lay who may come too late where a promise is kept in part: a graft of which nearly half do is no answer. Whom the weather
// lets never lay comes on no day, so a cold spring makes no graft late; whether it makes any
// sense the plan knows, see [plan.Planner.GraftsFor].
const (
	lateParts = 50
	lateMost  = 0.4
)

// tooLate tells whether a graft is too late for the first promise of a group at a level: to keep it as is wished it
// is in time as one for a wish is, see [plan.Planner.Backward].
func (s *search) tooLate(laid plan.Laid, p Promise, l level) bool {
	share := s.ground.numbers.Get(practice.PlanInTime)
	if l.short > 0 && l.at == 0 {
		share = min(share, 1-lateMost)
	}
	in := laid.InTime(p.By, p.Laying)
	return in == 0 || in < share*laid.Ends()
}

func latenessOf(l plan.Laid, p Promise) lateness {
	late := (1 - l.InTime(p.By, p.Laying)) * lateParts
	return lateness{p.Laying, int(math.Ceil(late - 1e-9))}
}

func newOdds(r plan.Rates) *odds {
	return &odds{rates: r, ripe: map[int][]float64{}, inTime: map[lateness]*family{}, pairs: map[pair]plan.Chances{}, apart: map[plan.Graft]plan.Apart{}, joint: map[joint][]float64{}}
}

func (o *odds) ratesFor(laying bool) plan.Rates {
	r := o.rates
	r.Laying = laying
	return r
}

// enough is the chance of so many queens of one graft.
func (o *odds) enough(larvae, nucs int, l lateness, queens int) (sum float64) {
	if queens > min(larvae, nucs) {
		return 0
	}
	ripe, family := o.ripeOf(larvae), o.familyOf(l)
	for cells := queens; cells < len(ripe); cells++ {
		sum += ripe[cells] * o.tail(family, min(cells, nucs), queens)
	}
	return sum
}

// ripeOf are the chances of so many ripe cells of a graft.
func (o *odds) ripeOf(larvae int) []float64 {
	if of := o.ripe[larvae]; of != nil {
		return of
	}
	var of []float64
	for _, s := range o.rates.Along(plan.Graft{Larvae: larvae, Nucs: larvae}) {
		if s.Link == plan.Placed {
			of = listed(s.Chances)
		}
	}
	o.ripe[larvae] = of
	return of
}

func listed(c plan.Chances) []float64 {
	of := make([]float64, c.Most()+1)
	for n := range of {
		of[n] = c.Exactly(n)
	}
	return of
}

// family are the chances of so many queens or more in time, by cells in nucs.
type family struct {
	lateness
	of [][]float64
}

func (o *odds) familyOf(l lateness) *family {
	f := o.inTime[l]
	if f == nil {
		f = &family{lateness: l}
		o.inTime[l] = f
	}
	return f
}

// tail is the chance of so many queens or more of so many cells in nucs.
func (o *odds) tail(f *family, cells, queens int) float64 {
	for len(f.of) <= cells {
		f.of = append(f.of, nil)
	}
	if f.of[cells] == nil {
		f.of[cells] = tails(thinned(o.givenOf(cells, f.laying), 1-float64(f.late)/lateParts))
	}
	if queens >= len(f.of[cells]) {
		return 0
	}
	return f.of[cells][queens]
}

// givenOf are the chances of so many queens of so many cells in nucs: of a graft
// of which every larva is a ripe cell.
func (o *odds) givenOf(cells int, laying bool) []float64 {
	kind := 0
	if laying {
		kind = 1
	}
	for len(o.given[kind]) <= cells {
		o.given[kind] = append(o.given[kind], nil)
	}
	if o.given[kind][cells] == nil {
		r := o.ratesFor(laying)
		for _, l := range []plan.Link{plan.GraftWorks, plan.Taken, plan.RipeOfTaken} {
			r.Link[l] = plan.Rate{Default: 1, Weight: math.Inf(1)}
		}
		o.given[kind][cells] = listed(r.Queens(plan.Graft{Larvae: cells, Nucs: cells}))
	}
	return o.given[kind][cells]
}

// thinned are the chances when each comes through with a share, on her own.
func thinned(of []float64, share float64) []float64 {
	if share >= 1 {
		return of
	}
	out := make([]float64, len(of))
	row := []float64{1} // of n: the chances of so many that come through
	for n, p := range of {
		for k, q := range row {
			out[k] += p * q
		}
		if n < len(of)-1 {
			next := make([]float64, n+2)
			for k, q := range row {
				next[k] += q * (1 - share)
				next[k+1] += q * share
			}
			row = next
		}
	}
	return out
}

// tails are the chances of so many or more.
func tails(of []float64) []float64 {
	out := make([]float64, len(of))
	var sum float64
	for n := len(of) - 1; n >= 0; n-- {
		sum += of[n]
		out[n] = sum
	}
	return out
}

// pair is two grafts of one size a week apart, of which the later one says how
// many are late.
type pair struct {
	larvae, late int
	laying       bool
}

// The steps of the sizes and of the lateness of two grafts, in those of one: they take
// twenty times as long to reckon as one.
const (
	pairBars  = 2 * bar
	pairParts = 5 // of lateParts
)

// pairNucs is how many nucs each of two grafts has: as many as it has ripe cells
// when the graft works.
func (o *odds) pairNucs(larvae int) int {
	share := o.rates.Link[plan.Taken].Mean() * o.rates.Link[plan.RipeOfTaken].Mean()
	return int(math.Ceil(share * float64(larvae)))
}

// roughly is a lateness in the steps of two grafts, rounded up.
func roughly(late int) int { return min(lateParts, (late+pairParts-1)/pairParts*pairParts) }

// two are the chances of two grafts together.
func (o *odds) two(larvae int, l lateness) plan.Chances {
	late := roughly(l.late)
	key := pair{larvae, late, l.laying}
	c, ok := o.pairs[key]
	if !ok {
		g := plan.Graft{Larvae: larvae, Nucs: o.pairNucs(larvae), Late: float64(late) / lateParts}
		c = o.ratesFor(l.laying).Queens(g, g)
		o.pairs[key] = c
	}
	return c
}
