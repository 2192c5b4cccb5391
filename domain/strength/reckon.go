package strength

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Of reckons a nuc of the yard from its entries, day by day up to today, and on
// from there. Its own queen's brood is reckoned from the day eggs were seen, so
// that it is known how many there are when her bees emerge. Nothing is known of
// food while nobody said any, nor of anything once the last look at it is too
// old. What was before the nuc was made up is another life. It may be asked by
// several goroutines.
func (y *Yard) Of(n *book.Nuc) State {
	r := y.reckon(n)
	s := r.state()
	r.ahead(&s)
	return s
}

// reckon reckons a nuc up to today.
func (y *Yard) reckon(n *book.Nuc) reckoning {
	r := reckoning{yard: y, nuc: n, thin: y.view.Box(n.Box).Thin, comb: math.Inf(1)}
	r.layings()
	for _, e := range y.view.LinesSince(n.Nuc.Subject(), n.MadeUp.Instant) {
		r.until(e.At.Day(y.zone))
		r.take(e)
	}
	r.until(y.today)
	return r
}

// reckoning is a nuc's bees, brood and food on a day, while its entries are
// taken in.
type reckoning struct {
	yard     *Yard
	nuc      *book.Nuc
	thin     bool
	comb     float64 // cells that brood can fill; +Inf where nobody said
	laid     [4]laying
	day      calendar.Day
	ages     ages
	brood    brood
	variance float64 // of the error of the bees, as a share
	State
	foodFrom calendar.Day // when food was last seen or given
}

// laying are the days from one to before another on which a queen of the nuc lays.
type laying struct{ from, to calendar.Day }

// ever is a day that never comes.
const ever = calendar.Day(math.MaxInt32)

// layings notes who was seen laying in the nuc: the queen who is there, and the
// last ones caught.
func (r *reckoning) layings() {
	at := 0
	note := func(h book.Holding, until calendar.Day) {
		if h.Condition.Queenright() && !h.FirstEggs.IsZero() && at < len(r.laid) {
			r.laid[at] = laying{h.FirstEggs.Day(r.yard.zone), until}
			at++
		}
	}
	note(r.nuc.Holds, ever)
	for i := len(r.nuc.Caught) - 1; i >= 0 && !r.nuc.Caught[i].At.Before(r.nuc.MadeUp); i-- {
		note(r.nuc.Caught[i].Was, r.nuc.Caught[i].At.Day(r.yard.zone))
	}
	if r.nuc.Sides > 0 {
		r.comb = float64(r.nuc.Sides) * r.side() * r.yard.rears.perDm2 * r.yard.rears.ofComb
	}
}

// lays tells whether a queen lays on the day reckoned.
func (r *reckoning) lays() bool {
	for _, l := range r.laid {
		if l.from <= r.day && r.day < l.to {
			return true
		}
	}
	return false
}

// until lets the days pass.
func (r *reckoning) until(d calendar.Day) {
	if !r.BeesKnown && !r.FoodKnown {
		r.day = d
	}
	for r.day < d {
		r.pass()
	}
}

// pass lets the day pass: they eat, she lays, bees emerge, others die; open brood
// that they are too few to feed is lost.
func (r *reckoning) pass() {
	today := r.yard.days.at(r.day)
	r.eat(today.flown)
	emerging := r.brood.day() * r.yard.rears.emerges
	if bees := r.ages.all; r.lays() || r.brood.all > 0 {
		r.brood.starve(bees*r.yard.rears.perBee, r.yard.rears.cappedOver)
		if r.lays() {
			r.brood.lay(r.yard.rears.eggs(&r.brood, r.comb, bees, r.needs(today)), r.yard.rears.laidAhead-1)
		}
	}
	r.ages.day(today.flown, emerging, r.yard.deaths)
	r.variance += r.yard.errorGrows
	r.day++
}

// needs is what the night of a day needs of the nuc.
func (r *reckoning) needs(d dayAt) float64 {
	if r.thin {
		return d.need * r.yard.thin
	}
	return d.need
}

// eat takes a day's food off the stores. In flow bees bring in a part of it, or all,
// on days on which they fly; what they put by beyond that only a look tells.
func (r *reckoning) eat(flown float64) {
	if r.FoodKnown && r.Food > 0 {
		r.Food = max(0, r.Food-max(0, r.daily()-r.income(flown)))
		if r.Food == 0 {
			r.FoodOut = r.day
		}
	}
}

// income is the sugar in grams the bees bring in on a day.
func (r *reckoning) income(flown float64) float64 {
	if y := r.yard.yard; y.Forage != book.InFlow || r.day < y.ForageSince.Day(r.yard.zone) {
		return 0
	}
	return r.ages.all / 1000 * flown * r.yard.income
}

// daily is the sugar in grams the bees use in a day.
func (r *reckoning) daily() float64 { return r.ages.all / 1000 * r.yard.sugar }

// tooOld tells whether what was seen or done on a day says nothing of the day
// reckoned any more: so long no reckoning holds.
func (r *reckoning) tooOld(d calendar.Day) bool { return r.day > d+r.yard.tooOld }

// ahead reckons on, and notes the days from which the nuc will be weak, light or
// full, as long as there is one of them to find. A queen who lays is taken to go on.
func (r *reckoning) ahead(s *State) {
	sure := 1 - r.yard.numbers.Get(practice.LookError)
	weak, light := s.BeesKnown && r.mayWeaken(sure), s.FoodKnown && r.mayHunger()
	full := s.Comb > 0 && s.BeesKnown && r.nuc.Holds.Condition.Queenright() && r.mayFill()
	from := r.BeesFrom.Day(r.yard.zone)
	for end := r.day + r.yard.ahead; r.day < end; r.pass() {
		if r.tooOld(from) {
			weak, full = false, false
		}
		light = light && !r.tooOld(r.foodFrom)
		if !weak && !light && !full {
			return
		}
		if need := r.needs(r.yard.days.at(r.day)); weak && r.ages.all < need*sure {
			s.Ahead.Weak, s.Ahead.WeakBees, s.Ahead.WeakNeed, weak = r.day, r.ages.all, need, false
		}
		if light && r.Food < r.daily()*r.yard.light {
			s.Ahead.Light, light = r.day, false
		}
		if full && r.brood.all >= r.comb*laidUp {
			s.Ahead.Full, full = r.day, false
		}
	}
}

// laidUp is the share of the cells for brood from which a comb is full: she
// fills the last ones as they come free.
const laidUp = 0.98
