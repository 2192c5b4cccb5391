package strength

import (
	"math"

	"lidmark/domain/practice"
)

// estimate is a number of bees as reckoned, and the variance of its error as a
// share of it. The zero estimate knows nothing.
type estimate struct {
	bees, variance float64
	known          bool
}

// weigh joins what was reckoned with what a look saw. Both are taken as normal
// with errors that are shares of one number of bees, e of the reckoning and l of
// the look, so the closer one weighs more:
//
//	k = e² / (e² + l²)
//	bees = reckoned + k·(seen − reckoned)
//	error² = e²·l² / (e² + l²)
//
// A look that lies further from the reckoning than some joint errors √(e² + l²)
// of the larger number stands alone: something happened that nobody wrote down.
func weigh(was estimate, seen float64, n practice.Numbers) estimate {
	l := n.Get(practice.LookError)
	both := was.variance + l*l
	apart := math.Abs(seen - was.bees)
	if !was.known || seen <= 0 || apart > n.Get(practice.LookOverrules)*math.Sqrt(both)*max(seen, was.bees) {
		return estimate{seen, l * l, true}
	}
	k := was.variance / both
	return estimate{was.bees + k*(seen-was.bees), k * l * l, true}
}

// joined is an estimate of bees and of others that come to them, whose errors do
// not know of each other.
func joined(a, b estimate) estimate {
	all := a.bees + b.bees
	if all <= 0 {
		return estimate{known: true}
	}
	return estimate{all, (a.variance*a.bees*a.bees + b.variance*b.bees*b.bees) / (all * all), true}
}
