package rules

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Unite means to put a nuc's bees to another nuc, or to a colony.
type Unite struct {
	Nuc  book.NucID
	With book.Subject
}

func (i Unite) check(c *checker) {
	n := c.view.Nuc(i.Nuc)
	c.standstill(n.Yard, "Unite it")
	if n.Holds.Condition == book.Empty {
		c.refuse(n.Name+" is empty: it has no bees to give", "Take a nuc that lives")
		return
	}
	me := c.party(n)
	if id, ok := i.With.Colony(); ok {
		c.stranger(n.Yard, c.view.Colony(id).Yard)
		c.among(me, party{name: Name(c.view, i.With), reign: lays, why: "a full colony has its own"})
		c.opened(n)
		return
	}
	id, said := i.With.Nuc()
	if !said {
		return // the form asks for it
	}
	other := c.view.Nuc(id)
	switch {
	case id == i.Nuc:
		c.refuse(n.Name+" cannot be united with itself", "Take another nuc")
		return
	case other.Holds.Condition == book.Empty:
		c.refuse(other.Name+" is empty: there are no bees to unite with", "Take a nuc that lives, or move the box instead")
		return
	}
	c.stranger(n.Yard, other.Yard)
	c.among(me, c.party(other))
	c.tooFewTogether(n, other)
	c.opened(n, other)
}

// stranger refuses to bring bees into a yard on standstill from another one.
func (c *checker) stranger(from, to book.YardID) {
	if from != to {
		c.standstill(to, "Unite it")
	}
}

// reign is who is in a nuc, as far as it matters to bees that are put to it.
type reign uint8

const (
	nobody reign = iota
	awaited
	lays
	layDrones
	workersLay
)

// party is one of those that are united.
type party struct {
	name string
	reign
	cell  bool   // who is awaited is in her cell
	why   string // how that is known
	doubt string // why a virgin of its own may walk where nobody is known of
}

func (c *checker) party(n *book.Nuc) party {
	p := c.course.Of(n)
	who := party{name: n.Name, why: p.Why}
	switch {
	case n.Holds.Condition.Queenright():
		who.reign, who.why = lays, n.Holds.EggsSeen(c.view.Today(), c.course.Zone(n.Yard))
	case p.Calendar == book.DroneLayer:
		who.reign = layDrones
	case p.Calendar == book.LayingWorkers:
		who.reign = workersLay
	case p.Calendar == book.Cell, p.Calendar == book.Virgin, p.Calendar == book.Due:
		who.reign, who.cell = awaited, p.Calendar == book.Cell
	case !p.OwnFrom.IsZero() && !c.now.Before(p.OwnFrom):
		who.doubt = p.Why
	default:
		if torn, ok := tornSince(n); ok {
			who.doubt = "the last cell was torn at the side, seen " + c.day(torn.Instant, n.Yard).ShortFrom(c.view.Today())
		}
	}
	return who
}

// among refuses what would cost a laying queen her life, and warns of what would cost
// that of another, or of a cell: of two queens one stays, and bees of laying workers
// suffer none. Common practice, no source.
func (c *checker) among(me, other party) {
	wait := fmt.Sprintf(", then wait %g h", c.numbers.Get(practice.NoCellWithin))
	for _, pair := range [2][2]party{{me, other}, {other, me}} {
		a, b := pair[0], pair[1]
		switch {
		case a.reign == workersLay && b.reign == lays:
			c.refuse(fmt.Sprintf("%s: %s; its bees would kill the queen of %s", a.name, a.why, b.name), "Shake "+a.name+" out away from the others", practice.LayingWorkersFrom)
		case a.reign == workersLay && b.reign != workersLay:
			c.warn(fmt.Sprintf("%s: %s; united they go on laying and take no queen", a.name, a.why), "Shake "+a.name+" out away from the others", practice.LayingWorkersFrom)
		case a.reign == layDrones && b.reign == lays:
			c.refuse(fmt.Sprintf("%s has a drone layer; she could kill the queen of %s, who lays", a.name, b.name), "Take the drone layer out first"+wait, practice.NoCellWithin)
		case a.reign == layDrones && (b.reign != layDrones || a == me):
			c.warn(a.name+" has a drone layer: "+a.why, "Take her out first"+wait, practice.NoCellWithin)
		case a.doubt != "" && (b.reign == lays || b.reign == awaited):
			c.warn(fmt.Sprintf("a virgin of its own may walk in %s: %s; of two queens one stays", a.name, a.doubt), "Look for her first", practice.OwnQueenEmerges)
		case a.reign == awaited && b.reign == lays:
			c.joinsQueen(a, b, wait)
		case a.reign == awaited && b.reign == awaited && a == me:
			c.warn(fmt.Sprintf("%s and %s both wait for a queen (%s; %s); of two one stays", a.name, b.name, a.why, b.why), "Look first, and take one out", practice.NoCellWithin)
		}
	}
	if me.reign == lays && other.reign == lays {
		c.refuse(fmt.Sprintf("%s and %s both have a laying queen (%s; %s); of two one stays", me.name, other.name, me.why, other.why), "Catch one of them first"+wait, practice.NoCellWithin)
	}
}

// joinsQueen is one that waits for a queen with one that has her: her cell would be
// torn down, and a virgin could kill her who lays.
func (c *checker) joinsQueen(a, b party, wait string) {
	if a.cell {
		c.warn(fmt.Sprintf("%s holds a cell (%s): the queen of %s would have it torn down", a.name, a.why, b.name), "Give the cell to another nuc first", practice.AcceptCell)
		return
	}
	c.refuse(fmt.Sprintf("%s waits for a queen (%s), and %s has one who lays; of two one stays", a.name, a.why, b.name), "Look first, and take the virgin out"+wait, practice.NoCellWithin)
}

// tooFewTogether warns of two weak nucs that make one weak nuc.
func (c *checker) tooFewTogether(n, other *book.Nuc) {
	mine, y := c.strength(n.Yard).Of(n), c.strength(other.Yard)
	theirs := y.Of(other)
	if sum := mine.Bees + theirs.Bees; mine.BeesKnown && theirs.BeesKnown && sum < theirs.Enough {
		c.warn(fmt.Sprintf("together they have about %s bees, a %s needs %s: weak with weak stays weak", bees(sum), y.Night(), bees(theirs.Need)),
			"Unite it with a stronger one, or add bees as well", practice.NeedAt8C, practice.NeedAt14C, practice.NeedAt20C)
	}
}

// opened warns of what speaks against opening nucs to unite them: robbers who were in
// one, virgins who fly, cold, dearth, each once.
func (c *checker) opened(nucs ...*book.Nuc) {
	for _, n := range nucs {
		if !n.RobbedAt.IsZero() {
			c.warn(fmt.Sprintf("robbers were seen at %s %s, and nobody wrote down what lives", n.Name, c.day(n.RobbedAt.Instant, n.Yard).ShortFrom(c.view.Today())), "Look first", practice.RobbingLasts)
		}
	}
	if i := slices.IndexFunc(nucs, c.mayFly); i >= 0 {
		c.flies(nucs[i])
	}
	c.cold(nucs[0].Yard)
	c.dearth(nucs[0].Yard, c.numbers.Get(practice.MinutesUnite))
}
