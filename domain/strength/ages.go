package strength

import "lidmark/domain/practice"

// ages are bees by age in days.
type ages struct {
	bees  [61]float64 // a worker's life is set to at most 60 days
	young int         // no bees are younger
	old   int         // all are younger: other ages are passed over
	all   float64     // how many bees there are, of whatever age
}

// add adds bees evenly aged up to the age at which they forage: what is swept
// from brood combs.
func (a *ages) add(bees float64, n practice.Numbers) {
	days := n.Days(practice.ForagingFromAge)
	a.young, a.old = 0, max(a.old, days)
	for age := range days {
		a.bees[age] += bees / float64(days)
	}
	a.count()
}

// count sums the bees of all ages.
func (a *ages) count() {
	a.all = 0
	for _, b := range a.bees[a.young:a.old] {
		a.all += b
	}
}

// seen makes the total bees. Fewer than reckoned keep their mix of ages; those
// who are more must have come since, and count as young.
func (a *ages) seen(bees float64, n practice.Numbers) {
	was := a.all
	if bees >= was {
		a.add(bees-was, n)
		return
	}
	for age := a.young; age < a.old; age++ {
		a.bees[age] *= bees / was
	}
	a.count()
}

// day lets one day pass: house bees die slowly, foragers where they fly, old
// ones are gone, and emerging bees join. Flying is 1 for a fit day.
func (a *ages) day(flying, emerging float64, d deaths) {
	a.older(d.most)
	house := max(a.young, min(a.old, d.forageFrom+1))
	emerging = max(0, emerging)
	a.all = left(a.bees[a.young:house], 1-d.house, emerging)
	a.all = left(a.bees[house:a.old], 1-d.forager*flying, a.all)
	if emerging > 0 {
		a.bees[0], a.young, a.old = emerging, 0, max(a.old, 1)
	}
}

// left leaves a share of bees alive, and adds these to a sum.
func left(bees []float64, share, sum float64) float64 {
	for i := range bees {
		bees[i] *= share
		sum += bees[i]
	}
	return sum
}

// older makes every bee a day older; none gets older than most.
func (a *ages) older(most int) {
	if a.young >= a.old {
		a.young, a.old = 0, 0
		return
	}
	copy(a.bees[a.young+1:], a.bees[a.young:a.old])
	a.bees[a.young] = 0
	a.young, a.old = a.young+1, a.old+1
	for a.old > most+1 {
		a.old--
		if a.old < len(a.bees) {
			a.bees[a.old] = 0
		}
	}
	a.young = min(a.young, a.old)
}

// deaths are the shares that die in a day.
type deaths struct {
	house, forager   float64
	forageFrom, most int
}

func deathsOf(n practice.Numbers) deaths {
	return deaths{
		house:      n.Get(practice.HouseBeeDeaths),
		forager:    n.Get(practice.ForagerDeaths),
		forageFrom: n.Days(practice.ForagingFromAge),
		most:       n.Days(practice.WorkerLifeMost),
	}
}
