package book

import (
	"cmp"
	"iter"
	"slices"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Colony is what the book says of a full-size colony.
type Colony struct {
	ColonyDescribed
	Line      string      // its own as described, else its queen's
	OpenBrood []OpenBrood // open brood put in, in which wild cells can be
	Banked    []QueenID   // queens caged in it now, in the order they came
	FedAt     calendar.Moment
	Treated   Treatment
	Gave      []Transfer // bees and brood it gave
	Got       []Transfer // bees and brood it got
}

// OpenBrood is open brood put into a colony and its searches for wild cells.
type OpenBrood struct {
	At       calendar.Moment
	Combs    float64
	From     Subject
	Searched calendar.Moment // the last search; zero: none yet
	Found    int             // wild cells broken down in all searches
}

// Transfer is bees or brood that moved from one unit to another.
type Transfer struct {
	At       calendar.Moment
	From, To Subject
	Cups     float64 // cups of bees
	Combs    float64 // combs of brood
}

// Is tells whether the colony has a role.
func (c *Colony) Is(r Role) bool { return slices.Contains(c.Roles, r) }

// Colony is the colony of an id.
func (v *View) Colony(id ColonyID) *Colony { return v.cols.get(id, v.foldColony) }

// Colonies yields the full-size colonies by name.
func (v *View) Colonies() iter.Seq[*Colony] {
	all := collect(v, KindColony, v.Colony)
	slices.SortFunc(all, func(a, b *Colony) int {
		return cmp.Or(compareNames(a.Name, b.Name), a.Colony.compare(b.Colony))
	})
	return slices.Values(all)
}

func (v *View) foldColony(id ColonyID) *Colony {
	me := id.Subject()
	begin := Colony{ColonyDescribed: ColonyDescribed{Colony: id}}
	c := *v.season.folded.cols.get(id, v.lines(me), practice.Numbers{}, begin)
	gone := func(q QueenID) bool { return v.Queen(q).Where != me }
	c.Banked = slices.DeleteFunc(slices.Clone(c.Banked), gone)
	if c.Line = c.ColonyDescribed.Line; c.Line == "" && !c.Queen.IsZero() {
		c.Line = v.Queen(c.Queen).Line
	}
	return &c
}

// again copies the open brood, since searches change it in place.
func (c *Colony) again() Colony {
	next := *c
	next.OpenBrood, next.Banked = slices.Clone(c.OpenBrood), slices.Clip(c.Banked)
	next.Gave, next.Got = slices.Clip(c.Gave), slices.Clip(c.Got)
	return next
}

func (c *Colony) take(e *Entry) {
	me := c.Colony.Subject()
	if t, ok := transferOf(e); ok {
		c.takeTransfer(me, t)
	}
	c.takeFact(me, e)
}

func (c *Colony) takeFact(me Subject, e *Entry) {
	switch f := e.Fact.(type) {
	case ColonyDescribed:
		c.ColonyDescribed = f
	case BroodGiven:
		if f.To == me && f.Open > 0 {
			c.OpenBrood = append(c.OpenBrood, OpenBrood{At: e.At, Combs: f.Combs, From: f.From})
		}
	case WildCellsSearched:
		c.searched(e.At, f.Found)
	case Fed:
		c.FedAt = e.At
	case Treated:
		c.Treated.take(e, me)
	case QueenBanked:
		c.bank(f.Queen)
	case VirginCaged:
		c.bank(f.Queen)
	case QueenPutIn:
		if f.To == me {
			c.Queen = f.Queen
		}
	}
}

// searched settles every comb that went in before: one search goes over all.
func (c *Colony) searched(at calendar.Moment, found int) {
	for i := range c.OpenBrood {
		c.OpenBrood[i].Searched = at
	}
	if n := len(c.OpenBrood); n > 0 {
		c.OpenBrood[n-1].Found += found
	}
}

func (c *Colony) bank(q QueenID) {
	if !q.IsZero() && !slices.Contains(c.Banked, q) {
		c.Banked = append(c.Banked, q)
	}
}

func (c *Colony) takeTransfer(me Subject, t Transfer) {
	if t.From == me {
		c.Gave = append(c.Gave, t)
	}
	if t.To == me {
		c.Got = append(c.Got, t)
	}
}

// transferOf is the movement of bees or brood an entry tells of, if any.
func transferOf(e *Entry) (Transfer, bool) {
	t := Transfer{At: e.At}
	switch f := e.Fact.(type) {
	case NucMadeUp:
		t.From, t.To, t.Cups = f.From.Subject(), f.Nuc.Subject(), f.Cups
	case BeesAdded:
		t.From, t.To, t.Cups = f.From, f.Nuc.Subject(), f.Cups
	case BroodGiven:
		t.From, t.To, t.Combs = f.From, f.To, f.Combs
	case United:
		t.From, t.To = f.Nuc.Subject(), f.With
	default:
		return t, false
	}
	return t, !t.From.IsZero() && !t.To.IsZero()
}
