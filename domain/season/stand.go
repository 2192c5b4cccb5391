package season

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
)

// standing is a batch that the book has: planned, or grafted with cells that are
// still to be given.
type standing struct {
	id      book.BatchID
	title   string
	planned book.BatchPlan // of a grafted one what was planned of it
	grafted bool
	ladder  plan.Ladder
	size    plan.Size // its nucs are those that are still to be given
	virgins int       // that fly
}

// standings are the batches of the book that take something up from the view's day
// on: those grafted whose queens are still to come, then those planned.
func standings(p *plan.Planner) (all []standing) {
	v := p.View()
	for b := range v.Batches() {
		if s, ok := graftedOf(p, b); ok {
			all = append(all, s)
		}
	}
	for b := range v.ToGraft() {
		if b.Yard.IsZero() {
			b.Yard = homeOf(v)
		}
		all = append(all, standing{id: b.Batch, title: titleOf(p.View(), b), planned: b, ladder: p.LadderOf(b), size: p.SizeOf(b), virgins: b.Nucs})
	}
	return all
}

// starterBees are the kilograms of bees for its starters that are still to be set up.
func (s standing) starterBees(p *plan.Planner) float64 {
	if s.ladder.Rung(plan.SetUpStarter).By < p.View().Today() {
		return 0
	}
	return p.BeesOfStarters(s.size)
}

// makesUp tells whether nucs are still to be made up for it.
func (s standing) makesUp(p *plan.Planner) bool {
	return s.size.Nucs > 0 && !s.size.NucsMade && s.ladder.Rung(plan.MakeUpNucs).By >= p.View().Today()
}

// titleOf is what a planned batch is called: it has no number yet.
func titleOf(v *book.View, b book.BatchPlan) string {
	title := "graft of " + b.Day.ShortFrom(v.Today())
	if b.Line != "" {
		title = b.Line + ", " + title
	}
	return title + v.Apart(b)
}

// graftedOf is a grafted batch. The nucs that were given its cells are taken by
// what they hold; others wait for the cells that are left.
func graftedOf(p *plan.Planner, b *book.Batch) (standing, bool) {
	v := p.View()
	was, _ := v.BatchPlan(b.Batch)
	waits := p.Grafted(b)
	l, waiting := waits.Ladder, waits.Nucs
	if l.Rung(plan.Ready).By < v.Today() {
		return standing{}, false
	}
	s := standing{id: b.Batch, title: fmt.Sprintf("batch %d", b.Number), planned: was, grafted: true, ladder: l, size: waits.Size}
	s.virgins = waiting + len(b.Given)
	if waiting == 0 && l.Rung(plan.Fly).By >= v.Today() { // past their hour they emerge where they are, and fly if they are given a nuc
		s.virgins += b.Left()
	}
	return s, true
}

func homeOf(v *book.View) book.YardID {
	if y := v.HomeYard(); y != nil {
		return y.Yard
	}
	return book.YardID{}
}

// spanOf is the first and the last day of some batches.
func spanOf(all []standing, today calendar.Day) (from, until calendar.Day) {
	from, until = today, today
	for _, s := range all {
		from, until = min(from, s.ladder.Day), max(until, s.ladder.Day)
	}
	return from, until
}
