package book

import (
	"slices"
	"time"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// After is what the nuc holds once a look is taken in, with the numbers that tell
// whose brood is whose.
func (n *Nuc) After(l Look, numbers practice.Numbers) Holding {
	next := nucFold{*n, numbers}
	next = next.again()
	next.look(l)
	return next.Holds
}

// look takes a look in: figures first, then what it says of the queen.
func (n *nucFold) look(l Look) {
	n.Looks = append(n.Looks, l)
	n.read(&n.Bees, l.Sides, l.At)
	n.read(&n.Stores, l.Stores, l.At)
	n.read(&n.Temper, l.Temper, l.At)
	if l.lives() {
		n.RobbedAt = calendar.Moment{}
	}
	if l.OwnCells.Some() {
		n.OwnCells.Seen = l.At
	}
	n.sawCell(l)
	n.sawQueen(l)
}

// lives tells whether a queen, eggs or bees were seen: robbers left the nuc its
// life, and the look after them is done.
func (l Look) lives() bool {
	queen := l.Queen == QueenSeen || l.Queen == VirginSeen
	eggs := l.Eggs == SingleEggs || l.Eggs == ManyEggs
	return queen || eggs || l.Sides.Some()
}

func (n *nucFold) read(r *Reading, a Amount, at calendar.Moment) {
	if v, said := a.Get(); said {
		*r = Reading{v, at}
	}
}

// sawCell follows the cell that was given: open at the tip she walked, torn at
// the side she is dead.
func (n *nucFold) sawCell(l Look) {
	if n.Holds.Condition != Cell {
		return
	}
	switch l.Cell {
	case CellOpenAtTip:
		n.become(Virgin, l.At)
	case CellTornAtSide:
		n.become(NoQueen, l.At)
	}
}

func (n *nucFold) sawQueen(l Look) {
	switch {
	case l.Eggs == ManyEggs:
		n.become(LayingWorkers, l.At)
	case l.DroneBrood && !l.Brood.Some():
		n.become(DroneLayer, l.At)
	case n.herBrood(l):
		n.lays(GoodBrood, l)
	case n.herEggs(l):
		n.lays(Laying, l)
	case l.Queen == VirginSeen:
		n.become(Virgin, l.At)
	case l.Queen == QueenSeen:
		n.sawSomeQueen(l.At)
	case l.Queen == NoneSeen && n.provesNone(l):
		n.become(NoQueen, l.At)
	}
}

// BroodSeen is when capped worker brood of the queen who has proven herself was seen
// last; when she did where no later look says so. It is zero for any other nuc.
func (n *Nuc) BroodSeen() calendar.Moment {
	if n.Holds.Condition != GoodBrood {
		return calendar.Moment{}
	}
	for _, l := range slices.Backward(n.Looks) {
		if l.At.Before(n.Holds.Since) {
			break
		}
		if l.Brood.Some() {
			return l.At
		}
	}
	return n.Holds.Since
}

// sawSomeQueen: a queen without a word on eggs is at least a virgin, and
// whoever was laying is laying still.
func (n *nucFold) sawSomeQueen(at calendar.Moment) {
	switch n.Holds.Condition {
	case NoQueen, Cell, Virgin:
		n.become(Virgin, at)
	default:
		n.Holds.Seen = true
	}
}

// provesNone: no queen and no eggs where one was laying, or own cells begun.
// A virgin who was not found is another matter: she is easily missed.
func (n *nucFold) provesNone(l Look) bool {
	if l.OwnCells.Some() {
		return true
	}
	return l.Eggs == NoEggs && n.Holds.Condition.Queenright()
}

// herBrood tells whether capped worker brood seen can only be the present
// queen's: she was laying long enough, or no other brood is young enough.
func (n *nucFold) herBrood(l Look) bool {
	if !l.Brood.Some() {
		return false
	}
	laid := n.Holds.FirstEggs
	if n.Holds.Condition.Queenright() && l.At.Instant.Sub(laid.Instant) >= n.numbers.Duration(practice.EggToCappedWorkerBrood) {
		return true
	}
	return n.outlived(n.Brood.Capped, l.At, practice.WorkerEmerges)
}

// herEggs does the same for eggs, and for larvae seen without eggs.
func (n *nucFold) herEggs(l Look) bool {
	switch {
	case l.Eggs == SingleEggs:
		return n.Holds.Condition.Queenright() || n.outlived(n.Brood.Open, l.At, practice.WorkerHatches)
	case l.Larvae && l.Eggs == EggsUnsaid:
		return n.Holds.Condition.Queenright() || n.outlived(n.Brood.Open, l.At, practice.WorkerCapped)
	default:
		return false
	}
}

// outlived tells whether brood that another queen left has grown past a stage.
func (n *nucFold) outlived(brood, at calendar.Moment, stage practice.Key) bool {
	return brood.IsZero() || at.Instant.Sub(brood.Instant) > n.numbers.Duration(stage)
}

// become takes the nuc as being in a condition that was seen. It is queenless
// since it became so, not since somebody saw it, where that is known.
func (n *nucFold) become(c Condition, at calendar.Moment) {
	n.Holds.Seen = true
	switch {
	case c == Virgin:
		n.Queenless = calendar.Moment{}
	case c == NoQueen && n.Queenless.IsZero():
		n.Queenless = at
	}
	if n.Holds.Condition == c {
		return
	}
	if c == NoQueen || c == LayingWorkers {
		n.Holds = Holding{Seen: true} // whoever was given is gone
	}
	n.Holds.Condition, n.Holds.Since = c, at
}

func (n *nucFold) lays(c Condition, l Look) {
	first := n.Holds.FirstEggs.IsZero()
	n.dateEggs(l)
	if first {
		n.Holds.Descent = n.descent(n.Holds.FirstEggs.Instant)
	}
	n.Queenless = calendar.Moment{}
	if n.Holds.Condition == GoodBrood {
		c = GoodBrood
	}
	n.become(c, l.At)
}

// descent is sure when eggs came before a queen of the nuc's own raising could
// have laid them, or when no such queen could be: no open brood to raise her
// on, or her cells broken down in time.
func (n *nucFold) descent(eggs time.Time) Descent {
	switch start := n.Brood.Open; {
	case n.Holds.Given.IsZero(), n.Holds.Condition == Cell && eggs.Before(n.cellLays()):
		return DescentDoubtful
	case start.IsZero(), eggs.Before(n.ownQueenLays(start.Instant)), n.brokenInTime(start.Instant):
		return DescentSure
	default:
		return DescentDoubtful
	}
}

// cellLays is the earliest instant at which a queen could lay who was in her cell when
// that was given.
func (n *nucFold) cellLays() time.Time {
	return n.Holds.Given.Instant.Add(n.numbers.Duration(practice.FirstMatingFlightFrom))
}

// ownQueenLays is the earliest instant at which a queen raised on brood that
// was left at start could lay.
func (n *nucFold) ownQueenLays(start time.Time) time.Time {
	days := practice.Of(practice.OwnQueenEmerges).Min + n.numbers.Get(practice.LookForEggsNotBefore)
	return start.Add(time.Duration(days * float64(24*time.Hour)))
}

func (n *nucFold) brokenInTime(start time.Time) bool {
	b := n.OwnCells.Broken.Instant
	return !b.Before(start.Add(n.numbers.Duration(practice.BreakDownOwnCellsFrom))) &&
		!b.After(start.Add(n.numbers.Duration(practice.BreakDownOwnCellsBy)+24*time.Hour))
}
