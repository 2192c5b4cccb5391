package bee

import (
	"math"

	"lidmark/domain/practice"
)

const (
	// leastChance keeps log odds finite.
	leastChance = 1e-6
	// closeEnough is the error allowed in an hour: under half a second.
	closeEnough = 1e-4
	// tails is how many spreads about the mean hold all that matters.
	tails = 7
)

// solve gives the hour at which a chance that rises with time passes p. It
// steps by the secant of the log odds, which for normal tails are nearly
// straight, inside a bracket that always holds the answer (the Illinois rule:
// an end that stays twice counts half): some seven evaluations where halving
// takes twenty.
func (c Clock) solve(chance func(x float64) float64, p float64) float64 {
	want := odds(p)
	lo, hi := c.bracket()
	atLo, atHi := odds(chance(lo))-want, odds(chance(hi))-want
	stayed := 0
	for hi-lo > closeEnough {
		x := lo - atLo*(hi-lo)/(atHi-atLo)
		if !(x > lo && x < hi) {
			x = lo + (hi-lo)/2
		}
		at := odds(chance(x)) - want
		switch {
		case math.Abs(at) < closeEnough*closeEnough:
			return x
		case at < 0:
			lo, atLo = x, at
			if stayed > 0 {
				atHi /= 2
			}
			stayed = 1
		default:
			hi, atHi = x, at
			if stayed < 0 {
				atLo /= 2
			}
			stayed = -1
		}
	}
	return lo + (hi-lo)/2
}

// bracket gives two hours between which all the cells emerge.
func (c Clock) bracket() (lo, hi float64) {
	wide := tails * math.Hypot(c.law.spread, c.numbers.Get(practice.SharedShiftSpread))
	lo, hi = c.law.mean-c.law.older-wide, c.law.mean+wide
	if c.after > lo {
		return c.after, max(hi, c.after+wide)
	}
	return lo, hi
}

// odds are the log odds of a chance.
func odds(p float64) float64 {
	p = min(max(p, leastChance), 1-leastChance)
	return math.Log(p / (1 - p))
}
