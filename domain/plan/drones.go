package plan

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/domain/strength"
)

// DroneColoniesNear are the drone colonies that stand in a yard, or so near that their drones
// fly to its virgins.
func (p *Planner) DroneColoniesNear(yard book.YardID) (all []*book.Colony) {
	for c := range p.view.Colonies() {
		if c.Is(book.DroneSource) && p.NearYard(yard, c.Yard) {
			all = append(all, c)
		}
	}
	return all
}

// NearYard tells whether the drones of one yard fly to the virgins of another: they are the
// same, or nearer to each other than moved bees fly home.
func (p *Planner) NearYard(a, b book.YardID) bool {
	return a == b || strength.Near(p.view.Yard(a), p.view.Yard(b), p.numbers)
}

// DroneColoniesFor are how many drone colonies virgins want who fly on a day: one for so many
// of them, and no fewer than a yard wants.
func DroneColoniesFor(virgins int, n practice.Numbers) float64 {
	return max(n.Get(practice.DroneColonies), math.Ceil(float64(virgins)/n.Get(practice.QueensPerDroneColony)))
}

// DronesAt are the days on which the drones of a comb are ripe and not too old.
type DronesAt struct{ From, By calendar.Day }

// DronesOf are those of a comb that goes in on a day: the first are ripe so long after it, and the
// last, of the eggs laid until the comb is full, are at their best until an age from emergence.
func (p *Planner) DronesOf(in calendar.Day) DronesAt {
	return DronesAt{in + p.days(practice.DroneRipe), in + p.layFull() + p.days(practice.DroneEmerges) + p.days(practice.DroneBestUntil)}
}

// layFull is how many days pass until a drone comb is laid full: those by which it goes in sooner
// than its first drones need, "so that many are" ripe.
func (p *Planner) layFull() calendar.Day {
	return max(0, p.days(practice.DroneCombBeforeFlights)-p.days(practice.DroneRipe))
}
