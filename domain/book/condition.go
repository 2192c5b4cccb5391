package book

// Condition is what a nuc holds, in the ten words that lid, typed line and
// sheet share.
type Condition uint8

// The conditions. Empty, the zero value, is a nuc without bees. Due is never
// recorded: the calendar makes it of a virgin.
const (
	Empty Condition = iota
	NoQueen
	Cell
	Virgin
	Due
	Laying
	GoodBrood
	DroneLayer
	LayingWorkers
	BeingRobbed
)

var conditions = [...]struct{ letter, word string }{
	Empty:         {"·", "empty"},
	NoQueen:       {"–", "no queen"},
	Cell:          {"C", "cell"},
	Virgin:        {"V", "virgin"},
	Due:           {"?", "due for a look"},
	Laying:        {"E", "laying"},
	GoodBrood:     {"B", "good brood"},
	DroneLayer:    {"D", "drone layer"},
	LayingWorkers: {"W", "laying workers"},
	BeingRobbed:   {"R", "robbed"},
}

// Conditions are all there are, in the order of the legend.
func Conditions() []Condition {
	all := make([]Condition, len(conditions))
	for i := range all {
		all[i] = Condition(i)
	}
	return all
}

// Letter is the condition's sign on the lid.
func (c Condition) Letter() string { return conditions[c].letter }

// String is the condition in words.
func (c Condition) String() string { return conditions[c].word }

// MarshalText writes the word.
func (c Condition) MarshalText() ([]byte, error) { return []byte(c.String()), nil }

// Queenright tells whether there is a mated queen of the nuc's own.
func (c Condition) Queenright() bool { return c == Laying || c == GoodBrood }

// Trouble tells whether the condition is one of the three troubles.
func (c Condition) Trouble() bool {
	return c == DroneLayer || c == LayingWorkers || c == BeingRobbed
}
