package season

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/plan"
)

// Clashes are what the grafts that are found want and cannot all have, with each other and with what is planned
// already, as the season tells it once they are planned, without ways out: those that are not there now.
func (f Found) Clashes(p *plan.Planner) (fresh []Clash) {
	if len(f.Batches) == 0 {
		return nil
	}
	var all []book.BatchPlanned
	for i := range f.Batches {
		all = append(all, f.Plan(i, book.BatchID{}))
	}
	now := NewBoard(p).found
	b := NewBoard(p.Besides(all))
	for _, c := range b.found {
		if !slices.ContainsFunc(now, c.is) {
			c.Why = b.why(c, b.loads)
			fresh = append(fresh, c)
		}
	}
	return fresh
}

// is tells whether two clashes are the same of the same batches.
func (c Clash) is(o Clash) bool {
	return c.Kind == o.Kind && c.Yard == o.Yard && slices.Equal(c.Batches, o.Batches)
}

// ClashesThen says how many clashes some grafts bring, once they are planned.
func ClashesThen(n int) string {
	switch n {
	case 0:
		return "planned so, none of these grafts wants what another batch wants"
	case 1:
		return "planned so, there is 1 clash more:"
	default:
		return fmt.Sprintf("planned so, there are %d clashes more:", n)
	}
}
