package plan

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Hold is how many colonies, or places, one batch keeps from one day to another, both
// included.
type Hold struct {
	Amount   float64
	From, To calendar.Day
}

// Rearing are the colonies that rear the cells of a batch of a size: its starters until the
// cells are moved, its finishers for a turn from then on.
func (p *Planner) Rearing(l Ladder, s Size) (starters, finishers Hold) {
	up, move := l.Rung(SetUpStarter).Best, l.Rung(ToFinisher).Best
	return Hold{p.starters(s), up, max(up, move-1)},
		Hold{FinishersFor(s.Takes, p.numbers), move, move + p.days(practice.FinisherTurn) - 1}
}

// mostAtOnce is how much some holds keep on one day at most, of those from one to another.
func mostAtOnce(all []Hold, from, to calendar.Day) (most float64) {
	for d := from; d <= to; d++ {
		sum := 0.0
		for _, h := range all {
			if h.From <= d && d <= h.To {
				sum += h.Amount
			}
		}
		most = max(most, sum)
	}
	return most
}

// ahead are the batches of the book that come before it: those grafted whose cells are not
// all out, and those planned for sooner days. What several want and is not there is missed
// once, by the last of them.
func (w *want) ahead() (all []Wanting) {
	before := w.before()
	for _, o := range w.inHand() {
		if before(o) {
			all = append(all, o)
		}
	}
	return all
}

// allInHand are the batches of the book that still rear cells or will: those grafted, then
// those planned.
func (p *Planner) allInHand() (all []Wanting) {
	out := p.view.Today() - p.days(practice.GraftToEmergeBy)
	for b := range p.view.Batches() {
		if b.Left() > 0 || b.At.Day(p.view.Zone()) >= out {
			all = append(all, p.Grafted(b))
		}
	}
	for b := range p.view.ToGraft() {
		all = append(all, Wanting{p.LadderOf(b), p.SizeOf(b)})
	}
	return all
}

// idle are the colonies of a role, cell builders among them, that rear no cells of a batch
// before it while it keeps some: of a grafted batch those that are named, and as many as it wants all
// the same; of a planned one as many as it wants.
func (w *want) idle(r book.Role, keeps Hold) (n float64) {
	for c := range w.view.Colonies() {
		if (c.Is(r) || c.Is(book.CellBuilder)) && !w.rears(c.Colony, keeps) {
			n++
		}
	}
	var taken []Hold
	for _, o := range w.ahead() {
		starters, finishers := w.Rearing(o.Ladder, o.Size)
		b := w.view.Batch(o.Not)
		h, named := starters, b.Starter
		if r == book.Finisher {
			h, named = finishers, b.Finisher
		}
		if !named.IsZero() {
			h.Amount--
		}
		taken = append(taken, h)
	}
	return max(0, n-mostAtOnce(taken, keeps.From, keeps.To))
}

// rears tells whether a colony rears grafted cells of another batch within some days.
func (w *want) rears(id book.ColonyID, keeps Hold) bool {
	for _, o := range w.ahead() {
		b := w.view.Batch(o.Not)
		starters, finishers := w.Rearing(o.Ladder, o.Size)
		if b.Starter == id && starters.during(keeps) || b.Finisher == id && finishers.during(keeps) {
			return true
		}
	}
	return false
}

// during tells whether two holds have a day in common.
func (h Hold) during(o Hold) bool { return h.From <= o.To && o.From <= h.To }

// Grafted is a grafted batch with all that is to be expected of it, by what was counted and
// the keeper's rates.
func (p *Planner) Grafted(b *book.Batch) Wanting {
	w := p.Waiting(b)
	was, _ := p.view.BatchPlan(b.Batch)
	s := p.SizeOf(book.BatchPlan{Done: was.Done, BatchPlanned: book.BatchPlanned{Batch: b.Batch, Larvae: b.Larvae, Nucs: w.Nucs, Line: b.Line, Yard: w.Yard}})
	s.StartersSet, s.NucsMade = true, w.NucsMade
	if b.Taken.Counted() {
		s.Takes = float64(b.Taken.N)
	}
	s.Cells = min(s.Cells, float64(b.Cells()))
	s.Incubated, s.Virgins = p.IncubatedOf(b, w.Ladder, s.Cells), was.Virgins
	return Wanting{w.Ladder, s}
}
