package plan

import (
	"math"

	"lidmark/domain/practice"
)

// FinishersFor is how many colonies rear so many accepted grafts.
func FinishersFor(takes float64, n practice.Numbers) float64 {
	return math.Ceil(takes / n.Get(practice.CellsPerFinisher))
}
