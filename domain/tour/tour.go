// Package tour finds short rounds through points of a plane: from the first of them
// through all others and back. It knows numbers and nothing of bees.
//
// Up to a dozen points the round is the shortest there is (Held and Karp 1962, J Soc
// Indust Appl Math 10:196). Larger ones begin with the nearest neighbours, are
// improved by turning a stretch round (2-opt) and by moving one (Or 1976) among the
// nearest neighbours, then by small shakes that are kept where they help. The same
// points give the same round on every machine.
package tour

import "math"

// Point is a place in a plane, in any unit.
type Point struct{ X, Y float64 }

// Round is a short round through points, as their indexes beginning with the first,
// and its length in their unit.
func Round(at []Point) (order []int, length float64) {
	return RoundBy(at, func(i, j int) float64 { return math.Hypot(at[i].X-at[j].X, at[i].Y-at[j].Y) })
}

// RoundBy is [Round] with distances of the caller's own, the same both ways and not
// negative. Those near by them should be near in the plane.
func RoundBy(at []Point, distance func(i, j int) float64) (order []int, length float64) {
	if len(at) <= exactUpTo {
		order = exact(len(at), distance)
	} else {
		order = improved(at, distance)
	}
	return fromFirst(order), Length(order, distance)
}

// Length is how long a round through all of an order and back to its first is.
func Length(order []int, distance func(i, j int) float64) (sum float64) {
	for k, i := range order {
		sum += distance(i, order[(k+1)%len(order)])
	}
	return sum
}

// fromFirst turns a round so that it begins with point 0 and goes on with the lower
// of its neighbours, which is the same round.
func fromFirst(order []int) []int {
	n := len(order)
	at := 0
	for k, i := range order {
		if i == 0 {
			at = k
		}
	}
	step := 1
	if n > 2 && order[(at+n-1)%n] < order[(at+1)%n] {
		step = n - 1
	}
	out := make([]int, n)
	for k := range out {
		out[k] = order[(at+k*step)%n]
	}
	return out
}
