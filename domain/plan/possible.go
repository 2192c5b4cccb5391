package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Possible is [Planner.Answer] where it would graft so soon that a step before that is
// past: of the first graft that has them all; and where no nuc is free for its cells, of the
// nearest for which some are, one in time before all others. The wish is not in time if that is too late. A graft of which the
// keeper says the day, and one that is planned, stay.
func (p *Planner) Possible(w Wish) Answer {
	a, stays := p.Answer(w), w.Graft != 0 || !w.Not.IsZero()
	if !stays {
		a = p.notPast(w, a)
	}
	if a.Nucs > 0 {
		return a
	}
	full := Full{a.Yard, a.Batches[0].Ladder}
	if !stays {
		if day, yard := p.nucsFree(w, a); day != 0 {
			passed := a.Passed
			w.Graft, w.Yard = day, yard
			a = p.Answer(w)
			a.Passed = passed
		}
	}
	a.Full = full
	return a
}

// notPast is an answer of a graft so late that no step before it is past.
func (p *Planner) notPast(w Wish, a Answer) Answer {
	passed := a.Passed
	for range possibleRounds {
		late := missed(a.Batches[0].Ladder, p.view.Today())
		if late == 0 {
			break
		}
		w.Graft = a.Batches[0].Day + late
		a = p.Answer(w)
		a.Passed = passed
	}
	return a
}

// possibleRounds are how often a graft is put later: a later one may have a longer way
// before it, by a day.
const possibleRounds = 3

// missed is by how many days steps of a ladder are past. Drones may be there without a
// comb of their own.
func missed(l Ladder, today calendar.Day) (days calendar.Day) {
	for _, r := range l.Rungs {
		if r.Step.Done() && r.Step != DroneComb {
			days = max(days, today-r.By)
		}
	}
	return days
}

// FirstGraft is the first day from tomorrow on of a graft before which no step is past.
func (p *Planner) FirstGraft() calendar.Day {
	day := p.view.Today() + 1
	for range possibleRounds {
		late := missed(p.Ladder(p.GraftAt(day), 1, book.YardID{}), p.view.Today())
		if late == 0 {
			break
		}
		day += late
	}
	return day
}

// Taken tells whether a step of a planned batch is taken as done, since a day ahead is looked
// at: it can still be done from the day on from which it is, and its best day is before that
// which is looked at.
func (p *Planner) Taken(r Rung) bool {
	from := p.view.From()
	return from <= r.By && max(from, r.Best) < p.view.Today()
}

// Lapsed is the first day to which a planned batch can be moved that cannot be grafted any
// more as it is planned, and the step that it fails by: one that makes ready for it is not
// done and past its last day, else the graft itself, see [book.View.NotGrafted]. Zero: it can be kept. What was past when the plan was made is
// not asked for; and a starter that is fed too late, or drones, are no reason not to graft.
func (p *Planner) Lapsed(b book.BatchPlan) (first calendar.Day, by Rung) {
	today := p.view.Today()
	made := b.At.Day(p.view.Zone()) + p.view.GraftOn(b) - b.Day
	missing := func(since calendar.Day) (days calendar.Day) {
		for _, r := range p.LadderOf(b).Rungs[:GraftLarvae-1] {
			late := today - r.By
			if r.Step.needed() && late > days && r.By >= since && !b.Made(r.Step.Readied()) && !p.Taken(r) {
				days, by = late, r
			}
		}
		return days
	}
	late := missing(made)
	if late == 0 && p.view.NotGrafted(b) {
		return p.FirstGraft(), Rung{Step: GraftLarvae, From: b.Day, Best: b.Day, By: p.view.GraftBy(b)}
	}
	if late == 0 {
		return 0, by
	}
	fails := by
	for range possibleRounds {
		b.Day += late
		if late = missing(0); late == 0 {
			break
		}
	}
	return max(b.Day, today+1), fails
}

// needed tells whether there is nothing to graft, or to graft into, without a step.
func (s Step) needed() bool { return s == Confine || s == SetUpStarter }
