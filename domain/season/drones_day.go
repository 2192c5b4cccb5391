package season

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// Flights are the days ahead on which virgins of the batches of a book, planned and grafted,
// fly to the drones near a yard, and the drones there are for them.
type Flights struct {
	Yard     *book.Yard
	Colonies []*book.Colony // with drones, in the yard or near it
	Days     []DroneDay
	Best     []Days       // on which drones of the combs that are in or planned are at their best
	Short    calendar.Day // first day on which the drones are not enough, and more comb would help; 0: there is none
	CombBy   calendar.Day // by which comb, or more of it, must hang for that day
}

// DronesByDay are the flights of a yard. It is what clashes over drones are made of.
func DronesByDay(p *plan.Planner, yard book.YardID) Flights {
	var all []*load
	for _, s := range standings(p) {
		all = append(all, &load{standing: s, comb: combOf(p, s)})
	}
	c := circleOf(circlesOf(p), yard)
	f := Flights{Yard: p.View().Yard(yard), Colonies: p.DroneColoniesNear(yard), Days: c.days(p, all), Best: c.best(p, all)}
	if i := slices.IndexFunc(f.Days, func(d DroneDay) bool { return !d.Enough() && d.Drones != OutOfSeason }); i >= 0 {
		f.Short = f.Days[i].Day
		f.CombBy = f.Short - calendar.Day(p.View().Numbers().Days(practice.DroneRipe))
	}
	return f
}

// best are the days from the view's on which drones of combs of the circle are at their best.
func (c circle) best(p *plan.Planner, all []*load) (best []Days) {
	var each []Days
	for _, l := range all {
		if at := p.DronesOf(l.comb); c.has(l.size.Yard) && at.By >= p.View().Today() {
			each = append(each, Days{max(at.From, p.View().Today()), at.By})
		}
	}
	slices.SortFunc(each, func(a, b Days) int { return cmp.Compare(a.From, b.From) })
	for _, d := range each {
		if n := len(best); n > 0 && d.From <= best[n-1].To+1 {
			best[n-1].To = max(best[n-1].To, d.To)
			continue
		}
		best = append(best, d)
	}
	return best
}

// DroneDay is a day on which virgins fly, and the drones there are for them.
type DroneDay struct {
	Day      calendar.Day
	Virgins  int     // who fly, of the yard and of those so near that they share its drones
	Colonies float64 // drone colonies that stand so near
	Wanted   float64 // for so many virgins
	Drones   Drones  // of the combs that are in or planned
}

// Enough tells whether there are drone colonies enough and their drones are at their best.
func (d DroneDay) Enough() bool { return d.Colonies >= d.Wanted && d.Drones == AtTheirBest }

// Drones is how far the drones of combs are.
type Drones uint8

// The drones: of no comb, of one that is too young, ripe but too old, and ripe; and of any comb on a day on
// which colonies are taken to have hardly any, see [plan.Planner.HardlyDrones].
const (
	NoDroneComb Drones = iota
	NotRipe
	PastTheirBest
	AtTheirBest
	OutOfSeason
)

// String is how far they are in the keeper's words.
func (d Drones) String() string {
	return [...]string{"no drone comb", "not ripe yet", "past their best", "at their best", "out of season"}[d]
}

// days are the days from the view's on which virgins of some batches fly to the drones of the
// circle.
func (c circle) days(p *plan.Planner, all []*load) (days []DroneDay) {
	virgins := map[calendar.Day]int{}
	for _, l := range all {
		if !c.has(l.size.Yard) {
			continue
		}
		for d := max(p.View().Today(), l.ladder.Rung(plan.Fly).From); d <= l.ladder.Rung(plan.Fly).By; d++ {
			virgins[d] += l.virgins
		}
	}
	for d, n := range virgins {
		if n == 0 {
			continue
		}
		drones := c.drones(p, d, all)
		if p.HardlyDrones(c.of[0], d) {
			drones = OutOfSeason
		}
		days = append(days, DroneDay{d, n, c.colonies, plan.DroneColoniesFor(n, p.View().Numbers()), drones})
	}
	slices.SortFunc(days, func(a, b DroneDay) int { return int(a.Day - b.Day) })
	return days
}

// drones are how far those of the circle are on a day: the best of all combs.
func (c circle) drones(p *plan.Planner, d calendar.Day, all []*load) (best Drones) {
	for _, l := range all {
		if !c.has(l.size.Yard) {
			continue
		}
		switch at := p.DronesOf(l.comb); {
		case d < at.From:
			best = max(best, NotRipe)
		case d > at.By:
			best = max(best, PastTheirBest)
		default:
			return AtTheirBest
		}
	}
	return best
}

// combOf is when the drone comb of a batch goes in: when it did; that of a grafted one of which
// nobody wrote it is taken to have been in on its best day; else on that day or today, and on a day
// ahead by which it is taken as done no later than that.
func combOf(p *plan.Planner, s standing) calendar.Day {
	if was := plan.CombIn(p.View(), s.id); was != 0 {
		return was
	}
	rung := s.ladder.Rung(plan.DroneComb)
	switch {
	case s.grafted:
		return rung.Best
	case p.Taken(rung):
		return max(rung.Best, p.View().From())
	}
	return max(rung.Best, p.View().Today())
}
