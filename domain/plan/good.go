package plan

import "lidmark/domain/practice"

// Good is something a batch uses up or takes up.
type Good uint8

// The goods, in the order in which a keeper gets them ready. BroodCombs are for
// nucs on full combs, Food is what nucs are set up with. The last three are for orders: discs and
// pen by queens to mark, candy by cages that are sent.
const (
	DroneColonies Good = iota + 1
	BreederOfLine
	CellCups
	Starters
	StarterBees
	RearerFeed
	Finishers
	NursesOfCells
	InIncubator
	Nucs
	CupsOfBees
	KilogramsOfBees
	BroodCombs
	FoodForNucs
	Cages
	NumberDiscs
	MarkingPen
	CandyForCages
)

type goodRow struct {
	name, unit string
	bought     bool // it is bought, or made, ahead: it stands on the buying list
	used       []practice.Key
}

var goods = [...]goodRow{
	DroneColonies:   {"drone colonies", "", false, []practice.Key{practice.DroneColonies, practice.QueensPerDroneColony}},
	BreederOfLine:   {"breeders", "", false, nil},
	CellCups:        {"cell cups", "", true, nil},
	Starters:        {"starters", "", false, []practice.Key{practice.CellsPerStarter}},
	StarterBees:     {"bees for starters", "kg", false, []practice.Key{practice.StarterBees}},
	RearerFeed:      {"syrup for rearing", "l", true, []practice.Key{practice.FeedPerRearer, practice.FeedStarterBefore}},
	Finishers:       {"finishers", "", false, []practice.Key{practice.CellsPerFinisher}},
	NursesOfCells:   {"nurse bees", "kg", false, []practice.Key{practice.NursesPerCell, practice.BeesPerKilogram}},
	InIncubator:     {"incubator places", "", false, []practice.Key{practice.IncubatorPlaces, practice.GraftToCapped, practice.CellsIn}},
	Nucs:            {"nucs", "", false, nil},
	CupsOfBees:      {"cups of bees", "", false, []practice.Key{practice.BeesPerCup, practice.CupOfBees, practice.NeedAt14C}},
	KilogramsOfBees: {"bees for nucs", "kg", false, []practice.Key{practice.BeesPerKilogram, practice.ColonyGives}},
	BroodCombs:      {"combs of brood", "", false, []practice.Key{practice.BroodCombsPerNuc, practice.HalfCombsPerNuc, practice.HalfCombSide, practice.CombsPerColonyWeek}},
	FoodForNucs:     {"food for nucs", "kg", true, []practice.Key{practice.FoodPerNuc}},
	Cages:           {"queen cages", "", true, nil},
	NumberDiscs:     {"number discs", "", true, nil},
	MarkingPen:      {"marking pen", "queens", true, nil},
	CandyForCages:   {"candy for cages sent", "cages", true, nil},
}

// String is the good in the keeper's words.
func (g Good) String() string { return goods[g].name }

// Unit is what it is measured in; none where it is counted.
func (g Good) Unit() string { return goods[g].unit }

// Bought tells whether it stands on the buying list.
func (g Good) Bought() bool { return goods[g].bought }

// Used are the numbers on which its amount stands.
func (g Good) Used() []practice.Key { return goods[g].used }

// Again tells whether it can be used again for another graft: the colonies that
// rear, and the breeder.
func (g Good) Again() bool {
	switch g {
	case DroneColonies, BreederOfLine, Starters, Finishers, InIncubator, Nucs:
		return true
	default:
		return false
	}
}
