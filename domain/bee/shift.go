package bee

import (
	"math"

	"lidmark/domain/practice"
)

// cellLaw is the law of one cell's emergence about the batch's shared shift:
// normal about mean, but a share of the larvae was older than thought and
// walks earlier. Hours.
type cellLaw struct {
	mean, spread     float64
	overShare, older float64
}

// out is the chance that a cell has emerged by hour x.
func (l cellLaw) out(x float64) float64 {
	z := (x - l.mean) / l.spread
	return (1-l.overShare)*phi(z) + l.overShare*phi(z+l.older/l.spread)
}

// in is 1 − out, exact in the far tail.
func (l cellLaw) in(x float64) float64 {
	z := (x - l.mean) / l.spread
	return (1-l.overShare)*phi(-z) + l.overShare*phi(-z-l.older/l.spread)
}

// density is the derivative of out, per hour.
func (l cellLaw) density(x float64) float64 {
	z := (x - l.mean) / l.spread
	return ((1-l.overShare)*bell(z) + l.overShare*bell(z+l.older/l.spread)) / l.spread
}

// node is one value of the shift shared by a batch, with its weight.
type node struct{ shift, weight float64 }

const (
	// reach is how many spreads of the shared shift are integrated over; what
	// lies outside is below one in a hundred million.
	reach = 6
	// fineness is the step in spreads of the shift or of the cell, whichever
	// is narrower. With it the even steps are exact to five digits for up to
	// some hundred cells (see TestQuadratureHasConverged).
	fineness = 0.4
)

// shifts lays nodes over the shared shift before anything was seen: even
// steps under the normal curve, which for so smooth an integrand converge
// faster than any power of the step.
func shifts(spread, own float64) []node {
	if spread == 0 {
		return []node{{0, 1}}
	}
	half := int(math.Ceil(reach * spread / (fineness * min(spread, own))))
	step := reach * spread / float64(half)
	nodes := make([]node, 0, 2*half+1)
	for i := -half; i <= half; i++ {
		s := float64(i) * step
		nodes = append(nodes, node{s, bell(s/spread) * step / spread})
	}
	return nodes
}

// likelihood is the chance of what was seen at hour x from the graft, had the
// batch no shift. from is the hour of the last look before x, at which this
// cell was not out.
func (l cellLaw) likelihood(sign Sign, x, from, capped float64, n practice.Numbers) float64 {
	switch sign {
	case SeenCapped:
		return phi((x - capped) / l.spread)
	case SeenOpen:
		return phi((capped - x) / l.spread)
	case TipBare:
		spread := math.Hypot(l.spread, n.Get(practice.TipBareSpread))
		return bell((x + n.Get(practice.TipBareBefore) - l.mean) / spread)
	case OneOut:
		return max(l.out(x)-l.out(from), 0)
	default:
		return 1
	}
}

// phi is the standard normal distribution function.
func phi(z float64) float64 { return math.Erfc(-z/math.Sqrt2) / 2 }

// bell is the standard normal density.
func bell(z float64) float64 { return math.Exp(-z*z/2) / math.Sqrt(2*math.Pi) }

// power is x to a whole power n ≥ 0; math.Pow costs five times as much, and
// this is the innermost loop.
func power(x float64, n int) float64 {
	p := 1.0
	for ; n > 0; n >>= 1 {
		if n&1 == 1 {
			p *= x
		}
		x *= x
	}
	return p
}
