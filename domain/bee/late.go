package bee

import (
	"cmp"
	"math"
	"slices"
	"time"

	"lidmark/domain/practice"
)

// Late is the question of a late day: ripe cells are together and cannot all
// be placed before Next. Clock should know that none was out at Now (see
// [NoneOut]) when somebody looked.
type Late struct {
	Clock  Clock
	Now    time.Time
	Next   time.Time // the keeper's next free hour
	Fit    int       // cells that can be placed now
	Takers int       // cells other keepers would take now
}

// Way is a way out of a late day.
type Way int

// The ways out. Place takes what fits into nucs and leaves the others loose;
// the ways with a cage put each cell into a cage of its own.
const (
	Wait Way = iota + 1
	Cool
	Place
	PlaceAndCage
	Cage
	HandOn
)

// String gives the way in plain words.
func (w Way) String() string {
	switch w {
	case Wait:
		return "do nothing until you come again"
	case Cool:
		return "turn the incubator down and wait"
	case Place:
		return "place what fits, leave the others"
	case PlaceAndCage:
		return "place what fits, cage the others"
	case Cage:
		return "cage them all"
	case HandOn:
		return "hand on what others take, cage the rest"
	}
	return ""
}

// WayOut is what a way out is worth, as expected numbers. Placed, Caged and
// Left add up to the cells; handed-on ones count as placed.
type WayOut struct {
	Way                 Way
	Placed, Caged, Left int
	Lost                float64 // destroyed by Next
	Kept                float64 // cells and virgins alive at Next
	Later               float64 // of those left and alive at Next, how many no nuc is ready for: they can be caged then
	Accepted            float64 // taken in in the end: by nucs that are ready, by takers, out of cages later
	Work                time.Duration
	LastResort          bool // rests on a single study
}

// Ways values the ways out side by side, the best first. A placed cell is
// accepted as a cell, one left whole as well, a virgin found loose as one
// under a day old; neither without a nuc that is ready. What is alive at Next and
// has no nuc is caged then: waiting leaves that open. A caged one, now or then, is
// reckoned as a virgin put in at three to four days, put in sooner she does
// better; she keeps until a nuc is made up for her. Of ways worth the same the one
// that leaves fewer together is better.
func (l Late) Ways() []WayOut {
	n := l.Clock.cells
	fit, takers := min(max(l.Fit, 0), n), min(max(l.Takers, 0), n)
	ways := []WayOut{l.way(Wait, 0, 0), l.way(Cool, 0, 0), l.way(Cage, 0, n)}
	if fit > 0 {
		ways = append(ways, l.way(PlaceAndCage, fit, n-fit))
	}
	if fit > 0 && fit < n {
		ways = append(ways, l.way(Place, fit, 0))
	}
	if takers > 0 {
		ways = append(ways, l.way(HandOn, takers, n-takers))
	}
	slices.SortStableFunc(ways, func(a, b WayOut) int {
		return cmp.Or(compareQueens(b.Accepted, a.Accepted), cmp.Compare(a.Left, b.Left), cmp.Compare(b.Kept, a.Kept))
	})
	return ways
}

// compareQueens compares expected numbers of queens; a millionth is no difference.
func compareQueens(a, b float64) int {
	const millions = 1e6
	return cmp.Compare(math.Round(millions*a), math.Round(millions*b))
}

// way values one way out.
func (l Late) way(w Way, placed, caged int) WayOut {
	num := l.Clock.numbers
	out := WayOut{Way: w, Placed: placed, Caged: caged, Left: l.Clock.cells - placed - caged, LastResort: w == Cool}
	out.Accepted = float64(placed)*num.Get(practice.AcceptCell) + float64(caged)*num.Get(practice.AcceptVirginDaysOld)
	if out.Left > 0 {
		loose := l.left(w, out.Left)
		out.Lost = loose.Lost(l.Next)
		accepted, later := l.taken(w, placed, loose)
		out.Accepted, out.Later = out.Accepted+accepted, later
	}
	out.Kept = float64(l.Clock.cells) - out.Lost
	out.Work = time.Duration(placed)*num.Duration(practice.MinutesGiveCell) +
		time.Duration(caged)*num.Duration(practice.MinutesCageCell)
	return out
}

// Keeps gives how many of the cells and the virgins from them are alive at an
// instant, from Now on, if a way out is taken.
func (l Late) Keeps(w WayOut) func(time.Time) float64 {
	all := float64(l.Clock.cells)
	if w.Left == 0 {
		return func(time.Time) float64 { return all }
	}
	loose := l.left(w.Way, w.Left)
	return func(t time.Time) float64 { return all - loose.Lost(t) }
}

// taken is how many of the cells and virgins found loose at Next are taken in, the
// cells first: as many as there are nucs left for, and what is caged then, later.
func (l Late) taken(w Way, placed int, loose Loose) (accepted, later float64) {
	room := float64(max(l.Fit, 0))
	if w == Place {
		room -= float64(placed)
	}
	whole, out := loose.Cells(l.Next), loose.Virgins(l.Next)
	cells := min(whole, room)
	virgins := min(out, room-cells)
	later = whole + out - cells - virgins
	num := l.Clock.numbers
	accepted = cells*num.Get(practice.AcceptCell) + virgins*num.Get(practice.AcceptVirginUnderDay)
	return accepted + later*num.Get(practice.AcceptVirginDaysOld), later
}

// left is what becomes of n cells left loose.
func (l Late) left(w Way, n int) Loose {
	c := l.Clock.few(n)
	if w == Cool {
		return c.Cooled(l.Now, c.numbers.Get(practice.LastResortWarmth))
	}
	return c.Loose()
}

// few is the clock of n of the cells, when the others are taken away: what is
// known of those taken still weighs the shift.
func (c Clock) few(n int) Clock {
	few := c
	few.cells = n
	few.nodes = slices.Clone(c.nodes)
	for i, nd := range few.nodes {
		few.nodes[i].weight *= power(c.law.in(c.after-nd.shift), c.cells-n)
	}
	few.weigh()
	return few
}
