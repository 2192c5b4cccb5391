package yard

import "lidmark/domain/practice"

// Factor is how much more or less than usual a virgin is lost on a flight from a
// door with such a chance of a wrong one: 1 at the usual chance, and never below
// the least, since what is lost in the air is lost anywhere.
func Factor(wrong float64, n practice.Numbers) float64 {
	more := (wrong - n.Get(practice.YardWrongUsual)) / n.Get(practice.YardWrongDoubles)
	return max(1+more, n.Get(practice.YardFactorLeast))
}
