package strength

import (
	"math"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// State is what a nuc has, as reckoned at an instant, and when it will want
// something if nothing is done.
type State struct {
	Bees      float64 // adult bees
	BeesKnown bool
	BeesFrom  calendar.Moment // the look or make-up the bees are reckoned from
	BeesThen  float64         // how many there were then
	BeesSeen  float64         // how many that look saw, where it was weighed with a reckoning; else 0
	Error     float64         // of the bees, a share: one standard deviation
	SideGuess bool            // nobody said how big a side of its comb is
	Brood     float64         // worker cells from which bees are to come, her own included
	Comb      float64         // worker cells that brood can fill; 0: nobody said how much comb there is
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

	Ahead Dates
}

// Dates are the days from which a nuc will be weak, light or full if nothing is
// done, today where it is so already. 0: not within the days reckoned ahead, or
// nobody knows.
type Dates struct {
	Weak, Light, Full calendar.Day
	WeakBees          float64 // bees on the day it is weak
	WeakNeed          float64 // what the night of that day needs
}

// Few is the chance that a look finds fewer bees than the night needs, by the error of what
// they are reckoned from: 0 to 1; 0 where nobody knows how many there are.
func (s State) Few() float64 {
	switch spread := s.Error * s.Bees; {
	case !s.BeesKnown:
		return 0
	case spread <= 0:
		if s.Bees < s.Need {
			return 1
		}
		return 0
	default:
		return math.Erfc((s.Bees-s.Need)/spread/math.Sqrt2) / 2
	}
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

// TooFew tells whether the bees, seen or reckoned, are so few that some are added, or
// the nuc is united, before it is given a cell or a virgin.
func (s State) TooFew(n practice.Numbers) bool {
	return s.BeesKnown && s.Bees < s.Need*n.Get(practice.AddBeesUnder)
}

// Light tells whether the food lasts less than the keeper's number of days.
func (s State) Light(n practice.Numbers) bool {
	return s.FoodKnown && s.FoodDays < n.Get(practice.LightBelow)
}

// state is what the reckoning has come to.
func (r *reckoning) state() State {
	s := r.State
	n := r.yard.numbers
	s.Need = Need(r.yard.night, r.thin, n)
	sure := 1 - n.Get(practice.LookError)
	s.Enough = s.Need * sure
	s.Usual = Need(usualNight(n), r.thin, n) * sure
	s.Bees, s.Error = r.ages.all, math.Sqrt(r.variance)
	s.Brood = r.brood.all
	if !math.IsInf(r.comb, 1) {
		s.Comb = r.comb
	}
	s.BeesKnown = s.BeesKnown && !r.tooOld(r.BeesFrom.Day(r.yard.zone))
	s.FoodKnown = s.FoodKnown && !r.tooOld(r.foodFrom)
	if daily := r.daily(); s.FoodKnown && daily > 0 {
		s.FoodDays = s.Food / daily
	} else {
		s.FoodKnown = false
	}
	return s
}
