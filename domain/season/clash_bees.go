package season

import (
	"fmt"
	"math"
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// week is the span over which a colony gives only so much.
const week = 7

// little is an amount of bees or brood that nobody weighs.
const little = 0.01

// bees are the bees and combs that colonies cannot give in the week to the day on
// which the nucs of a batch are made up.
func (a *account) bees(l load, all []load) (found []Clash) {
	on := l.ladder.Rung(plan.MakeUpNucs).Best
	if l.kilograms == 0 && l.combs == 0 {
		return nil
	}
	kg, combs := Clash{Kind: BeesShort, From: on, To: on}, Clash{Kind: BroodShort, From: on, To: on}
	var titles []string
	for _, other := range all {
		if d := other.ladder.Rung(plan.MakeUpNucs).Best; on-week < d && d <= on && other.kilograms+other.combs > 0 {
			kg.Want, combs.Want = kg.Want+other.kilograms, combs.Want+other.combs
			kg.Batches, titles = append(kg.Batches, other.id), append(titles, other.title)
		}
	}
	combs.Batches = slices.Clone(kg.Batches)
	kg.Have, combs.Have = a.gives(on)
	if kg.Have == 0 && combs.Have == 0 {
		return nil // the book tells of no colony that gives, or all rest
	}
	for _, c := range []Clash{kg, combs} {
		if c.Short() > little {
			c.Why = fmt.Sprintf("%s %s %s for nucs in the week to %s, the colonies can give %s.",
				joined(titles), verb(titles, "wants", "want"), c.amount(c.Want), on.Short(), c.amount(c.Have))
			found = append(found, c)
		}
	}
	return found
}

// flying are the days on which more virgins fly than the drone colonies serve. A
// book without drone colonies has not told of them.
func (a *account) flying(all []load) (found []Clash) {
	if a.drones == 0 {
		return nil
	}
	virgins := map[calendar.Day]int{}
	for _, l := range all {
		for d := l.ladder.Rung(plan.Fly).From; d <= l.ladder.Rung(plan.Fly).By; d++ {
			virgins[d] += l.virgins
		}
	}
	var run *Clash
	for d := a.today; d <= a.ground.last(); d++ {
		want := 0.0
		if virgins[d] > 0 {
			want = max(a.ground.numbers.Get(practice.DroneColonies), math.Ceil(float64(virgins[d])/a.ground.numbers.Get(practice.QueensPerDroneColony)))
		}
		if want <= a.drones {
			run = nil
			continue
		}
		if run == nil {
			found = append(found, Clash{Kind: DronesShort, From: d, Have: a.drones})
			run = &found[len(found)-1]
		}
		run.To, run.Want = d, max(run.Want, want)
	}
	for i := range found {
		a.tellFlying(&found[i], virgins, all)
	}
	return found
}

func (a *account) tellFlying(c *Clash, virgins map[calendar.Day]int, all []load) {
	most := 0
	for d := c.From; d <= c.To; d++ {
		most = max(most, virgins[d])
	}
	for _, l := range all {
		if fly := l.ladder.Rung(plan.Fly); l.virgins > 0 && fly.From <= c.To && c.From <= fly.By {
			c.Batches = append(c.Batches, l.id)
		}
	}
	c.Why = fmt.Sprintf("Up to %d virgins fly%s and want %.0f drone colonies, there are %.0f.", most, between(c.From, c.To), c.Want, c.Have)
}

// ripe tells whether drones are ripe and not too old when the virgins of a batch
// begin to fly: those of its own comb or of any other batch's. Drones of a comb are
// ripe so long after it went in, and at their best until an age from emergence.
func (a *account) ripe(l load, all []load) []Clash {
	if l.grafted || a.drones == 0 || l.size.Nucs == 0 {
		return nil
	}
	fly := l.ladder.Rung(plan.Fly)
	ripens, emerges := a.days(practice.DroneRipe), a.days(practice.DroneEmerges)
	fades := emerges + a.days(practice.DroneBestUntil)
	next, last := calendar.Day(math.MaxInt32), calendar.Day(0)
	for _, other := range all {
		ripe, old := other.comb+ripens, other.comb+fades
		if ripe <= fly.From && fly.From <= old {
			return nil
		}
		if ripe > fly.From {
			next = min(next, ripe)
		} else {
			last = max(last, old)
		}
	}
	c := Clash{Kind: DronesUnripe, Batches: only(l.id), From: fly.From, To: fly.By, Want: float64(next - fly.From)}
	c.Why = fmt.Sprintf("The virgins of %s fly from %s; drones of a comb hung in by %s are ripe on %s.", l.title, fly.From.Short(), (next - ripens).Short(), next.Short())
	if last != 0 && fly.From-last < next-fly.From {
		c.Kind, c.Want = DronesOld, float64(fly.From-last)
		c.Why = fmt.Sprintf("The virgins of %s fly from %s; the drones of the last comb are at their best until %s.", l.title, fly.From.Short(), last.Short())
	}
	return []Clash{c}
}
