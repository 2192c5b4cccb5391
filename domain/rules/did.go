package rules

import (
	"slices"

	"lidmark/domain/book"
)

// deedsOf are the kinds of facts that say that an act was done. Where a look tells what
// is to be done, what was done upon it says that there was one. An act that is not here
// has no kind of fact of its own.
var deedsOf = map[Act][]book.Fact{
	ActLookForEggs:    looks,
	ActLookForBrood:   looks,
	ActLookInside:     looks,
	ActCheckBees:      looks,
	ActGiveCell:       given,
	ActKeep:           given,
	ActCollectCells:   slices.Concat(given, []book.Fact{book.VirginCaged{}, book.CellsCulled{}, book.EmergedCounted{}, book.RipeCounted{}}),
	ActBreakDownCells: {book.OwnCellsBroken{}},
	ActSearchBrood:    {book.WildCellsSearched{}},
	ActAddBees:        {book.BeesAdded{}, book.BroodGiven{}, book.NucMadeUp{}},
	ActFeed:           {book.Fed{}},
	ActNarrowEntrance: {book.EntranceSet{}},
	ActOpenEntrance:   {book.EntranceSet{}},
	ActTakeOutQueen:   {book.QueenCaught{}, book.QueenGone{}, book.United{}, book.ShakenOut{}},
	ActShakeOut:       {book.United{}, book.ShakenOut{}},
	ActCatchQueen:     {book.QueenCaught{}},
	ActHandOver:       {book.QueenHandedOver{}, book.OrderClosed{}},
	ActMoveCells:      {book.CellsMoved{}},
	ActCountCells:     {book.TakeCounted{}, book.CappedCounted{}, book.RipeCounted{}},
	ActMakeUp:         {book.NucMadeUp{}},
	ActUnite:          slices.Concat(given, []book.Fact{book.United{}, book.ShakenOut{}, book.BeesAdded{}, book.BroodGiven{}}),
}

var (
	given = []book.Fact{book.CellGiven{}, book.VirginPutIn{}, book.QueenPutIn{}}
	looks = slices.Concat(given, []book.Fact{
		book.OwnCellsBroken{}, book.QueenCaught{}, book.QueenGone{}, book.United{}, book.ShakenOut{}, book.BeesAdded{}, book.BroodGiven{}, book.NucLost{}, book.Looked{},
	})
)

// Did tells whether a fact says that an act was done: a cell given, a look written
// down. Work that nobody did can end as well: the cell went elsewhere. Of an act whose
// doing has no kind of fact of its own every fact tells.
func (a Act) Did(fact book.Fact) bool {
	kinds, ok := deedsOf[a]
	return !ok || slices.ContainsFunc(kinds, func(of book.Fact) bool { return book.KindOfFact(of) == book.KindOfFact(fact) })
}
