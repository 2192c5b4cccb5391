// Package bee knows how bees grow: the timetables of the castes, when the
// queens of a batch walk out of their cells, what a day's delay costs, and
// when cells raised where nobody wanted them become dangerous.
//
// All instants are absolute and all spans are lengths of time, so a night on
// which the clocks change needs no care here. Windows that keepers count in
// days are given as day numbers; whoever knows the yard's time zone turns
// them into dates. Every number comes from package practice.
package bee

import (
	"time"

	"lidmark/domain/practice"
)

// Caste is one of the three kinds of bee. The zero Caste is the queen.
type Caste int

// The three castes.
const (
	Queen Caste = iota
	Worker
	Drone
)

// Timetable holds the ages, counted from the laying of the egg, at which a
// bee of one caste reaches the next stage. Ripe is the age from which a drone
// can mate and BestUntil the age to which he serves well; both are zero for
// the other castes.
type Timetable struct {
	Hatched, Capped, Emerged time.Duration
	Ripe, BestUntil          time.Duration
}

// Times gives the timetable of caste c with the numbers n.
func Times(c Caste, n practice.Numbers) Timetable {
	switch c {
	case Worker:
		return Timetable{
			Hatched: n.Duration(practice.WorkerHatches),
			Capped:  n.Duration(practice.WorkerCapped),
			Emerged: n.Duration(practice.WorkerEmerges),
		}
	case Drone:
		emerged := n.Duration(practice.DroneEmerges)
		return Timetable{
			Hatched:   n.Duration(practice.DroneHatches),
			Capped:    n.Duration(practice.DroneCapped),
			Emerged:   emerged,
			Ripe:      n.Duration(practice.DroneRipe),
			BestUntil: emerged + n.Duration(practice.DroneBestUntil),
		}
	default:
		return Timetable{
			Hatched: n.Duration(practice.QueenHatches),
			Capped:  n.Duration(practice.QueenCapped),
			Emerged: n.Duration(practice.QueenEmerges),
		}
	}
}
