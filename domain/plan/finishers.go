package plan

import (
	"math"

	"lidmark/domain/practice"
)

// FinishersFor is how many colonies rear so many accepted grafts.
func FinishersFor(takes float64, n practice.Numbers) float64 {
	return math.Ceil(takes / n.Get(practice.CellsPerFinisher))
}

// StartersFor is how many colonies start so many larvae.
func StartersFor(larvae int, n practice.Numbers) float64 {
	return math.Ceil(float64(larvae) / n.Get(practice.CellsPerStarter))
}
