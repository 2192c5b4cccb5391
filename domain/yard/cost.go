package yard

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Cost is what it costs how the boxes of a layout stand.
type Cost struct {
	Nucs    int
	Drift   float64 // workers who end at a wrong door, 0 to 1, the mean of the nucs
	Virgins float64 // who will fly
	Wrong   float64 // of these, who end at a wrong door
	Lost    float64 // of these, who find a queen there and are lost
	Alike   int     // entrances with one near that looks alike, see [Alike]
	Pull    float64 // what strong colonies add to the exposure to robbers, the mean of the nucs
}

// CostOf reckons what a layout costs. A full-size colony is taken to have its queen.
func CostOf(l Layout, n practice.Numbers) Cost {
	doors := l.Doors(SpacingOf(n))
	virgins, workers := HomingOf(doors, VirginKernel(n)), HomingOf(doors, WorkerKernel(n))
	c := Cost{Nucs: l.Nucs(), Alike: Alike(l, n)}
	for i := range doors {
		if doors[i].Colony {
			continue
		}
		c.Drift += workers.Wrong(i) / float64(c.Nucs)
		c.Pull += Pull(l, doors[i].At, n) / float64(c.Nucs)
		own := l.at(&doors[i])
		c.Virgins += own.Virgins
		c.Wrong += own.Virgins * virgins.Wrong(i)
		c.Lost += own.Virgins * l.Lost(virgins, i)
	}
	return c
}

// Lost is the chance that a virgin of a door ends where she finds a queen.
func (l Layout) Lost(virgins *Homing, door int) (sum float64) {
	virgins.Astray(door, func(other int, share float64) { sum += share * l.queenright(&virgins.doors[other]) })
	return sum
}

// at is the nuc behind a door.
func (l Layout) at(d *Door) *Nuc { return &l.Stands[d.Stand].Nucs[d.Nuc] }

func (l Layout) queenright(d *Door) float64 {
	if d.Colony {
		return 1
	}
	return l.at(d).Queenright
}

// Pull is what the full-size colonies of a layout add to the exposure to robbers at
// a place, as the package strength weighs it.
func Pull(l Layout, at book.Point, n practice.Numbers) (sum float64) {
	each, reach := n.Get(practice.RobbingNeighbour), n.Get(practice.RobbingNeighbourReach)
	for _, c := range l.Colonies {
		sum += each * math.Exp(-distance(c.At, at)/reach)
	}
	return sum
}

// Arrow is a way that bees take to a wrong door: from one door to another, and the
// share of those of the first who take it.
type Arrow struct {
	From, To Door
	Share    float64
}

// Arrows are the ways of workers to wrong doors that no fewer than a share take, by
// door; of each pair of doors the busier way.
func Arrows(l Layout, n practice.Numbers, least float64) (all []Arrow) {
	doors := l.Doors(SpacingOf(n))
	h := HomingOf(doors, WorkerKernel(n))
	share := map[[2]int]float64{}
	for i := range doors {
		for _, e := range h.Ends(i) {
			share[[2]int{i, e.Door}] = e.Share
		}
	}
	for i := range doors {
		for _, e := range h.Ends(i) {
			back := share[[2]int{e.Door, i}]
			if e.Share >= least && (e.Share > back || e.Share == back && i < e.Door) {
				all = append(all, Arrow{doors[i], doors[e.Door], e.Share})
			}
		}
	}
	return all
}
