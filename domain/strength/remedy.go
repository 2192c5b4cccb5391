package strength

import (
	"math"

	"lidmark/domain/practice"
)

// Remedy is what helps against robbers.
type Remedy int

// The remedies, the cheapest first. Care is for where the entrance is narrow
// and no syrup draws.
const (
	NoRemedy Remedy = iota
	NarrowDoor
	NoSyrup
	Care
)

// String is the remedy as what to do.
func (r Remedy) String() string {
	return [...]string{
		NoRemedy:   "nothing",
		NarrowDoor: "narrow the entrance",
		NoSyrup:    "fondant, no syrup",
		Care:       "entrance one bee wide, open only early or late",
	}[r]
}

// remedy is the cheapest thing that helps, and by how much it lowers the score:
// an entrance as wide as the bees can guard draws nobody, fondant draws as
// little as fondant does, and one that is one bee wide draws less than nobody.
func (y *Yard) remedy(terms [causes]term, bees float64) (r Remedy, lowers float64) {
	for _, t := range terms {
		switch {
		case t.cause == WideDoor && t.adds > 0:
			return NarrowDoor, t.adds
		case t.cause == Syrup && t.adds > y.numbers.Get(practice.RobbingFondant):
			return NoSyrup, t.adds - y.numbers.Get(practice.RobbingFondant)
		}
	}
	narrow := y.doorAdds(y.numbers.Get(practice.OneBeeWide), bees)
	return Care, max(0, terms[WideDoor-1].adds-narrow)
}

// doorAdds is what an entrance in cm² adds to the score where so many bees guard
// it.
func (y *Yard) doorAdds(area, bees float64) float64 {
	return y.numbers.Get(practice.RobbingDoor) * math.Log(area/(y.numbers.Get(practice.RobbingDoorUsual)*bees/1000))
}
