package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// DronesOn tells whether ripe drones are to be expected near a yard on a day: from so many days
// before the longest day of the year to so many after it; sooner where a comb hangs, or can be hung
// in from today on, that has ripe ones by then. Where nobody knows when the longest day is they are
// taken to be there.
func (p *Planner) DronesOn(yard book.YardID, d calendar.Day) bool {
	longest, ok := p.course.Weather(yard).Longest(d)
	switch {
	case !ok:
		return true
	case d > longest+p.days(practice.DronesUntil):
		return false
	case d >= longest-p.days(practice.DronesFrom):
		return true
	}
	guess := p.course.Weather(yard).Day(d).Guess // nobody tells how warm it is: no comb of winter is believed in
	before := longest.AddMonths(-12) + p.days(practice.DronesUntil)
	return !guess && d >= p.firstComb(yard, before+1)+p.days(practice.DroneRipe)
}

// droneless says that the queens of a graft have days fit to fly without drones, and by which number
// that is so; "" and 0 where they have none.
func (p *Planner) droneless(yard book.YardID, graft calendar.Day) (says string, by practice.Key) {
	y := p.course.Weather(yard)
	for d, to := p.mating(graft); d <= to; d++ {
		longest, ok := y.Longest(d)
		switch {
		case p.DronesOn(yard, d) || y.Hours(d) < hardlyFit:
		case ok && d > longest:
			return "drones are taken to be there until " + p.said(longest+p.days(practice.DronesUntil)) + ", if yours stay longer change the number", practice.DronesUntil
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

// firstComb is the first day, from one on, on which a drone comb for the virgins of a yard hung, or
// can be hung in.
func (p *Planner) firstComb(yard book.YardID, from calendar.Day) calendar.Day {
	first := max(from, p.view.Today())
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
