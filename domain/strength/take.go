package strength

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// take takes in what an entry says of bees, brood and food.
func (r *reckoning) take(e *book.Entry) {
	me := r.nuc.Nuc
	switch f := e.Fact.(type) {
	case book.NucMadeUp:
		r.madeUp(e, f)
	case book.BeesAdded:
		if f.Nuc == me {
			r.addBees(f.Cups, f.From, false)
			r.BeesThen += r.yard.Stay(f.Cups, f.From, false)
		} else {
			r.ages.seen(max(0, r.ages.all-r.yard.bees(f.Cups)), r.yard.numbers)
		}
	case book.BroodGiven:
		if f.To == me.Subject() {
			r.addBrood(f.Capped, f.Open)
		}
	case book.Looked:
		r.look(e, f)
	case book.Fed:
		r.feed(f)
	case book.Robbed:
		r.Food, r.FoodKnown, r.FoodOut = 0, false, 0 // what they left, only a look tells
	case book.United:
		if f.Nuc == me {
			r.end()
		}
	case book.ShakenOut, book.NucLost:
		r.end()
	}
}

func (r *reckoning) end() {
	r.ages, r.brood, r.variance, r.State = ages{}, brood{}, 0, State{}
}

func (r *reckoning) madeUp(e *book.Entry, f book.NucMadeUp) {
	r.end()
	r.NearBees, r.MadeCups = r.yard.fromNear(f.From.Subject()), f.Cups
	if f.Cups > 0 {
		r.BeesKnown, r.BeesFrom = true, e.At
		r.addBees(f.Cups, f.From.Subject(), f.Shut)
		r.BeesThen = r.ages.all
	}
	r.addBrood(f.Capped, f.Open)
	if f.Food > 0 {
		r.FoodKnown, r.Food, r.foodFrom = true, f.Food, r.day
	}
}

// addBees counts bees less those who fly home, at once: they do within the
// first two days.
func (r *reckoning) addBees(cups float64, from book.Subject, shut bool) {
	stay := r.yard.Stay(cups, from, shut)
	e := r.yard.numbers.Get(practice.MadeUpError)
	r.variance = joined(estimate{r.ages.all, r.variance, true}, estimate{stay, e * e, true}).variance
	r.ages.add(stay, r.yard.numbers)
}

// addBrood takes in palms of capped and open brood of any age.
func (r *reckoning) addBrood(capped, open float64) {
	rears := &r.yard.rears
	r.brood.spread(capped*rears.perDm2, 0, rears.cappedOver)
	r.brood.spread(open*rears.perDm2, rears.cappedOver, rears.laidAhead)
}

// look takes in what was seen: so many sides of comb crowded with bees, weighed
// with what was reckoned; capped brood, in place of the capped brood reckoned;
// stores from none to full combs.
func (r *reckoning) look(e *book.Entry, f book.Looked) {
	side := r.side()
	if sides, said := f.Sides.Get(); said {
		r.count(e, sides*side*r.yard.numbers.Get(practice.BeesPerSide))
	}
	if capped, said := f.Brood.Get(); said {
		r.brood.uncap(r.yard.rears.cappedOver)
		r.addBrood(capped, 0)
	}
	if level, said := f.Stores.Get(); said {
		r.stores(level, side)
	}
}

// count weighs bees that were seen with those reckoned, where these still say
// anything.
func (r *reckoning) count(e *book.Entry, seen float64) {
	known := r.BeesKnown && !r.tooOld(r.BeesFrom.Day(r.yard.zone))
	is := weigh(estimate{r.ages.all, r.variance, known}, seen, r.yard.numbers)
	r.ages.seen(is.bees, r.yard.numbers)
	r.variance = is.variance
	r.BeesKnown, r.BeesFrom, r.BeesThen, r.BeesSeen = true, e.At, is.bees, 0
	if is.bees != seen {
		r.BeesSeen = seen
	}
}

// side is the area in dm² of a side of the nuc's comb; where nobody said, that
// of a small mating comb.
func (r *reckoning) side() float64 {
	if r.nuc.Side > 0 {
		return r.nuc.Side
	}
	r.SideGuess = true
	return r.yard.numbers.Get(practice.CombSideArea)
}

// stores are the food a look saw. In a nuc of which nobody said how many sides
// it has only none means anything; whatever was reckoned before is void.
func (r *reckoning) stores(level, side float64) {
	r.Food = level / book.MostStores * float64(r.nuc.Sides) * side * r.yard.numbers.Get(practice.HoneyPerSide)
	r.FoodKnown = level == 0 || r.Food > 0
	r.FoodOut, r.foodFrom = 0, r.day
	if level == 0 {
		r.FoodOut = r.day
	}
}

func (r *reckoning) feed(f book.Fed) {
	n := r.yard.numbers
	sugar := f.Litres*n.Get(practice.SyrupSugar) + f.Fondant*n.Get(practice.FondantSugar)
	r.Food += sugar
	if sugar > 0 {
		r.FoodOut, r.foodFrom = 0, r.day
	}
	r.FoodKnown = r.FoodKnown || r.BeesKnown
	if f.Litres > 0 && r.daily() > 0 {
		r.SyrupTill = r.day + calendar.Day(math.Ceil(f.Litres*n.Get(practice.SyrupSugar)/r.daily()))
	}
}
