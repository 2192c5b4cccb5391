package rules

import "lidmark/domain/practice"

// Act is a kind of work. The zero Act is nothing to do but to know.
type Act uint8

// The acts.
const (
	ActNone Act = iota
	ActLookForEggs
	ActLookForBrood
	ActLookInside
	ActGiveCell
	ActCollectCells
	ActBreakDownCells
	ActSearchBrood
	ActCheckBees
	ActAddBees
	ActFeed
	ActNarrowEntrance
	ActTakeOutQueen
	ActShakeOut
	ActCatchQueen
	ActSeeToBank
	ActSeeToPapers
	ActCountAgain
	ActUnite
	ActKeep
	ActOpenEntrance
	ActMakeReady
	ActGraft
	ActCarryStand
	ActPaintFront
	ActHandOver
	ActMoveCells
	ActCountCells
	ActMakeUp
	ActGoOn
	ActSeeToOrder
)

// acts are the words of an act and the minutes it takes at a nuc or colony,
// or for each cell; a zero key takes none. A nuc on full combs may take more.
var acts = [...]struct {
	word       string
	mini, full practice.Key
}{
	ActNone:           {"", 0, 0},
	ActLookForEggs:    {"look for eggs", practice.MinutesLook, practice.MinutesLookFrameNuc},
	ActLookForBrood:   {"look for capped brood", practice.MinutesLook, practice.MinutesLookFrameNuc},
	ActLookInside:     {"look inside", practice.MinutesLook, practice.MinutesLookFrameNuc},
	ActGiveCell:       {"give a cell", practice.MinutesGiveCell, practice.MinutesGiveCell},
	ActCollectCells:   {"collect ripe cells", practice.MinutesCageCell, practice.MinutesCageCell},
	ActBreakDownCells: {"break down own cells", practice.MinutesBreakDownCells, practice.MinutesBreakDownCells},
	ActSearchBrood:    {"search the brood", practice.MinutesSearchBrood, practice.MinutesSearchBrood},
	ActCheckBees:      {"check the bees", practice.MinutesCheckBees, practice.MinutesCheckBees},
	ActAddBees:        {"add bees", practice.MinutesAddBees, practice.MinutesAddBees},
	ActFeed:           {"feed", practice.MinutesFeed, practice.MinutesFeed},
	ActNarrowEntrance: {"narrow the entrance", practice.MinutesEntrance, practice.MinutesEntrance},
	ActTakeOutQueen:   {"take out the queen", practice.MinutesCatch, practice.MinutesCatch},
	ActShakeOut:       {"shake out", practice.MinutesShakeOut, practice.MinutesShakeOut},
	ActCatchQueen:     {"catch the queen", practice.MinutesCatch, practice.MinutesCatch},
	ActSeeToBank:      {"see to the bank", practice.MinutesBank, practice.MinutesBank},
	ActSeeToPapers:    {"see to the papers", 0, 0},
	ActCountAgain:     {"count again", 0, 0},
	ActUnite:          {"unite", practice.MinutesUnite, practice.MinutesUnite},
	ActKeep:           {"keep for coming cells", 0, 0},
	ActOpenEntrance:   {"open the entrance", practice.MinutesEntrance, practice.MinutesEntrance},
	ActMakeReady:      {"make ready for a graft", 0, 0},
	ActGraft:          {"graft", 0, 0},
	ActCarryStand:     {"carry and turn", practice.MinutesCarryStand, practice.MinutesCarryStand},
	ActPaintFront:     {"mark the front", practice.MinutesPaintFront, practice.MinutesPaintFront},
	ActHandOver:       {"hand over", 0, 0},
	ActMoveCells:      {"move cells", practice.MinutesFeedRearer, practice.MinutesFeedRearer},
	ActCountCells:     {"count cells", practice.MinutesCheckTake, practice.MinutesCheckTake},
	ActMakeUp:         {"make up nucs", 0, 0},
	ActGoOn:           {"go on as planned", 0, 0},
	ActSeeToOrder:     {"see to the order", 0, 0},
}

// String is the act in words.
func (a Act) String() string { return acts[a].word }

// opens tells whether a box is opened for it.
func (a Act) opens() bool {
	switch a {
	case ActNone, ActCollectCells, ActNarrowEntrance, ActSeeToBank, ActSeeToPapers, ActCountAgain, ActKeep, ActOpenEntrance, ActMakeReady, ActGraft, ActCarryStand, ActPaintFront, ActHandOver, ActMakeUp, ActSeeToOrder:
		return false
	default:
		return true
	}
}

// Minutes is what the act takes at one nuc or colony, or for one cell.
func (a Act) Minutes(n practice.Numbers, fullCombs bool) float64 {
	key := acts[a].mini
	if fullCombs {
		key = acts[a].full
	}
	if key == 0 {
		return 0
	}
	return n.Get(key)
}
