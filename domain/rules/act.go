package rules

import "lidmark/domain/practice"

// Act is a kind of work. The zero Act is nothing to do but to know.
type Act uint8

// The acts.
const (
	NoAct Act = iota
	LookForEggs
	LookForBrood
	LookInside
	GiveACell
	CollectCells
	BreakDownCells
	SearchBrood
	CheckBees
	AddBees
	Feed
	NarrowEntrance
	TakeOutQueen
	ShakeOut
	CatchQueen
	SeeToBank
	MoveCells
	CountTake
	CountCapped
	CountGoods
	SeeToPapers
	Decide
)

// acts are the words of an act and the minutes it takes a nuc, cell or
// colony; a zero key takes none.
var acts = [...]struct {
	word    string
	minutes practice.Key
}{
	NoAct:          {"", 0},
	LookForEggs:    {"look for eggs", practice.MinutesLook},
	LookForBrood:   {"look for capped brood", practice.MinutesLook},
	LookInside:     {"look inside", practice.MinutesLook},
	GiveACell:      {"give a cell", practice.MinutesGiveCell},
	CollectCells:   {"collect ripe cells", practice.MinutesEmergenceCheck},
	BreakDownCells: {"break down own cells", practice.MinutesBreakDownCells},
	SearchBrood:    {"search the brood", practice.MinutesSearchBrood},
	CheckBees:      {"check the bees", practice.MinutesCheckBees},
	AddBees:        {"add bees", practice.MinutesAddBees},
	Feed:           {"feed", practice.MinutesFeed},
	NarrowEntrance: {"narrow the entrance", practice.MinutesEntrance},
	TakeOutQueen:   {"take out the queen", practice.MinutesCatch},
	ShakeOut:       {"shake out", practice.MinutesShakeOut},
	CatchQueen:     {"catch the queen", practice.MinutesCatch},
	SeeToBank:      {"see to the bank", practice.MinutesBank},
	MoveCells:      {"move the cells", practice.MinutesBank},
	CountTake:      {"count the take", practice.MinutesSearchBrood},
	CountCapped:    {"count the capped cells", practice.MinutesSearchBrood},
	CountGoods:     {"count again", 0},
	SeeToPapers:    {"see to the papers", 0},
	Decide:         {"decide", 0},
}

// String is the act in words.
func (a Act) String() string { return acts[a].word }

// Minutes is what the act takes at one nuc, cell or colony.
func (a Act) Minutes(n practice.Numbers) float64 {
	if key := acts[a].minutes; key != 0 {
		return n.Get(key)
	}
	return 0
}
