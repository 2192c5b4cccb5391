package handover

import (
	"lidmark/domain/book"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// looksDue are the nucs whose looks come first where an order misses queens: eggs were seen in
// them, capped brood is to be seen by now, and if it is in all of them nothing is missing. There
// are none where looks do not help.
func (s *Sheet) looksDue(p *plan.Planner, i int) (due []*book.Nuc) {
	o, all := s.Orders[i], s.supply(p, i, nil)
	for k := range all {
		c := &all[k]
		if c.nuc == nil || !o.Order.Takes(c.line) || !lookDue(p, c.nuc) {
			continue
		}
		due = append(due, c.nuc)
		c.one = plan.Prospect{Proven: true, From: c.one.From, Sure: c.one.Sure}
	}
	if len(due) == 0 || s.inTime(i, all, p.View().Numbers().Get(practice.NextSure))+o.Planned < o.Short {
		return nil
	}
	return due
}

// lookDue tells whether a nuc in which eggs were seen can be looked at for capped brood by now.
func lookDue(p *plan.Planner, n *book.Nuc) bool {
	of := p.Course().Of(n)
	return n.Holds.Condition == book.Laying && !of.LookFrom.IsZero() && !of.LookFrom.After(p.View().On())
}

// LookAt are the names of the nucs into which a look comes first, see [Served.Look].
func (s Served) LookAt() string {
	names := make([]string, len(s.Look))
	for i, n := range s.Look {
		names[i] = n.Name
	}
	return book.Together(names)
}
