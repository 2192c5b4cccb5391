package strength

import "lidmark/domain/practice"

// ages are bees by age in days.
type ages struct {
	bees [61]float64 // a worker's life is set to at most 60 days
	used int         // ages from here on have no bees, and are passed over
}

// young adds bees evenly aged up to the age at which they forage: what is
// swept from brood combs.
func (a *ages) young(bees float64, n practice.Numbers) {
	days := n.Days(practice.ForagingFromAge)
	a.used = max(a.used, days)
	for age := range days {
		a.bees[age] += bees / float64(days)
	}
}

// total is how many bees there are.
func (a *ages) total() float64 {
	var sum float64
	for _, b := range a.bees[:a.used] {
		sum += b
	}
	return sum
}

// seen makes the total bees. Fewer than reckoned keep their mix of ages; those
// who are more must have come since, and count as young.
func (a *ages) seen(bees float64, n practice.Numbers) {
	was := a.total()
	if bees >= was {
		a.young(bees-was, n)
		return
	}
	for i := range a.bees[:a.used] {
		a.bees[i] *= bees / was
	}
}

// day lets one day pass: house bees die slowly, foragers where they fly, old
// ones are gone, and emerging bees join. Flying is 1 for a fit day.
func (a *ages) day(flying, emerging float64, d deaths) {
	a.used = min(a.used+1, len(a.bees))
	copy(a.bees[1:a.used], a.bees[:])
	a.bees[0] = emerging
	for age := 1; age < min(a.used, d.forageFrom+1); age++ {
		a.bees[age] *= 1 - d.house
	}
	for age := d.forageFrom + 1; age < a.used; age++ {
		a.bees[age] *= 1 - d.forager*flying
	}
	for age := d.most + 1; age < a.used; age++ {
		a.bees[age] = 0
	}
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
