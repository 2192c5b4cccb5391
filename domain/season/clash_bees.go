package season

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// week is the span over which a colony gives only so much.
const week = 7

// little is an amount of bees or brood that nobody weighs.
const little = 0.01

// given are the bees and combs that colonies cannot give in the week to a day on which
// starters are set up or nucs made up; none where the book tells of no colony that gives.
func (a *account) given(all []*load) (found []Clash) {
	if !a.givers {
		return nil
	}
	var days []calendar.Day
	for _, l := range all {
		for _, k := range l.asks {
			days = append(days, k.day)
		}
	}
	slices.Sort(days)
	for _, on := range slices.Compact(days) {
		found = append(found, a.givenTo(on, all)...)
	}
	return found
}

// givenTo are those of the week to a day. Each batch wants its own on the day on which
// its starters are set up, or its nucs made up, which may be before the clash.
func (a *account) givenTo(on calendar.Day, all []*load) (found []Clash) {
	haveKg, haveCombs := a.gives(on)
	if short := wantedIn(BeesShort, on, all); short.Want > haveKg+little {
		short.Have = haveKg
		found = append(found, short)
	}
	if short := wantedIn(BroodShort, on, all); short.Want > haveCombs+little {
		short.Have = haveCombs
		found = append(found, short)
	}
	return found
}

// wantedIn is what batches want of bees or brood in the week to a day, as a clash.
func wantedIn(kind Kind, on calendar.Day, all []*load) Clash {
	c := Clash{Kind: kind, From: on, To: on}
	for _, l := range all {
		for _, k := range l.asks {
			amount := k.amount(kind)
			if amount == 0 || k.day <= on-week || k.day > on {
				continue
			}
			c.Want += amount
			if n := len(c.Batches); n > 0 && c.Batches[n-1] == l.id {
				c.Days[n-1] = Days{min(c.Days[n-1].From, k.day), max(c.Days[n-1].To, k.day)}
				continue
			}
			c.Batches, c.Days = append(c.Batches, l.id), append(c.Days, Days{k.day, k.day})
		}
	}
	return c
}

// amount is what is asked of bees or of brood.
func (k ask) amount(kind Kind) float64 {
	if kind == BroodShort {
		return k.combs
	}
	return k.kilograms
}

// wantedFor says what bees or brood are wanted for in a clash.
func wantedFor(c Clash, all []*load) string {
	var starters, nucs bool
	for _, l := range all {
		for _, k := range l.asks {
			if k.amount(c.Kind) > 0 && c.From-week < k.day && k.day <= c.From {
				starters, nucs = starters || k.step == plan.SetUpStarter, nucs || k.step == plan.MakeUpNucs
			}
		}
	}
	switch {
	case starters && nucs:
		return "starters and nucs"
	case starters:
		return "starters"
	default:
		return "nucs"
	}
}

// flying are the days on which more virgins fly than the drone colonies near them serve, of
// yards that share their drones as one clash. A book without drone colonies has not told of
// them.
func (a *account) flying(all []*load) (found []Clash) {
	if !dronesTold(a.ground.circles) {
		return nil
	}
	for _, c := range a.ground.circles {
		var run *Clash
		first := len(found)
		for _, d := range c.days(a.planner, all) {
			if d.Wanted <= d.Colonies {
				run = nil
				continue
			}
			if run == nil || run.To != d.Day-1 {
				found = append(found, Clash{Kind: DronesShort, Yard: c.home(all), From: d.Day, Have: d.Colonies})
				run = &found[len(found)-1]
			}
			run.To, run.Want = d.Day, max(run.Want, d.Wanted)
		}
		for i := first; i < len(found); i++ {
			found[i].Batches, found[i].Days = flyers(found[i], c, all)
		}
	}
	return found
}

// flyers are the batches whose virgins fly to the drones of a circle within a clash, each
// with the days of it on which they do.
func flyers(c Clash, of circle, all []*load) (batches []book.BatchID, days []Days) {
	for _, l := range all {
		if fly := l.ladder.Rung(plan.Fly); l.virgins > 0 && of.has(l.size.Yard) && fly.From <= c.To && c.From <= fly.By {
			batches, days = append(batches, l.id), append(days, c.within(fly.From, fly.By))
		}
	}
	return batches, days
}

// ripe tells whether drones are at their best on every day on which virgins of a batch fly: those
// of its own comb or of that of any other batch near it. It is the first day on which none are, with
// how many days the nearest are off it.
func (a *account) ripe(l *load, all []*load) []Clash {
	if !dronesTold(a.ground.circles) || l.virgins == 0 || a.planner.CombServes(l.comb, l.ladder) {
		return nil
	}
	fly, near := l.ladder.Rung(plan.Fly), circleOf(a.ground.circles, l.size.Yard)
	d := fly.From
	for near.drones(a.planner, d, all) == AtTheirBest {
		if d++; d > fly.By {
			return nil
		}
	}
	c := Clash{Kind: DronesUnripe, Batches: only(l.id), From: d, To: fly.By}
	next, last := near.ripeBeside(a.planner, d, all)
	if c.Want = float64(next - d); last != 0 && d-last < next-d {
		c.Kind, c.Want = DronesOld, float64(d-last)
	}
	return []Clash{c}
}

// ripeBeside are the first day after one on which drones are ripe, and the last before it on which
// they were at their best; 0: they never were.
func (c circle) ripeBeside(p *plan.Planner, d calendar.Day, all []*load) (next, last calendar.Day) {
	next = math.MaxInt32
	for _, l := range all {
		if !c.has(l.size.Yard) {
			continue
		}
		if at := p.DronesOf(l.comb); at.From > d {
			next = min(next, at.From)
		} else {
			last = max(last, at.By)
		}
	}
	return next, last
}

func only(id book.BatchID) []book.BatchID { return []book.BatchID{id} }
