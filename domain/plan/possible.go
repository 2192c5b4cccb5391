package plan

import (
	"slices"

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
	full := Full{a.Yard, a.Batches[0].Ladder, a.InTime}
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
// at: it can still be done from the day on from which it is, or is missed today, see [Planner.Missed],
// and its best day is before that which is looked at.
func (p *Planner) Taken(r Rung) bool {
	from := p.view.From()
	return (from <= r.By || r.Step.needed() || r.Step == FeedStarter) && max(from, r.Best) < p.view.Today()
}

// Missed are the steps that make ready for a planned batch, without which there is nothing to graft, or to
// graft into, that are not written down and past their last day; and the first day to which the graft can
// be moved for them. Zero: there are none. What was past when the plan was made is asked for only where it
// was done for an earlier day, and a day ahead takes it as done. A starter that is fed too late, or drones,
// are no reason not to graft.
func (p *Planner) Missed(b book.BatchPlan) (first calendar.Day, steps []Rung) {
	today := p.view.Today()
	shifted := p.view.GraftOn(b) - b.Day // of a graft that is late, its ladder too
	for _, r := range p.missing(b, b.At.Day(p.view.Zone())+shifted) {
		first = max(first, b.Day+today-r.By)
		r.From, r.Best, r.By = r.From-shifted, r.Best-shifted, r.By-shifted
		steps = append(steps, r)
	}
	b.Day = first
	for range possibleRounds {
		late := calendar.Day(0)
		for _, r := range p.missing(b, 0) {
			late = max(late, today-r.By)
		}
		b.Day += late
	}
	if len(steps) == 0 {
		return 0, nil
	}
	return max(b.Day, today+1), steps
}

// missing are those of [Planner.Missed] whose last day is not before another.
func (p *Planner) missing(b book.BatchPlan, since calendar.Day) (steps []Rung) {
	if b.Day == 0 || p.view.Today() > p.view.From() {
		return nil
	}
	for _, r := range p.LadderOf(b).Rungs[:GraftLarvae-1] {
		asked := r.By >= since || slices.Contains(b.TooSoon, r.Step.Readied())
		if r.Step.needed() && r.By < p.view.Today() && asked && !b.Made(r.Step.Readied()) {
			steps = append(steps, r)
		}
	}
	return steps
}

// needed tells whether there is nothing to graft, or to graft into, without a step.
func (s Step) needed() bool { return s == Confine || s == SetUpStarter }
