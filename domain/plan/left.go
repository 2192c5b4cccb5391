package plan

import (
	"cmp"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Left is what of a grafted batch can still come to queens. Whoever asks what a batch still gives
// reads it, so that all go by the same cells and queens.
type Left struct {
	Batch   *book.Batch
	Cells   int          // not given yet that can still be given: none once Last is past, if that is not taken as done, see [Planner.CellsTaken]
	Nucs    int          // of them, as many as nucs are planned for; all, where none are planned
	Last    calendar.Day // the last day on which cells can be given
	Unseen  []*book.Nuc  // that were given a cell or virgin, and into which nobody looked since
	Seen    []*book.Nuc  // the others that hold what they were given of it
	Virgins int          // in cages
	Caught  []book.QueenID

	Plan book.BatchPlan // as it was planned; zero: it was not
	yard book.YardID    // in which its queens fly
}

// Living are its cells that can still be given, and its virgins and queens whom nobody knows to
// be lost, those handed over among them.
func (l Left) Living() int {
	return l.Cells + len(l.Unseen) + len(l.Seen) + l.Virgins + len(l.Caught)
}

// Left is what of a grafted batch can still come to queens.
func (p *Planner) Left(b *book.Batch) Left {
	l := p.stands()[b.Batch]
	l.Batch = b
	l.Plan, _ = p.view.BatchPlan(b.Batch)
	l.yard = p.yardOf(b, l.Plan)
	l.Last = zoned{p.course.Zone(l.yard)}.day(p.course.Clock(b.Batch).Hard())
	if l.Last >= p.view.Today() || p.CellsTaken(b) {
		l.Cells = b.Unplaced()
	}
	l.Nucs = l.Cells
	if l.Plan.Nucs > 0 {
		l.Nucs = min(l.Cells, max(0, l.Plan.Nucs-len(b.Given)))
	}
	for _, id := range b.Caged {
		if p.view.Queen(id).Caged() {
			l.Virgins++
		}
	}
	return l
}

// allStanding are, by batch, the nucs that hold what they were given of it, and the queens
// caught of it who were not culled.
func (p *Planner) allStanding() map[book.BatchID]Left {
	all := map[book.BatchID]Left{}
	for n := range p.view.Nucs() {
		for _, caught := range n.Caught {
			if l := all[caught.Was.Batch]; !caught.Culled {
				l.Caught = append(l.Caught, caught.Queen)
				all[caught.Was.Batch] = l
			}
		}
		if n.EndedBy != "" || n.Holds.Batch.IsZero() {
			continue
		}
		l := all[n.Holds.Batch]
		if Unseen(n) {
			l.Unseen = append(l.Unseen, n)
		} else {
			l.Seen = append(l.Seen, n)
		}
		all[n.Holds.Batch] = l
	}
	return all
}

// Unseen tells whether nobody has looked into a nuc since its cell or virgin was given.
func Unseen(n *book.Nuc) bool {
	last, looked := n.LastLook()
	return n.Holds.Since == n.Holds.Given && n.Holds.FirstEggs.IsZero() && (!looked || last.At.Before(n.Holds.Given))
}

// yardOf is where the cells of a grafted batch go: the yard that was planned, else where its
// other cells went, else where its cells hang, else home; where nobody said it and no nucs live
// there, the yard in which most do, unless a standstill keeps the cells.
func (p *Planner) yardOf(b *book.Batch, was book.BatchPlan) book.YardID {
	yard := was.Yard
	for _, g := range b.Given {
		yard = cmp.Or(yard, p.view.Nuc(g.Nuc).Yard)
	}
	if hangs := cmp.Or(b.Finisher, b.Starter); yard.IsZero() && !b.Incubate && !hangs.IsZero() {
		yard = p.view.Colony(hangs).Yard
	}
	if home := p.view.HomeYard(); yard.IsZero() && home != nil {
		yard = home.Yard
	}
	if was.Yard.IsZero() && len(b.Given) == 0 && p.live()[yard] == 0 && p.view.Yard(yard).Standstill == nil {
		yard = p.mostOf(p.live(), yard)
	}
	return yard
}
