package strength

import (
	"math"

	"lidmark/domain/practice"
)

// Remedy is what helps against robbers.
type Remedy int

// The remedies, the cheapest first. Care is for where the entrance is as narrow as its bees
// need it and no syrup draws, Brief for where it is one bee wide besides.
const (
	NoRemedy Remedy = iota
	NarrowDoor
	NoSyrup
	Care
	Brief
)

// String is the remedy as what to do.
func (r Remedy) String() string {
	return [...]string{
		NoRemedy:   "nothing",
		NarrowDoor: "narrow the entrance",
		NoSyrup:    "fondant, no syrup",
		Care:       "entrance one bee wide, open only early or late",
		Brief:      "open only early or late",
	}[r]
}

// leastHelp is by how much a remedy lowers the risk at least, as a share of such nucs: less
// is not seen in whole percent, and is nothing to walk to a nuc for. Common practice, no source.
const leastHelp = 0.005

// Helps tells whether the remedy lowers the reckoned risk by as much as is told.
func (e Exposure) Helps() bool { return e.Risk-e.After >= leastHelp }

// remedy is the cheapest thing that helps at a score, and by how much it lowers that:
// an entrance as wide as the bees can guard, see [Door], draws nobody, fondant draws as
// little as fondant does, and one that is one bee wide draws less than nobody.
func (y *Yard) remedy(x float64, terms [causes]term, area, bees float64) (r Remedy, lowers float64) {
	to := func(narrow float64) float64 { return max(0, y.doorAdds(area, bees)-y.doorAdds(narrow, bees)) }
	fondant := y.numbers.Get(practice.RobbingFondant)
	for _, t := range terms {
		r, lowers = NoRemedy, 0
		switch {
		case t.cause == WideDoor:
			r, lowers = NarrowDoor, to(Door(bees, y.numbers))
		case t.cause == Syrup && t.adds > fondant:
			r, lowers = NoSyrup, t.adds-fondant
		}
		if share(x)-share(x-lowers) >= leastHelp {
			return r, lowers
		}
	}
	if lowers = to(y.numbers.Get(practice.OneBeeWide)); share(x)-share(x-lowers) >= leastHelp {
		return Care, lowers
	}
	return Brief, 0
}

// Door is the entrance in cm² that so many bees can guard: to the tenth, and one bee wide
// at least, or nobody gets in.
func Door(bees float64, n practice.Numbers) float64 {
	return max(n.Get(practice.OneBeeWide), math.Round(n.Get(practice.RobbingDoorUsual)*bees/100)/10)
}

// doorAdds is what an entrance in cm² adds to the score where so many bees guard
// it.
func (y *Yard) doorAdds(area, bees float64) float64 {
	return y.numbers.Get(practice.RobbingDoor) * math.Log(area/(y.numbers.Get(practice.RobbingDoorUsual)*bees/1000))
}
