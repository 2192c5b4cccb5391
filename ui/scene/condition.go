package scene

// Condition is what a nuc is drawn as. The zero Condition is Empty.
type Condition uint8

// The ten conditions of a lid, the last three of them troubles, and the one
// that stands in strips only.
const (
	Empty          Condition = iota
	NoQueen                  // nobody lays and nobody will
	Cell                     // a queen cell given
	Virgin                   // a queen that does not lay yet
	Due                      // due for a look
	Laying                   // eggs seen or most probable
	GoodBrood                // capped worker brood
	DroneLayer               // drone brood in worker cells
	LayingWorkers            // many eggs a cell
	Robbed                   // robbed out
	Mated                    // mated, not laying yet: strips only
	conditionCount           // how many there are
)

// names holds letter and word of each condition.
var names = [conditionCount]struct{ letter, word string }{
	Empty:         {"·", "empty"},
	NoQueen:       {"–", "no queen"},
	Cell:          {"C", "cell"},
	Virgin:        {"V", "virgin"},
	Due:           {"?", "due for a look"},
	Laying:        {"E", "laying"},
	GoodBrood:     {"B", "good brood"},
	DroneLayer:    {"D", "drone layer"},
	LayingWorkers: {"W", "laying workers"},
	Robbed:        {"R", "robbed"},
	Mated:         {"", "mated, not laying yet"},
}

// Conditions returns the ten conditions of a lid, in the order of a legend.
func Conditions() []Condition {
	all := make([]Condition, Mated)
	for i := range all {
		all[i] = Condition(i)
	}
	return all
}

// Sign returns the condition's letter, the same on lid, typed line and paper.
func (c Condition) Sign() string { return names[c].letter }

// String returns the condition in the keeper's words.
func (c Condition) String() string { return names[c].word }

// Trouble reports whether the condition is one of the three troubles, drawn with
// cut corners.
func (c Condition) Trouble() bool { return c >= DroneLayer && c <= Robbed }
