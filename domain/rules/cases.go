package rules

import (
	"cmp"
	"slices"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
	"lidmark/domain/spread"
	"lidmark/domain/strength"
)

// nucCase is a living nuc as the rules see it.
type nucCase struct {
	*book.Nuc
	yard  *yardCase
	holds *course.Presumption
	has   strength.State
	cell  *batchCase // the batch that has a cell for it
	waits *batchCase // the batch whose cells it waits for
	spare *batchCase // the batch of a cell to spare for it: it has a queen by the calendar, and most probably none
	bars  *batchCase // the batch whose cells may not leave their yard for it
	given *batchCase // the batch of which it is taken as given a cell, on a day ahead
	order promise    // of its queen to an open order

	was   *nucCase // the earlier case it goes on from, while a pass is made
	row   int      // of the table, whose turn it is
	found []ruled
}

// ruled is what a rule found, with the rule's row in the table.
type ruled struct {
	row int
	*Finding
	asked Act // what it asks for where the keeper decided: then that is the task
}

func (p *pass) findNucs(was *pass) {
	all := slices.Collect(p.view.Nucs())
	p.presumed = make([]course.Presumption, len(all))
	p.nucs = make([]nucCase, 0, len(all))
	for i, n := range all {
		if n.Condition() == book.Empty {
			p.presumed[i] = p.course.Of(n)
			continue
		}
		y := p.yard(n.Yard)
		if !n.RobbedAt.IsZero() {
			y.shutUntil = max(y.shutUntil, p.openFrom(y, y.of(n.RobbedAt)))
		}
		p.nucs = append(p.nucs, nucCase{Nuc: n, yard: y, holds: &p.presumed[i]})
	}
	carried := p.carried(was)
	spread.Over(len(p.nucs), func(i int) {
		n := &p.nucs[i]
		if n.was = carried.of(p, n); n.was != nil {
			*n.holds, n.has = *n.was.holds, n.was.has
			return
		}
		*n.holds, n.has = p.course.Of(n.Nuc), n.yard.strength.Of(n.Nuc)
	})
}

func (n *nucCase) subject() book.Subject { return n.Nuc.Nuc.Subject() }

// takesCell tells whether a nuc is ready for a cell: nobody reigns in it, no laying
// workers or queen of its own are to be expected, and its bees can keep a cell warm.
func (p *pass) takesCell(n *nucCase) bool {
	h := n.holds
	return n.given == nil && h.Calendar == book.NoQueen && (h.OwnFrom.IsZero() || p.now.Before(h.OwnFrom)) && !n.has.TooFew(p.numbers)
}

// kept tells whether bees and food spent on a nuc are not lost: it is in none
// of the troubles, and its virgin not too late to mate.
func (n *nucCase) kept(now time.Time) bool {
	late := n.awaited() && !now.Before(n.holds.TooLateAt)
	return !n.holds.Calendar.Trouble() && !late
}

// batchCase is a batch with cells still together, or on the way to nucs.
type batchCase struct {
	*book.Batch
	yard  *yardCase
	left  int // still together, those on the way among them: all that can go into nucs
	clock bee.Clock
	graft calendar.Day
	best  time.Time
	hard  time.Time
	loose bool         // the chance is even, or more, that a virgin is out
	over  bool         // half of the cells are out: no more are given
	stale bool         // all must have emerged long ago: only the count is open
	ready int          // nucs kept for it
	waits int          // of these, those that wait until its cells may go in
	made  *Finding     // that nucs are still made up for it; nil: none are
	into  int          // cells that go into these
	ahead int          // cells that go into nucs which are taken as made up, on a day ahead
	off   calendar.Day // until then its cells are put off; 0: they are not
	given bool         // its cells are taken as given, see [plan.Planner.CellsTaken]
}

func (p *pass) findBatches() {
	for b := range p.view.Batches() {
		if b.Unplaced() == 0 {
			continue
		}
		if c := p.batch(b); c.given {
			p.given = append(p.given, c)
		} else {
			p.batches = append(p.batches, c)
		}
	}
	slices.SortStableFunc(p.batches, func(a, b *batchCase) int {
		return cmp.Or(a.hard.Compare(b.hard), cmp.Compare(a.Number, b.Number))
	})
}

func (p *pass) batch(b *book.Batch) *batchCase {
	y := p.where(b)
	clock := p.course.Clock(b.Batch)
	half := p.course.Emerges(b.Batch)
	c := &batchCase{
		Batch: b, yard: y, left: b.Unplaced(), clock: clock, graft: y.of(b.At),
		best: clock.Best(), hard: clock.Hard(),
		over: !p.now.Before(half), stale: y.today > lastOut(y.day(half), p.numbers),
	}
	if !c.stale {
		c.best = p.ladders().BestOut(b, y.zone)
	}
	c.given = p.ladders().CellsTaken(b)
	c.off = p.putOff[putOffKey{CellsOut, b.Batch.Subject()}]
	c.loose = p.now.After(c.hard) && !p.now.Before(clock.Even())
	return c
}

// lastOut is the last day on which cells of a batch emerge, by the day on which
// half of them are out.
func lastOut(half calendar.Day, n practice.Numbers) calendar.Day {
	return half + calendar.Day(n.Days(practice.GraftToEmergeBy)-n.Days(practice.GraftToEmerge))
}

// where is the yard of the colony that has the cells, or home.
func (p *pass) where(b *book.Batch) *yardCase {
	if at := rearer(b); !at.IsZero() {
		return p.yard(p.view.Colony(at).Yard)
	}
	return p.home()
}

// rearer is the colony that has the cells; zero where nobody said, or they are in the
// incubator.
func rearer(b *book.Batch) book.ColonyID {
	if b.Incubate {
		return book.ColonyID{}
	}
	return cmp.Or(b.Finisher, b.Starter)
}

// from is the first day on which the cells can go into nucs.
func (p *pass) from(b *batchCase) time.Time {
	return (b.graft + p.days(practice.CellsInFrom)).Start(b.yard.zone)
}

// shareNucs keeps ready nucs, in walking order, for the batches whose cells
// are ripe, the first to emerge first. On a standstill cells stay in their yard.
func (p *pass) shareNucs() {
	for _, b := range p.batches {
		for i := range p.nucs {
			if b.ready == b.left || b.over {
				break
			}
			p.share(b, &p.nucs[i])
		}
	}
}

// share keeps a nuc for a batch, if it takes a cell and no other batch has it.
func (p *pass) share(b *batchCase, n *nucCase) {
	switch {
	case n.cell != nil || n.waits != nil || !p.takesCell(n):
		return
	case stays(b.yard.yard, n.Yard):
		n.bars = cmp.Or(n.bars, b)
		return
	case p.now.Before(p.from(b)):
		n.waits = b
		b.waits++
	default:
		n.cell = b
	}
	b.ready++
}

// stays tells whether a standstill keeps what is in one yard from another.
func stays(from *book.Yard, to book.YardID) bool {
	return from.Standstill != nil && from.Yard != to
}
