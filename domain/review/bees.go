package review

import (
	"math"

	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// hardlyAny is less of a cup than anybody measures: what is left of floats.
const hardlyAny = 1e-9

// Bees is how many whole cups of bees colonies can give on the day, and their names,
// those that can give most first: what plans reckon with, see [plan.Givers].
func (r *Review) Bees() (cups int, from []string) {
	kilogram := r.numbers.Get(practice.BeesPerKilogram) / r.numbers.Get(practice.BeesPerCup)
	for _, g := range plan.Givers(r.view, r.Day) {
		if n := int(math.Floor(g.Kilograms*kilogram + hardlyAny)); n > 0 {
			cups, from = cups+n, append(from, g.Colony.Name)
		}
	}
	return cups, from
}
