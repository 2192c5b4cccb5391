package rules_test

import (
	"testing"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// TestWhatWasDone: only its own deed does an act; a look is told by what was done upon
// it, and an act of no own kind of fact by any.
func TestWhatWasDone(t *testing.T) {
	for _, c := range []struct {
		act  rules.Act
		fact book.Fact
		did  bool
	}{
		{rules.ActGiveCell, book.NucMadeUp{}, false},
		{rules.ActGiveCell, book.Looked{}, false},
		{rules.ActGiveCell, book.VirginPutIn{}, true},
		{rules.ActUnite, book.NucMadeUp{}, false},
		{rules.ActUnite, book.ShakenOut{}, true},
		{rules.ActLookInside, book.QueenCaught{Culled: true}, true},
		{rules.ActLookForEggs, book.Fed{}, false},
		{rules.ActCatchQueen, book.Looked{}, false},
		{rules.ActCollectCells, book.TakeCounted{}, false},
		{rules.ActCollectCells, book.VirginCaged{}, true},
		{rules.ActMoveCells, book.CellsMoved{}, true},
		{rules.ActMoveCells, book.TakeCounted{}, false},
		{rules.ActCountCells, book.CappedCounted{}, true},
		{rules.ActCountCells, book.CellsMoved{}, false},
		{rules.ActSeeToPapers, book.PaperHeld{}, true},
	} {
		if got := c.act.Did(c.fact); got != c.did {
			t.Errorf("%s, and the book says %T: done is %v", c.act, c.fact, got)
		}
	}
}
