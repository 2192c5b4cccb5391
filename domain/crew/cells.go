package crew

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/rules"
)

// Cells that are together may be collected by as many as are given: what is given takes its
// minutes at the nucs, and what stays together waits there. All of them are apart by the
// evening only where they must be.

// stayAway is the work that waits when nobody drives to cells that are not at home and may
// stay together: to collect them, and to give them elsewhere.
func (p *pricer) stayAway(plan rules.DayPlan) (held []asked) {
	for _, stop := range plan.Stops {
		for _, t := range stop.Tasks {
			c, is := p.heaps[batchOf(t)]
			for _, s := range t.Of {
				w := Work{Task: t, Of: s}
				if is && c.far && !c.hard && (t.Act == rules.ActCollectCells || w.gives() && stop.Yard != c.yard) {
					held = append(held, w.asked())
				}
			}
		}
	}
	return held
}

// asked is a piece of work by what is done and where.
type asked struct {
	act rules.Act
	of  book.Subject
}

func (w Work) asked() asked { return asked{w.Task.Act, w.Of} }

// gives tells whether a piece of work takes a cell along.
func (w Work) gives() bool {
	return w.Task.Act == rules.ActGiveCell || w.Task.Findings[0].Then == rules.ActGiveCell
}

// collecting is a batch whose cells are together, and where.
type collecting struct {
	yard book.YardID
	far  bool // not at home: who gives them elsewhere has to drive there first
	hard bool // they must be apart before somebody comes again
	all  bool // all of them are collected, or none
}

// together are the batches whose cells are together. What must be apart is collected whole;
// and what is not at home, since that is a way of its own.
func (p *pricer) together(plan rules.DayPlan) map[book.BatchID]collecting {
	found := map[book.BatchID]collecting{}
	for _, stop := range plan.Stops {
		for _, t := range stop.Tasks {
			if t.Act == rules.ActCollectCells {
				far, hard := p.view.Yard(stop.Yard).Drive > 0, p.hard(t, t.Of[0])
				found[batchOf(t)] = collecting{stop.Yard, far, hard, far || hard}
			}
		}
	}
	return found
}

// tied are pieces of work that cannot be as they are dealt out: cells given from where nobody
// comes who gives them, and the collecting of those that stay together since a nuc waits for
// them.
func (p *pricer) tied(outs []outing, work [][]Work, rounds []round) (held []asked) {
	at := map[book.BatchID][]bool{} // by team: it comes by where the cells are
	for b, c := range p.heaps {
		for _, out := range outs {
			at[b] = append(at[b], !c.far || out.visits(func(r int) bool { return rounds[r].yard == c.yard }))
		}
	}
	gone := p.gathered(outs, work)
	for r, pieces := range work {
		for k, w := range pieces {
			b := batchOf(w.Task)
			c, is := p.heaps[b]
			team := teamAt(outs, r, k)
			switch {
			case !is:
			case w.Task.Act == rules.ActCollectCells && !c.all && team > 0 && p.left(b, outs, work):
				held = append(held, w.asked())
			case w.gives() && team > 0 && !gone[b] && !at[b][team-1]:
				held = append(held, w.asked())
			}
		}
	}
	return held
}

// gathered are the batches whose cells are all collected.
func (p *pricer) gathered(outs []outing, work [][]Work) map[book.BatchID]bool {
	done := map[book.BatchID]bool{}
	for r, pieces := range work {
		for k, w := range pieces {
			if w.Task.Act == rules.ActCollectCells && teamAt(outs, r, k) > 0 {
				done[batchOf(w.Task)] = true
			}
		}
	}
	return done
}

// left tells whether a nuc waits for a cell of a batch, or has still to be made up for it.
func (p *pricer) left(b book.BatchID, outs []outing, work [][]Work) bool {
	for r, pieces := range work {
		for k, w := range pieces {
			if (w.gives() || w.Task.Act == rules.ActMakeUp) && batchOf(w.Task) == b && teamAt(outs, r, k) == 0 {
				return true
			}
		}
	}
	return slices.ContainsFunc(p.held, func(w Work) bool { return w.gives() && batchOf(w.Task) == b })
}

// teamAt is the team that does a piece, counted from 1; 0: it waits.
func teamAt(outs []outing, round, at int) int {
	return 1 + slices.IndexFunc(outs, func(o outing) bool { return o.by[round][at] > 0 })
}

// visits tells whether anything is done on a round of some.
func (o outing) visits(which func(round int) bool) bool {
	for r, by := range o.by {
		if which(r) && slices.ContainsFunc(by, func(who int) bool { return who > 0 }) {
			return true
		}
	}
	return false
}

// asGiven writes on the sheets that cells are collected before they are given, where not all
// of a batch are: each person those that he gives. What waits is so much less.
func (p *pricer) asGiven(day *Day) {
	for i := range day.Waits {
		w := &day.Waits[i]
		if w.Task.Act != rules.ActCollectCells || !rules.InPart(p.view, w.Task) {
			continue
		}
		b, rest := batchOf(w.Task), int(w.Task.Findings[0].Amount)
		ready := p.view.Batch(b).OnTheWay()
		for s := range day.Sheets {
			n := day.Sheets[s].given(b)
			taken := min(n, ready)
			ready, n = ready-taken, min(n-taken, rest)
			if n > 0 {
				day.Sheets[s].collects(p.heaps[b].yard, Work{Task: rules.Collecting(p.view, w.Task, n), Of: w.Of})
				rest -= n
			}
		}
		if rest < int(w.Task.Findings[0].Amount) {
			w.Task = rules.Collecting(p.view, w.Task, rest)
		}
	}
	day.Waits = slices.DeleteFunc(day.Waits, func(w Work) bool {
		return w.Task.Act == rules.ActCollectCells && rules.InPart(p.view, w.Task) && w.Task.Findings[0].Amount == 0
	})
}

// given is how many cells of a batch a person gives.
func (s Sheet) given(b book.BatchID) (n int) {
	for _, v := range s.Visits {
		for _, w := range v.Work {
			if w.gives() && batchOf(w.Task) == b {
				n++
			}
		}
	}
	return n
}

// collects puts the collecting of some cells in a yard before all else there.
func (s *Sheet) collects(yard book.YardID, w Work) {
	i := slices.IndexFunc(s.Visits, func(v Visit) bool { return v.Yard == yard && v.Dusk.IsZero() })
	if i < 0 {
		s.Visits = slices.Insert(s.Visits, 0, Visit{Yard: yard, Work: []Work{w}})
		return
	}
	s.Visits[i].Work = slices.Insert(slices.Clone(s.Visits[i].Work), 0, w)
}
