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
			r.ages.seen(max(0, r.ages.total()-r.yard.bees(f.Cups)), r.yard.numbers)
		}
	case book.BroodGiven:
		if f.To == me.Subject() {
			r.addBrood(f.Capped)
		}
	case book.Looked:
		r.look(e, f)
	case book.Fed:
		r.feed(f)
	case book.United:
		if f.Nuc == me {
			r.end()
		}
	case book.ShakenOut, book.NucLost:
		r.end()
	}
}

func (r *reckoning) end() {
	r.ages, r.brood, r.State = ages{}, nil, State{}
}

func (r *reckoning) madeUp(e *book.Entry, f book.NucMadeUp) {
	r.end()
	r.NearBees, r.MadeCups = r.yard.fromNear(f.From.Subject()), f.Cups
	if f.Cups > 0 {
		r.BeesKnown, r.BeesFrom = true, e.At
		r.addBees(f.Cups, f.From.Subject(), f.Shut)
		r.BeesThen = r.ages.total()
	}
	r.addBrood(f.Capped)
	if f.Food > 0 {
		r.FoodKnown, r.Food, r.foodFrom = true, f.Food, r.day
	}
}

// addBees counts bees less those who fly home, at once: they do within the
// first two days.
func (r *reckoning) addBees(cups float64, from book.Subject, shut bool) {
	r.ages.add(r.yard.Stay(cups, from, shut), r.yard.numbers)
}

func (r *reckoning) addBrood(dm2 float64) {
	if dm2 <= 0 {
		return
	}
	n := r.yard.numbers
	days := math.Ceil(n.Get(practice.CappedEmergesOver))
	bees := dm2 * n.Get(practice.CellsPerSide) * n.Get(practice.CappedEmergence)
	r.brood = append(r.brood, hatch{bees / days, r.day + calendar.Day(days)})
}

// look takes what was seen for what there is: so many sides of comb crowded
// with bees, capped brood whose bees are to come, stores from none to full
// combs.
func (r *reckoning) look(e *book.Entry, f book.Looked) {
	n := r.yard.numbers
	side := r.side()
	if sides, said := f.Sides.Get(); said {
		r.ages.seen(sides*side*n.Get(practice.BeesPerSide), n)
		r.BeesKnown, r.BeesFrom, r.BeesThen = true, e.At, r.ages.total()
	}
	if capped, said := f.Brood.Get(); said {
		r.brood = nil
		r.addBrood(capped)
	}
	if level, said := f.Stores.Get(); said {
		r.stores(level, side)
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
