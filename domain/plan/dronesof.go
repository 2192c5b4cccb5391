package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// DronesOn is which share of its ripe drones is to be expected near a yard on a day, 0 to 1: all from so
// many days before the longest day of the year until they begin to be thrown out so many after it, which
// goes on evenly for so many more; sooner where a comb hangs that has ripe ones by then, or can be hung in
// from today on, though not before the shortest day, as no colony has drones for winter. Where nobody
// knows when the longest day is they are taken to be there.
func (p *Planner) DronesOn(yard book.YardID, d calendar.Day) float64 {
	longest, ok := p.course.Weather(yard).Longest(d)
	thrown := longest + p.days(practice.DronesUntil)
	switch {
	case !ok:
		return 1
	case d > thrown:
		return max(0, 1-float64(d.Sub(thrown))/p.numbers.Get(practice.DronesThrownOut))
	case d >= longest-p.days(practice.DronesFrom):
		return 1
	}
	guess := p.course.Weather(yard).Day(d).Guess // nobody tells how warm it is: no comb of winter is believed in
	if before := thrown.AddMonths(-12); !guess && d >= p.firstComb(yard, before+1, longest.AddMonths(-6))+p.days(practice.DroneRipe) {
		return 1
	}
	return 0
}

// HardlyDrones tells whether fewer than half of its ripe drones are to be expected near a yard on a day, so
// that it is out of their season. Half is common practice, no source.
func (p *Planner) HardlyDrones(yard book.YardID, d calendar.Day) bool {
	return p.DronesOn(yard, d) < 0.5
}

// droneless says that the queens of a graft have days fit to fly with fewer than half of the drones, and
// by which number that is so; "" and 0 where they have none.
func (p *Planner) droneless(yard book.YardID, graft calendar.Day) (says string, by practice.Key) {
	y := p.course.Weather(yard)
	for d, to := p.mating(graft); d <= to; d++ {
		longest, ok := y.Longest(d)
		switch {
		case !p.HardlyDrones(yard, d) || y.Hours(d) < hardlyFit:
		case ok && d > longest:
			return "drones are taken to be thrown out from " + p.said(longest+p.days(practice.DronesUntil)) + " on, if yours stay longer change the number", practice.DronesUntil
		default:
			return "drones are taken to be there from " + p.said(longest-p.days(practice.DronesFrom)) + " on, or from a comb that hangs, if yours are sooner change the number", practice.DronesFrom
		}
	}
	return "", 0
}

// hardlyFit is how many hours of a day fit to fly nobody would miss. Common practice, no source.
const hardlyFit = 0.5

// mating are the days on which the queens of a graft mate, as the calendar has it: from the first
// flights until they are late.
func (p *Planner) mating(graft calendar.Day) (from, to calendar.Day) {
	born := graft + p.days(practice.GraftToEmerge)
	return born + p.days(practice.FirstMatingFlightFrom), born + p.days(practice.VirginLate)
}

// firstComb is the first day, from one on, on which a drone comb for the virgins of a yard hung, or,
// from another on, can be hung in.
func (p *Planner) firstComb(yard book.YardID, from, can calendar.Day) calendar.Day {
	first := max(from, can, p.view.Today())
	for _, c := range p.combs() {
		if c.in >= from && p.NearYard(yard, c.yard) {
			first = min(first, c.in)
		}
	}
	return first
}

// combAt is a drone comb that hangs for the virgins of a yard, and since when.
type combAt struct {
	in   calendar.Day
	yard book.YardID
}

// allCombs are the drone combs that were hung in for batches of the book, planned and grafted.
func (p *Planner) allCombs() (all []combAt) {
	add := func(id book.BatchID, yard book.YardID) {
		if in := CombIn(p.view, id); in != 0 {
			all = append(all, combAt{in, yard})
		}
	}
	for b := range p.view.Plans() {
		add(b.Batch, b.Yard)
	}
	for b := range p.view.Batches() {
		was, _ := p.view.BatchPlan(b.Batch)
		add(b.Batch, p.yardOf(b, was))
	}
	return all
}
