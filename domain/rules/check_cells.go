package rules

import (
	"fmt"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// GiveCell means to give a nuc a cell of a batch.
type GiveCell struct {
	Nuc   book.NucID
	Batch book.BatchID
}

// PutInVirgin means to put a virgin into a nuc: a caged one, or one of a
// batch.
type PutInVirgin struct {
	Nuc   book.NucID
	Queen book.QueenID
	Batch book.BatchID
}

// Graft means to graft larvae of an age in hours, 0 being the keeper's usual, of a
// mother, for queens who mate in a yard; zero: nobody said.
type Graft struct {
	LarvaAge float64
	Mother   book.QueenID
	Yard     book.YardID
	On       calendar.Day   // planned for a day to come
	Unasked  bool           // it is done, and not as one that was planned
	Plan     book.BatchPlan // what was, or is, planned of it, as it is grafted; zero: nothing
	For      calendar.Day   // the day for which that was planned, once it is grafted; 0: none
}

// MoveCells means to handle the cells of a batch.
type MoveCells struct{ Batch book.BatchID }

func (i GiveCell) check(c *checker) {
	c.reigned(i.Nuc, "a cell")
	b := c.view.Batch(i.Batch)
	if !i.Batch.IsZero() && b.Unplaced() == 0 {
		c.refuse(fmt.Sprintf("%s has no cell left: of %d all are given, caged or gone", batchWord(b), b.Cells()),
			"Count the cells again, or take another batch")
	}
	c.ripe(b)
	MoveCells{i.Batch}.check(c)
	c.bees(i.Nuc)
}

// ripe refuses a cell by its batch's clock when it cannot be capped yet, or
// when all must have emerged, and warns before it is ripe and after half of
// them are out.
func (c *checker) ripe(b *book.Batch) {
	if b.At.IsZero() {
		return
	}
	zone, today := c.view.Zone(), c.view.Today()
	graft, half := b.At.Day(zone), c.course.Emerges(b.Batch)
	from, last := graft+c.days(practice.CellsInFrom), lastOut(calendar.DayOf(half, zone), c.numbers)
	early := fmt.Sprintf("%s is on day %d from the graft", batchWord(b), today.Sub(graft))
	switch {
	case today < graft+c.days(practice.GraftToCappedFrom) && !b.Capped.Counted():
		c.refuse(early+"; its cells are not capped yet", "Wait until "+from.ShortFrom(today), practice.GraftToCappedFrom, practice.CellsInFrom)
	case today < from:
		c.warn(early+"; its cells are not ripe yet", "Wait until "+from.ShortFrom(today), practice.CellsInFrom)
	case today > last:
		c.refuse(fmt.Sprintf("all cells of %s must have emerged by %s", batchWord(b), last.ShortFrom(today)), "Count them: out, dead", practice.GraftToEmergeBy)
	case !c.now.Before(half):
		c.warn(fmt.Sprintf("half of %s emerged by %s", batchWord(b), hour(today, half, zone)), "Look first whether she is still in the cell, alive", practice.QueenEmerges)
	}
}

func (i PutInVirgin) check(c *checker) {
	c.reigned(i.Nuc, "a virgin")
	q := c.view.Queen(i.Queen)
	if !i.Queen.IsZero() && !q.InHand() {
		c.refuse(queenName(c.view, q)+" is no longer in hand", "Take another virgin")
	}
	batch := i.Batch
	if batch.IsZero() {
		batch = q.Batch
	}
	if out := Emerged(c.course, q, batch); late(c.course, out) {
		c.warn(fmt.Sprintf("she is %d days old; few mate from %d", int(c.now.Sub(out).Hours()/24), c.numbers.Days(practice.VirginLate)),
			"Cull her, and take a younger one", practice.VirginLate)
	}
	c.bees(i.Nuc)
}

func (i Graft) check(c *checker) {
	c.kin(i)
	c.outOfSeason(i)
	c.unsure(i.Plan)
	if !i.On.IsZero() {
		c.wanted(i.Plan.BatchPlanned)
		c.hands(i.Plan.BatchPlanned)
		c.alike(i.Plan.BatchPlanned)
		c.nucsThere(i.Plan.BatchPlanned)
		c.nucsTaken(i.Plan)
	}
	if i.Unasked {
		c.plannedGraft()
	}
	c.lapsed(i)
	c.notReady(i)
	age := time.Duration(i.LarvaAge * float64(time.Hour))
	switch bee.LarvaAge(age, c.numbers) {
	case bee.AgeTooOld:
		c.refuse(fmt.Sprintf("larvae of %g h make no queens worth the name; %g h at most", i.LarvaAge, c.numbers.Get(practice.LarvaAgeRefused)),
			"Take younger larvae, just hatched", practice.LarvaAgeRefused)
	case bee.AgeOld:
		c.warn(fmt.Sprintf("larvae of %g h make lesser queens and walk earlier", i.LarvaAge),
			fmt.Sprintf("Take larvae under %g h", c.numbers.Get(practice.LarvaAgeWarned)), practice.LarvaAgeWarned)
	}
}

func (i MoveCells) check(c *checker) {
	b := c.view.Batch(i.Batch)
	if b.At.IsZero() {
		return
	}
	zone := c.view.Zone()
	from, until := b.At.Day(zone)+c.days(practice.HandsOffFrom), b.At.Day(zone)+c.days(practice.HandsOffUntil)
	if today := c.view.Today(); from <= today && today < until {
		c.warn(fmt.Sprintf("%s is on day %d from the graft; a jolt can cripple the queens", batchWord(b), today.Sub(b.At.Day(zone))),
			"Leave the cells alone until "+until.ShortFrom(c.view.Today()), practice.HandsOffFrom, practice.HandsOffUntil)
	}
}

// reigned refuses what a queen who is there would tear down or kill.
func (c *checker) reigned(id book.NucID, what string) {
	n := c.view.Nuc(id)
	p := c.course.Of(n)
	h := n.Holds
	switch {
	case h.Condition == book.Empty:
		c.refuse(n.Name+" is empty", "Make it up first")
	case h.Condition.Queenright():
		c.refuse(fmt.Sprintf("%s has a laying queen, %s; %s would be lost", n.Name, h.EggsSeen(c.view.Today(), c.course.Zone(n.Yard)), what),
			fmt.Sprintf("Catch her, then wait %g h", c.numbers.Get(practice.NoCellWithin)), practice.NoCellWithin)
	case h.Condition == book.DroneLayer:
		c.refuse(fmt.Sprintf("%s has a drone layer; %s would be lost", n.Name, what),
			fmt.Sprintf("Take her out, then wait %g h", c.numbers.Get(practice.NoCellWithin)), practice.NoCellWithin)
	case p.Calendar == book.LayingWorkers:
		c.warn(n.Name+": "+p.Why, "Look first; shake it out and make it up again", practice.LayingWorkersFrom)
	case p.Calendar == book.Cell, p.Calendar == book.Virgin, p.Calendar == book.Due:
		c.warn(n.Name+" holds a queen already: "+p.Why, "Look first: "+what+" beside her would be lost")
	case h.Condition == book.NoQueen:
		c.alone(n, what)
		c.torn(n)
	}
	if !p.OwnFrom.IsZero() && !c.now.Before(p.OwnFrom) && h.Condition == book.NoQueen {
		c.warn(n.Name+" may have raised a queen of its own: "+p.Why, "Look for an opened own cell first", practice.OwnQueenEmerges)
	}
}

// torn: where the last cell was torn a virgin of the nuc's own may walk.
func (c *checker) torn(n *book.Nuc) {
	if seen, ok := tornSince(n); ok {
		c.warn("a virgin of its own may be there: the last cell was torn at the side, seen "+c.day(seen.Instant, n.Yard).ShortFrom(c.view.Today()), "Look first: she would tear the next")
	}
}

// alone: bees who have not missed their queen yet take no other.
func (c *checker) alone(n *book.Nuc, what string) {
	wait := c.numbers.Duration(practice.NoCellWithin)
	since := c.now.Sub(n.Queenless.Instant)
	if since >= wait {
		return
	}
	until := "Wait until " + hour(c.view.Today(), n.Queenless.Instant.Add(wait), c.course.Zone(n.Yard))
	if last := len(n.Caught) - 1; last >= 0 && n.Caught[last].At == n.Queenless {
		c.refuse(fmt.Sprintf("the queen of %s was taken %.0f h ago; the bees would destroy %s", n.Name, since.Hours(), what), until, practice.NoCellWithin)
		return
	}
	c.warn(fmt.Sprintf("%s has been without a queen for %.0f h only", n.Name, since.Hours()), until, practice.NoCellWithin)
}

// bees warns of a nuc that cannot keep its brood warm.
func (c *checker) bees(id book.NucID) {
	n := c.view.Nuc(id)
	y := c.strength(n.Yard)
	s := y.Of(n)
	if s.TooFew(c.numbers) && !s.WeakThen() && n.Holds.Condition != book.Empty {
		c.warn(fmt.Sprintf("%s has about %s bees by reckoning, a %s needs %s", n.Name, bees(s.Bees), y.Night(), bees(s.Need)),
			"Add bees first, or unite it", practice.AddBeesUnder)
	}
	if s.WeakThen() && n.Holds.Condition != book.Empty {
		c.warn(fmt.Sprintf("%s had about %s bees, a %s needs %s", n.Name, bees(s.BeesThen), y.Night(), bees(s.Need)),
			"Add bees in the evening", practice.NeedAt8C, practice.NeedAt14C, practice.NeedAt20C)
	}
}
