package bee

import "lidmark/domain/practice"

// Wild is the clock of cells nobody wanted, in days from the day on which
// combs with eggs or young larvae went in among bees that would raise a queen
// from them: a starter, a finisher, a builder, a nuc that holds a cell.
type Wild struct {
	SearchFrom int // cells can be seen
	SearchWell int // best searched by
	SearchBy   int // the last day
	Walk       int // a queen raised there could walk
}

// WildCells gives the clock of wild cells.
func WildCells(n practice.Numbers) Wild {
	return Wild{
		SearchFrom: n.Days(practice.WildCellSearchFrom),
		SearchWell: n.Days(practice.WildCellSearchGood),
		SearchBy:   n.Days(practice.WildCellSearchBy),
		Walk:       n.Days(practice.WildCellWalk),
	}
}

// Own is the clock of a nuc's own cells, in days from the day it was left
// without a queen on eggs or young larvae.
type Own struct {
	BreakFrom int // from here no larva is young enough for new ones
	BreakBy   int // the last day
	Emerge    int // the own queen walks
}

// OwnCells gives the clock of a nuc's own cells.
func OwnCells(n practice.Numbers) Own {
	return Own{
		BreakFrom: n.Days(practice.BreakDownOwnCellsFrom),
		BreakBy:   n.Days(practice.BreakDownOwnCellsBy),
		Emerge:    n.Days(practice.OwnQueenEmerges),
	}
}
