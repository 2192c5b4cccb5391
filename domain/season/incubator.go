package season

import (
	"fmt"
	"math"
	"slices"

	"lidmark/domain/plan"
)

// leave is to leave in their finishers the cells for which the incubator has no place.
func (c Clash) leave() string {
	left := math.Ceil(c.Short())
	if left == 1 {
		return "leave 1 capped cell in its finisher until it is given"
	}
	return fmt.Sprintf("leave %.0f capped cells in their finishers until they are given", left)
}

// finishersFree tells whether on all days of a clash over the incubator there are finishers
// for the cells that have no place in it, beside what batches want of them. On the last days
// of their turn those of its batches hold the very cells.
func (t *trial) finishersFree(c Clash) bool {
	good := t.ground.besides(finishers)
	want := plan.FinishersFor(c.Short(), t.ground.numbers)
	for d := c.From; d <= c.To; d++ {
		others := slices.DeleteFunc(slices.Clone(t.loads), func(l *load) bool {
			return c.has(l.id) && d >= l.ladder.Rung(plan.CountCapped).Best
		})
		if float64(t.ground.left[good][d-t.ground.first])-t.wanted(good, d, others) < want {
			return false
		}
	}
	return true
}
