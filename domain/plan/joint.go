package plan

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Joint are the chances of how many queens some planned batches give together by a day, as
// grafts of one wish: those of a yard share its nucs as those of an [Answer] do. None give none.
func (p *Planner) Joint(of []book.BatchPlan, by calendar.Day) Chances {
	if len(of) == 0 {
		return Chances{}
	}
	of = slices.Clone(of)
	byGraft(of)
	laying, virgins := of[0].Laying, of[0].Virgins
	var grafts []Graft
	for len(of) > 0 {
		var here, elsewhere []book.BatchPlan
		for _, b := range of {
			if b.Yard == of[0].Yard {
				here = append(here, b)
			} else {
				elsewhere = append(elsewhere, b)
			}
		}
		of = elsewhere
		grafts = append(grafts, p.inYard(here, by, laying)...)
	}
	grafts[0].Again = false // none before it
	return p.queens(laying, virgins, grafts)
}

// inYard are the grafts of planned batches of one yard, in their order; the first has nucs that
// none of another yard has.
func (p *Planner) inYard(of []book.BatchPlan, by calendar.Day, laying bool) []Graft {
	grafts, ladders := make([]Graft, len(of)), make([]Ladder, len(of))
	for i, b := range of {
		grafts[i], ladders[i] = p.GraftFor(b, by, laying), p.LadderOf(b)
	}
	Again(ladders, grafts)
	grafts[0].Again = true
	return grafts
}

// queens are the chances of some grafts by the keeper's rates, kept.
func (p *Planner) queens(laying, virgins bool, grafts []Graft) Chances {
	p.mu.Lock()
	key := 0
	for _, g := range grafts {
		key = p.numbered(row{key, laying, virgins, g})
	}
	c, known := p.joint[key]
	p.mu.Unlock()
	if !known {
		r := p.rates()
		r.Laying, r.Virgins = laying, virgins
		c = r.Queens(grafts...)
		p.mu.Lock()
		p.joint[key] = c
		p.mu.Unlock()
	}
	return c
}

// row is a row of grafts: the number of those before its last, and that one.
type row struct {
	before          int
	laying, virgins bool
	last            Graft
}

// numbered is the number of a row of grafts, a new one where it was not asked before.
func (p *Planner) numbered(r row) int {
	n, known := p.rows[r]
	if !known {
		n = len(p.rows) + 1
		p.rows[r] = n
	}
	return n
}
