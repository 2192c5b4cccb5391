package season

import (
	"math"

	"lidmark/domain/handover"
)

// level is how far below what is wished a way keeps the promises of a group: one of them so many hundredths
// less sure, which is nearly kept, or so many queens of it not, the others as surely as is wished. The
// zero level keeps all as is wished.
type level struct {
	points, short int
	at            int // the promise, by its place in the group
}

// whole is the level at which promises are kept as is wished.
var whole level

// How many hundredths less than is wished is nearly kept, and for how many minutes of work
// a hundredth is made up for: some four nucs' more, so that a nuc more or a bar more is
// taken for it, and a second graft is not. Common practice, no source.
const (
	nearMost     = handover.NearlyKept
	nearly       = nearMost / 100.0
	pointMinutes = 30
)

// inPartMost is how many promises a search has at most in which one graft for several is tried that keeps
// one of them in part. A convention of the search.
const inPartMost = 8

// partSteps is in how many steps the queens of a promise are left out that is kept in part; of no more than so
// many queens each number is tried. A convention of the search.
const partSteps = 12

// levels are the levels below what is wished at which a group is tried: a promise by itself nearly kept, or
// so many queens of it; of several, where there are few in all, so many queens of the one that is served last.
func (s *search) levels(g group) (all []level) {
	at := 0
	if len(g.promises) == 1 {
		for n := range nearMost {
			all = append(all, level{points: n + 1})
		}
	} else {
		if len(s.wanted.Promises) > inPartMost {
			return nil
		}
		at = s.servedLast(g)
	}
	p := s.wanted.Promises[g.promises[at]]
	step := (p.short() + partSteps - 1) / partSteps
	for short := step; short < p.short(); short += step {
		all = append(all, level{short: short, at: at})
	}
	return all
}

// servedLast is the place in a group of the promise that is served after the others.
func (s *search) servedLast(g group) int {
	last := 0
	for at, i := range g.promises {
		if s.turn[i] >= s.turn[g.promises[last]] {
			last = at
		}
	}
	return last
}

// of is how many queens of a promise at a place of the group there are at the level, and how sure they are at least.
func (l level) of(p Promise, at int) (queens int, sure float64) {
	if at != l.at {
		return p.Queens, p.Sure
	}
	return p.Queens - l.short, math.Max(0, p.Sure-float64(l.points)/100)
}

// partOf tells whether the promise at a place of a group is kept in part at the level.
func (l level) partOf(at int) bool { return l.short > 0 && at == l.at }

// costAt is what it costs that the promises of a group are kept at a level only.
func (s *search) costAt(g group, l level) cost {
	return cost{s.weights[s.turn[g.promises[l.at]]] * int64(l.short), int64(l.points) * pointMinutes * 10 * tenthCost}
}

// minutes are the certainty that is missing at the level, as minutes of work.
func (l level) minutes() float64 { return float64(l.points) * pointMinutes }
