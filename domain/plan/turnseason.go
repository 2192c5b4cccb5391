package plan

import (
	"fmt"

	"lidmark/domain/book"
)

// Season is a turn with its days, where they are left open: the first cell as soon as one
// of a graft that makes sense in a yard can be given, the last queen when most of the
// season's last graft are ready. It fails where the book knows of no weather that ends a
// season, and where no day is left.
func (p *Planner) Season(yard book.YardID, t Turn) (Turn, error) {
	from := p.view.Today() + 1
	if t.First == 0 {
		t.First = p.Ladder(p.GraftAt(p.Soonest(yard, from)), 1, yard).Rung(GiveCells).Best
	}
	if t.Last == 0 {
		last, ok := p.LastGraft(yard, from)
		if !ok {
			return t, fmt.Errorf("when the season ends in %s is not known, %s: say by which day the last queen is wanted, or tell the usual weather of the year", p.view.Yard(yard).Name, p.NoLast(yard))
		}
		t.Last = p.Ladder(p.GraftAt(last), 1, yard).Rung(Ready).By
	}
	if t.Last <= t.First {
		return t, fmt.Errorf("no season is left from %s to %s: say a later day for the last queen, or a sooner one for the first cell", t.First.Short(), t.Last.Short())
	}
	return t, nil
}
