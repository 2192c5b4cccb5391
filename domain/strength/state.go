package strength

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// State is what a nuc has, as reckoned at an instant.
type State struct {
	Bees      float64 // adult bees
	BeesKnown bool
	BeesFrom  calendar.Moment // the look or make-up the bees are reckoned from
	BeesThen  float64         // how many there were then
	SideGuess bool            // nobody said how big a side of its comb is
	Food      float64         // grams of sugar
	FoodKnown bool
	FoodDays  float64      // how long the food lasts; 0 when unknown
	FoodOut   calendar.Day // the day it ran out; 0: it has not
	Need      float64      // bees the night needs
	Enough    float64      // the need less the error of a look: fewer are weak
	Usual     float64      // what would be enough in a usual night
	SyrupTill calendar.Day
	NearBees  bool // it was made up of bees that know the way home
	MadeCups  float64
}

// Weak tells whether the bees are fewer than the night needs, beyond the error
// of a look.
func (s State) Weak() bool { return s.BeesKnown && s.Bees < s.Enough }

// WeakThen tells whether they were too few already when they were last seen or
// put in, rather than dwindled since by reckoning.
func (s State) WeakThen() bool { return s.Weak() && s.BeesThen < s.Enough }

// WeakSince tells whether they would have been too few for any usual night
// since they were last seen or put in.
func (s State) WeakSince() bool { return s.WeakThen() && s.BeesThen < s.Usual }

// Light tells whether the food lasts less than the keeper's number of days.
func (s State) Light(n practice.Numbers) bool {
	return s.FoodKnown && s.FoodDays < n.Get(practice.LightBelow)
}

// Of reckons a nuc of the yard from its entries, day by day. Once bees of its
// own queen emerge nothing is known until the next look, nor is food while
// nobody said any, nor anything once the last look at it is too old. What was before the nuc was made up is another life. It may be
// asked by several goroutines.
func (y *Yard) Of(n *book.Nuc) State {
	r := reckoning{yard: y, nuc: n, thin: y.view.Box(n.Box).Thin}
	for _, e := range y.view.LinesSince(n.Nuc.Subject(), n.MadeUp.Instant) {
		r.until(e.At.Day(y.zone))
		r.take(e)
	}
	r.until(y.today)
	return r.state()
}

// reckoning is a nuc's bees and food on a day, while its entries are taken in.
type reckoning struct {
	yard  *Yard
	nuc   *book.Nuc
	thin  bool
	day   calendar.Day
	ages  ages
	brood []hatch
	State
	foodFrom calendar.Day // when food was last seen or given
}

// hatch is capped brood that emerges evenly until a day.
type hatch struct {
	daily float64
	until calendar.Day
}

// until lets the days pass.
func (r *reckoning) until(d calendar.Day) {
	if !r.BeesKnown && !r.FoodKnown {
		r.day = d
	}
	for ; r.day < d; r.day++ {
		r.eat()
		r.ages.day(r.yard.flying(r.day), r.emerging(), r.yard.deaths)
	}
}

func (r *reckoning) eat() {
	if r.FoodKnown && r.Food > 0 {
		r.Food = max(0, r.Food-r.daily())
		if r.Food == 0 {
			r.FoodOut = r.day
		}
	}
}

// daily is the sugar in grams the bees use in a day.
func (r *reckoning) daily() float64 {
	return r.ages.total() / 1000 * r.yard.numbers.Get(practice.SugarPerDay)
}

func (r *reckoning) emerging() float64 {
	var sum float64
	for _, h := range r.brood {
		if r.day < h.until {
			sum += h.daily
		}
	}
	return sum
}

// tooOld tells whether what was seen or done on a day says nothing of today any
// more: so long no reckoning holds.
func (r *reckoning) tooOld(d calendar.Day) bool {
	return r.yard.today > d+calendar.Day(r.yard.numbers.Days(practice.LookTooOld))
}

func (r *reckoning) state() State {
	s := r.State
	s.Need = Need(r.yard.night, r.thin, r.yard.numbers)
	sure := 1 - r.yard.numbers.Get(practice.LookError)
	s.Enough = s.Need * sure
	s.Usual = Need(usualNight(r.yard.numbers), r.thin, r.yard.numbers) * sure
	s.Bees = r.ages.total()
	if r.tooOld(r.BeesFrom.Day(r.yard.zone)) {
		s.BeesKnown = false
	}
	s.FoodKnown = s.FoodKnown && !r.tooOld(r.foodFrom)
	if daily := r.daily(); s.FoodKnown && daily > 0 {
		s.FoodDays = s.Food / daily
	} else {
		s.FoodKnown = false
	}
	if eggs := r.nuc.Holds.FirstEggs; !eggs.IsZero() {
		hers := eggs.Instant.Add(r.yard.numbers.Duration(practice.WorkerEmerges))
		if hers.Before(r.yard.view.On()) && s.BeesFrom.Instant.Before(hers) {
			s.BeesKnown, s.FoodKnown = false, false
		}
	}
	return s
}
