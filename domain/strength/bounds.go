package strength

// Many nucs are neither weak nor light nor full for two weeks, and that can be told
// without reckoning these weeks day by day: from the bees who cannot have died by
// their end, and from what the most who can ever be there would eat and rear.

// margin is what a bound leaves for the rounding of many days' sums, as a share.
const margin = 1e-6

// lasting are, by age today, the shares of the bees of a yard who live on the last
// of the days reckoned ahead; need is the most that a night of these asks for.
type lasting struct {
	share [len(ages{}.bees)]float64
	need  float64
}

// lastingOf works that out for a yard.
func (y *Yard) lastingOf() *lasting {
	l := &lasting{}
	for age := range l.share {
		l.share[age] = y.lives(age)
	}
	for d := y.today; d < y.today+y.ahead; d++ {
		l.need = max(l.need, y.days.at(d).need)
	}
	return l
}

// lives is the share of bees of an age who live through the days reckoned ahead.
func (y *Yard) lives(age int) float64 {
	share := 1.0
	for d := y.today; d < y.today+y.ahead; d++ {
		if age++; age > y.deaths.most {
			return 0
		}
		if age > y.deaths.forageFrom {
			share *= 1 - y.deaths.forager*y.days.at(d).flown
		} else {
			share *= 1 - y.deaths.house
		}
	}
	return share
}

// mayWeaken tells whether the nuc may become weak in the days reckoned ahead. It
// does not where those of its bees who live to the last of them, with none to
// emerge, are enough for the coldest of the nights.
func (r *reckoning) mayWeaken(sure float64) bool {
	l := r.yard.lasts()
	var bees float64
	for age := r.ages.young; age < r.ages.old; age++ {
		bees += r.ages.bees[age] * l.share[age]
	}
	return bees*(1-margin) < r.needs(dayAt{need: l.need})*sure
}

// mayHunger tells whether the nuc may become light in the days reckoned ahead. It
// does not where the food would last as long for the most bees.
func (r *reckoning) mayHunger() bool {
	days := float64(r.yard.ahead) + r.yard.light
	return r.Food*(1-margin) < r.most()/1000*r.yard.sugar*days
}

// mayFill tells whether the combs may become full in the days reckoned ahead. They
// do not where the most bees cannot rear so much brood, or she cannot lay it in time.
func (r *reckoning) mayFill() bool {
	laid := r.brood.all + r.yard.rears.lays*float64(r.yard.ahead)
	reared := max(r.brood.all, r.most()*r.yard.rears.perBee)
	return min(laid, reared)*(1+margin) >= r.comb*laidUp
}

// most is more bees than there can be on any of the days reckoned ahead: nobody
// dies, and all brood emerges, that laid meanwhile where it is in time.
func (r *reckoning) most() float64 {
	bees := r.ages.all + r.brood.all
	if int(r.yard.ahead) >= r.yard.rears.laidAhead {
		bees += r.yard.rears.lays * float64(r.yard.ahead)
	}
	return bees
}
