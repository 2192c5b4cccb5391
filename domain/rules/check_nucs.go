package rules

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/handover"
	"lidmark/domain/practice"
	"lidmark/domain/strength"
)

// Catch means to take the queen out of a nuc: one who lays, or, with AsVirgin,
// a virgin to be rid of.
type Catch struct {
	Nuc      book.NucID
	AsVirgin bool
}

// SetUp means to set a nuc on a place, or only in a yard.
type SetUp struct {
	Nuc   book.NucID
	Yard  book.YardID
	Stand book.StandID
	Place int
}

// Move means to carry a nuc to another place.
type Move SetUp

// MakeUp means to fill empty nucs with cups of bees each.
type MakeUp struct {
	Nucs []book.NucID
	Cups float64
	Shut bool
	From book.ColonyID
}

// AddBees means to give a nuc cups of bees.
type AddBees struct {
	Nuc  book.NucID
	Cups float64
	From book.Subject
}

// OpenNuc means to open a nuc for some minutes.
type OpenNuc struct {
	Nuc     book.NucID
	Minutes float64
}

// GiveFeed means to feed a nuc litres of syrup.
type GiveFeed struct {
	Nuc    book.NucID
	Litres float64
}

// HandOver means to let a queen go, for an order or for none.
type HandOver struct {
	Queen book.QueenID
	Order book.OrderID
}

func (c *checker) days(k practice.Key) calendar.Day { return calendar.Day(c.numbers.Days(k)) }

func (i Catch) check(c *checker) {
	n := c.view.Nuc(i.Nuc)
	c.standstill(n.Yard, "Catch her")
	h := n.Holds
	if i.AsVirgin {
		return
	}
	c.treatedIn(n)
	p := c.course.Of(n)
	if !h.Condition.Queenright() {
		c.refuse(fmt.Sprintf("nobody has seen a queen laying in %s", n.Name), "Look for eggs first; a virgin is caught as a virgin")
		return
	}
	if h.Condition == book.Laying {
		c.warn(fmt.Sprintf("%s is not proven: no capped worker brood seen, %s", n.Name, h.EggsSeen(c.view.Today(), c.course.Zone(n.Yard))),
			"Look for capped worker brood from "+c.day(p.LookFrom, n.Yard).ShortFrom(c.view.Today()), practice.EggToCappedWorkerBrood)
	}
	if least := c.days(practice.LeastAgeAtHandOver); !p.Emerged.IsZero() && p.Age < int(least) {
		c.warn(fmt.Sprintf("she is %s old; fewer of the queens caught under %d days live", count(p.Age, "day"), least),
			"Catch her from "+(c.day(p.Emerged, n.Yard)+least).ShortFrom(c.view.Today()), practice.LeastAgeAtHandOver)
	}
}

func (i SetUp) check(c *checker) {
	if i.Place == 0 || i.Stand.IsZero() {
		return
	}
	me := c.view.Nuc(i.Nuc)
	for n := range c.view.Nucs() {
		if n.Nuc == i.Nuc || n.Stand != i.Stand || n.Place != i.Place || !n.Box.IsZero() && n.Box == me.Box {
			continue
		}
		c.refuse(fmt.Sprintf("place %s%d is taken by %s", c.view.Stand(i.Stand).Letter, i.Place, n.Name), "Take a free place, or move "+n.Name+" first")
	}
}

func (i Move) check(c *checker) {
	SetUp(i).check(c)
	n := c.view.Nuc(i.Nuc)
	if n.Yard.IsZero() {
		return
	}
	if n.Yard != i.Yard {
		c.standstill(n.Yard, "Move it")
	}
	from, to := c.view.Yard(n.Yard), c.view.Yard(i.Yard)
	if n.Holds.Condition == book.Empty || !strength.Near(from, to, c.numbers) {
		return
	}
	least := c.numbers.Get(practice.MoveDistanceLeast)
	p := c.course.Of(n)
	if (p.Calendar == book.Virgin || p.Calendar == book.Due) && p.Age >= int(c.days(practice.VirginMayFlyFrom)) {
		c.refuse(fmt.Sprintf("the virgin of %s is %s old and may be flying; she would fly back to the old place", n.Name, count(p.Age, "day")),
			fmt.Sprintf("Move it %g km or more, or wait until she lays", least), practice.VirginMayFlyFrom, practice.MoveDistanceLeast)
		return
	}
	c.warn(fmt.Sprintf("its fliers know the old place, nearer than %g km", least), "Move it in the evening and shut it in, or further away", practice.MoveDistanceLeast)
}

func (i MakeUp) check(c *checker) {
	source := c.view.Colony(i.From)
	if !i.From.IsZero() {
		c.standstill(source.Yard, "Take bees")
	}
	var yards []book.YardID
	thin, many := map[book.YardID]bool{}, map[book.YardID]int{}
	for _, id := range i.Nucs {
		n := c.view.Nuc(id)
		if n.Holds.Condition != book.Empty {
			c.warn(n.Name+" is not empty: "+c.course.Of(n).Why, "Shake it out or unite it first")
		}
		if many[n.Yard]++; many[n.Yard] == 1 {
			yards = append(yards, n.Yard)
		}
		thin[n.Yard] = thin[n.Yard] || c.view.Box(n.Box).Thin
	}
	for _, id := range yards {
		m := strength.MakeUp{Cups: i.Cups, From: i.From.Subject(), Shut: i.Shut, Thin: thin[id]}
		c.enough(m, c.strength(id).Morning(m), many[id])
	}
}

func (i AddBees) check(c *checker) {
	n := c.view.Nuc(i.Nuc)
	y := c.strength(n.Yard)
	if id, ok := i.From.Colony(); ok && c.view.Colony(id).Yard != n.Yard {
		c.standstill(c.view.Colony(id).Yard, "Take bees")
	}
	given := i.Cups * c.numbers.Get(practice.BeesPerCup)
	if stay := y.Stay(i.Cups, i.From, false); given > 0 && stay < given*(1-c.numbers.Get(practice.LossOfShutInBees)) {
		c.warn(fmt.Sprintf("of %s bees about %s stay: their fliers know the way home", bees(given), bees(stay)),
			"Take young bees from brood combs and shut them in, or bees of a far yard", practice.LossOfBroodCombs, practice.MoveDistanceLeast)
	}
}

func (i OpenNuc) check(c *checker) {
	n := c.view.Nuc(i.Nuc)
	c.flies(n)
	c.cold(n.Yard)
	c.dearth(n.Yard, i.Minutes)
}

// mayFly tells whether a nuc's virgin may be out now.
func (c *checker) mayFly(n *book.Nuc) bool {
	h := c.now.In(c.course.Zone(n.Yard))
	clock := float64(h.Hour()) + float64(h.Minute())/60
	p := c.course.Of(n)
	old := (p.Calendar == book.Virgin || p.Calendar == book.Due) && p.Age >= int(c.days(practice.VirginMayFlyFrom))
	return old && c.numbers.Get(practice.QuietHoursFrom) <= clock && clock < c.numbers.Get(practice.QuietHoursUntil)
}

// flies warns of opening a nuc in the hours in which its virgin may be out.
func (c *checker) flies(n *book.Nuc) {
	if c.mayFly(n) {
		c.warn(fmt.Sprintf("a virgin of %s may be out on a flight between %g and %g h", count(c.course.Of(n).Age, "day"), c.numbers.Get(practice.QuietHoursFrom), c.numbers.Get(practice.QuietHoursUntil)),
			"Look in the morning or the evening", practice.QuietHoursFrom, practice.QuietHoursUntil, practice.VirginMayFlyFrom)
	}
}

// dearth warns of a box that is open for long where robbers would come.
func (c *checker) dearth(yard book.YardID, long float64) {
	if most := c.numbers.Get(practice.OpenInDearthMost); c.view.Yard(yard).Forage == book.InDearth && long > most {
		c.warn(fmt.Sprintf("open for more than %g min in dearth calls robbers", most), "Open early or late, and not longer", practice.OpenInDearthMost)
	}
}

// cold warns of opening boxes on a day told too cool for it.
func (c *checker) cold(yard book.YardID) {
	least := c.numbers.Get(practice.WarmEnoughToOpen)
	day := calendar.DayOf(c.now, c.course.Zone(yard))
	if high, said := c.view.Yard(yard).Weather[day].High.Get(); said && high < least {
		c.warn(fmt.Sprintf("no warmer than %g °C that day: brood chills in an open box under %g °C", high, least), "Wait for a warmer day, or be quick", practice.WarmEnoughToOpen)
	}
}

func (i GiveFeed) check(c *checker) {
	n := c.view.Nuc(i.Nuc)
	if y := c.view.Yard(n.Yard); i.Litres > 0 && y.Forage == book.InDearth {
		c.warn("dearth since "+c.day(y.ForageSince.Instant, n.Yard).ShortFrom(c.view.Today())+": syrup calls robbers", "Give fondant, or syrup inside at dusk with the entrance narrowed", practice.RobbingSyrup)
	}
}

func (i HandOver) check(c *checker) {
	q := c.view.Queen(i.Queen)
	if !q.InHand() {
		c.refuse(queenName(c.view, q)+" is no longer in hand", "Take another queen")
		return
	}
	if q.Virgin {
		c.warn(queenName(c.view, q)+" is a virgin: nobody saw her lay", "Take a queen who lays")
	} else if until, alone := handover.Alone(c.view, q); alone && q.Caged() && until < c.view.Today() {
		c.warn(fmt.Sprintf("caged since %s, in no bank: a cage keeps a queen for %s at most", q.Since.Day(c.view.Zone()).ShortFrom(c.view.Today()), count(int(c.days(practice.CagedMost)), "day")),
			"Look how she is before she goes", practice.CagedMost)
	}
	i.forOrder(c, q)
	if !q.From.IsZero() {
		from := c.view.Nuc(q.From)
		c.standstill(from.Yard, "Hand her over")
		c.treatedIn(from)
	}
	if bank, ok := q.Where.Colony(); ok {
		c.standstill(c.view.Colony(bank).Yard, "Hand her over")
		c.treated(q.Where, c.view.Colony(bank).Yard, c.view.Colony(bank).Treated)
	}
}

// forOrder warns of a queen who is not what her order asks for.
func (i HandOver) forOrder(c *checker, q *book.Queen) {
	if i.Order.IsZero() {
		return
	}
	o := c.view.Order(i.Order)
	i.owed(c, o)
	i.asMarked(c, o, q)
	switch sure := q.Descent != book.DescentDoubtful; {
	case o.TakesSure(q.Line, sure):
	case o.Takes(q.Line):
		c.warn(fmt.Sprintf("%s is of doubtful descent; order %s is for line %s", queenName(c.view, q), o.Number, o.Line), "Take one whose descent is sure")
	case q.Line == "":
		c.warn(fmt.Sprintf("nobody knows of which line %s is; order %s is for line %s", queenName(c.view, q), o.Number, o.Line), "Take one of that line")
	default:
		c.warn(fmt.Sprintf("%s is of line %s; order %s is for line %s", queenName(c.view, q), q.Line, o.Number, o.Line), "Take one of that line")
	}
}

// owed warns of one queen more than an order is owed.
func (i HandOver) owed(c *checker, o *book.Order) {
	switch {
	case o.Closed:
		c.warn(fmt.Sprintf("order %s is closed", o.Number), "Look for whom she is meant")
	case o.Open() == 0:
		c.warn(fmt.Sprintf("order %s has all its queens", o.Number), "Look for whom she is meant")
	}
}

// asMarked warns of a queen without the mark or the clipped wing that her order wants, and of
// one clipped for an order that does not say so: that cannot be mended.
func (i HandOver) asMarked(c *checker, o *book.Order, q *book.Queen) {
	if l := handover.LacksOf(o, q.Mark); l.Any() {
		c.warn(fmt.Sprintf("order %s wants %s; of hers the book has none", o.Number, l.Wanted()), "First "+l.Words()+", and write it down")
	}
	if q.Mark.Clipped && !o.Clipped {
		c.warn(fmt.Sprintf("a wing of %s is clipped; order %s does not ask for it", queenName(c.view, q), o.Number), "Take one who is whole, or ask who gets her")
	}
}
