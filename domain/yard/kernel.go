package yard

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Kernel weighs the door of a neighbour against a bee's own:
//
//	w = Share · exp(−r/Reach) · facing · mark · activity
//
// over the few boxes nearest to her own. Facing falls from 1 for doors of one
// bearing to Facing for those a right angle or more apart; marks that differ in
// one way or in both lower it; and bees are drawn to a door with more traffic, by
// the root of the ratio of bees, within the least and the most. It is a proposal,
// held against published drift: queens of pairs 2 to 5 m apart 4 % (Perez-Sato et
// al. 2008, Apidologie 39:708), workers of plain rows 22 % (Pfeiffer & Crailsheim
// 1998, Insectes Sociaux 45:151), of a yard laid out against drift 5 % (Neumann et
// al. 2000, Apidologie 31:67).
type Kernel struct {
	Share                       float64 // of a like door at no distance, against one's own
	Reach                       float64 // m
	Facing, OneWay, BothWays    float64
	ActivityLeast, ActivityMost float64
	Nearest                     int // boxes that count
}

// VirginKernel is the kernel of virgins.
func VirginKernel(n practice.Numbers) Kernel {
	return kernelOf(n, practice.HomingVirgins, practice.HomingVirginsReach)
}

// WorkerKernel is the kernel of workers.
func WorkerKernel(n practice.Numbers) Kernel {
	return kernelOf(n, practice.HomingWorkers, practice.HomingWorkersReach)
}

func kernelOf(n practice.Numbers, share, reach practice.Key) Kernel {
	most := n.Get(practice.HomingActivityMost)
	return Kernel{
		Share: n.Get(share), Reach: n.Get(reach),
		Facing: n.Get(practice.HomingFacing), OneWay: n.Get(practice.HomingOneMark), BothWays: n.Get(practice.HomingBothMarks),
		ActivityLeast: 1 / most, ActivityMost: most,
		Nearest: int(n.Get(practice.HomingNearest)),
	}
}

// Weight is how much the door of a neighbour weighs against a bee's own, which
// weighs 1.
func (k *Kernel) Weight(own, other *Door) float64 {
	return k.Share * math.Exp(-distance(own.At, other.At)/k.Reach) * k.facing(own, other) * k.mark(own, other) * k.activity(own, other)
}

func distance(a, b book.Point) float64 {
	x, y := a.X-b.X, a.Y-b.Y
	return math.Sqrt(x*x + y*y) // quicker than Hypot, and no yard is too large for it
}

const rightAngle = 90.0

// facing of a colony is that of a like door: nobody said how it stands.
func (k *Kernel) facing(own, other *Door) float64 {
	if own.Colony || other.Colony {
		return 1
	}
	return 1 - (1-k.Facing)*min(between(own.Bearing, other.Bearing), rightAngle)/rightAngle
}

// between is the angle of two bearings, 0 to 180.
func between(a, b float64) float64 {
	d := math.Mod(math.Abs(a-b), 360)
	return min(d, 360-d)
}

func (k *Kernel) mark(own, other *Door) float64 {
	return [...]float64{1, k.OneWay, k.BothWays}[own.Mark.Apart(other.Mark)]
}

// activity: a door at which nobody knows the bees is as busy as one's own.
func (k *Kernel) activity(own, other *Door) float64 {
	if own.Bees <= 0 || other.Bees <= 0 {
		return 1
	}
	return min(max(math.Sqrt(other.Bees/own.Bees), k.ActivityLeast), k.ActivityMost)
}
