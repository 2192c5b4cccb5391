package book

import "lidmark/domain/calendar"

// Sight is whether a look found the queen.
type Sight = Word[sightWords]

// The sights of a queen. Unsaid is the zero value: nobody said.
const (
	Unsaid     Sight = iota
	QueenSeen        // q
	NoneSeen         // n
	VirginSeen       // v
)

type sightWords struct{}

func (sightWords) words() (string, []string) {
	return "sight", []string{"", "queen seen", "no queen seen", "virgin seen"}
}

// EggSight is what a look says of eggs.
type EggSight = Word[eggSightWords]

// The sights of eggs. EggsUnsaid is the zero value.
const (
	EggsUnsaid EggSight = iota
	NoEggs              // e0
	SingleEggs          // e
	ManyEggs            // w: many eggs a cell
)

type eggSightWords struct{}

func (eggSightWords) words() (string, []string) {
	return "eggs", []string{"", "no eggs", "eggs", "many eggs a cell"}
}

// CellSight is how a given cell was found.
type CellSight = Word[cellSightWords]

// The sights of a given cell. CellUnsaid is the zero value.
const (
	CellUnsaid CellSight = iota
	CellShut
	CellOpenAtTip // she walked out
	CellTornAtSide
)

type cellSightWords struct{}

func (cellSightWords) words() (string, []string) {
	return "cell", []string{"", "cell shut", "cell open at the tip", "cell torn at the side"}
}

// The ends of the scales a look is told in: full combs of food, and the fiercest
// temper. They give figures in books their meaning and are nobody's to change.
const (
	MostStores = 3
	MostTemper = 4
)

// Looked is one opening of a nuc and everything that was seen. Brood is capped
// worker brood in palms (1 dm²), Sides the sides of comb with bees, Stores 0
// to [MostStores], Temper 1 calm to [MostTemper], OwnCells how many own cells were seen.
// DroneBrood is domed drone brood in worker cells. Thorough tells that every
// side of every comb was looked at. Quick was a glance under the lid.
type Looked struct {
	Nuc        NucID     `json:"nuc"`
	Queen      Sight     `json:"queen,omitzero"`
	Eggs       EggSight  `json:"eggs,omitzero"`
	Larvae     bool      `json:"larvae,omitzero"`
	Brood      Amount    `json:"cappedDM2,omitzero"`
	DroneBrood bool      `json:"droneBrood,omitzero"`
	OwnCells   Amount    `json:"ownCells,omitzero"`
	Cell       CellSight `json:"cell,omitzero"`
	Sides      Amount    `json:"sides,omitzero"`
	Stores     Amount    `json:"stores,omitzero"`
	Temper     Amount    `json:"temper,omitzero"`
	Thorough   bool      `json:"thorough,omitzero"`
	Quick      bool      `json:"quick,omitzero"`
	Note       string    `json:"note,omitzero"`
}

// RowLooked is a look at a whole row by counts, for a keeper without nuc
// names: of so many looked at, how many were laying, held a virgin, or had no
// queen. Stand is the row, or none for the whole yard.
type RowLooked struct {
	Yard    YardID  `json:"yard"`
	Stand   StandID `json:"stand,omitzero"`
	Batch   BatchID `json:"batch,omitzero"`
	Looked  int     `json:"looked"`
	Laying  int     `json:"laying,omitzero"`
	Virgins int     `json:"virgins,omitzero"`
	None    int     `json:"none,omitzero"`
}

// OwnCellsBroken tells that a nuc's own cells were broken down, and how many
// there were; none found is news as well.
type OwnCellsBroken struct {
	Nuc   NucID  `json:"nuc"`
	Found Amount `json:"found,omitzero"`
}

// WildCellsSearched tells that the brood put into a starter, finisher or
// builder was searched for wild cells, and how many were found and broken.
type WildCellsSearched struct {
	In    Subject `json:"in"`
	Found int     `json:"found"`
}

// Noted is a note in the keeper's words, about anything.
type Noted struct {
	Of   Subject `json:"of,omitzero"`
	Text string  `json:"text"`
}

// PutOff puts a task off: the rule that asked for it, its subject, and the
// day until which it shall be silent.
type PutOff struct {
	Rule  string       `json:"rule"`
	Of    Subject      `json:"of"`
	Until calendar.Day `json:"until"`
	Why   string       `json:"why,omitzero"`
}

// NumberChanged changes one of the keeper's numbers, named as in files, from
// now on. In is the keeper's own word for the money of a number in money; where it
// is not said, the word there was stays. Back tells that the default is put back.
type NumberChanged struct {
	Number string  `json:"number"`
	Value  float64 `json:"value,omitzero"`
	In     string  `json:"in,omitzero"`
	Back   bool    `json:"back,omitzero"`
}

// Struck strikes an entry: it counts as never written. A strike can be struck.
type Struck struct {
	Entry EntryID `json:"entry"`
	Why   string  `json:"why,omitzero"`
}

func (f Looked) about(add func(Subject)) { add(f.Nuc.Subject()) }
func (f RowLooked) about(add func(Subject)) {
	add(f.Yard.Subject())
	add(f.Stand.Subject())
	add(f.Batch.Subject())
}
func (f OwnCellsBroken) about(add func(Subject))    { add(f.Nuc.Subject()) }
func (f WildCellsSearched) about(add func(Subject)) { add(f.In) }
func (f Noted) about(add func(Subject))             { add(f.Of) }
func (f PutOff) about(add func(Subject))            { add(f.Of) }
func (f NumberChanged) about(func(Subject))         {}
func (f Struck) about(func(Subject))                {}
