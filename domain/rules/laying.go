package rules

import (
	"fmt"
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// lookAgain: capped worker brood proves that eggs seen were a mated queen's.
func (p *pass) lookAgain(n *nucCase) {
	if n.Condition() != book.Laying {
		return
	}
	f := Finding{
		Rule: LookAgain, Of: n.subject(), Act: ActLookForBrood, Since: n.Holds.FirstEggs.Instant,
		From: n.holds.LookFrom, Best: n.holds.LookBest, By: n.holds.LookBy,
		What: "not proven yet",
		Why:  fmt.Sprintf("%s, capped worker brood from %s", n.Holds.EggsSeen(n.yard.today, n.yard.zone), n.yard.day(n.holds.LookFrom).ShortFrom(p.today)),
		Do:   "Look for capped worker brood",
		Sure: sureCalendar,
		Used: []practice.Key{practice.EggToCappedWorkerBrood, practice.ReadyAfterFirstEgg},
	}
	p.begunLate(n, &f)
	p.addTo(n, f)
}

// ready: proven, laying long enough, and of age. She is caught for an order, unless
// nothing may leave the yard. She can stay, and so is never past due, but on small combs
// that are full while she could hang in a bank.
func (p *pass) ready(n *nucCase) {
	if n.Condition() != book.GoodBrood || n.holds.ReadyAt.IsZero() {
		return
	}
	why := n.proven()
	if !n.holds.Emerged.IsZero() {
		why += fmt.Sprintf(", %s old", count(n.holds.Age, "day"))
	}
	f := Finding{
		Rule: Ready, Of: n.subject(),
		Since: n.Holds.FirstEggs.Instant, From: n.holds.ReadyAt,
		What: "ready to hand over", Why: why, Do: "Catch her when an order wants her",
		Sure: n.sure(),
		Used: []practice.Key{practice.ReadyAfterFirstEgg, practice.LeastAgeAtHandOver},
	}
	t, waits := n.treated()
	p.begunLate(n, &f)
	if p.view.DescentIn(n.Nuc) == book.DescentDoubtful {
		f.Do = "Catch her when an order that takes any line wants her"
		f.Why += "; her descent is doubtful: for no order that asks for a line"
	}
	switch s := n.yard.yard.Standstill; {
	case s != nil:
		f.Do = "No catch while the yard is on standstill"
		f.Why += fmt.Sprintf("; %s suspected in %s", s.What, p.name(s.Of))
	case waits:
		f.Do = "No catch before " + t.Until(n.yard.zone).ShortFrom(p.today) + ", unless the label allows it"
		f.Why += fmt.Sprintf("; treated with %s on %s", t.With, n.yard.of(t.At).ShortFrom(p.today))
	case n.promised():
		p.catchFor(n, &f)
	case n.yard.today < n.yard.shutUntil:
		f.Do = "No catch until " + n.yard.shutUntil.ShortFrom(p.today)
		f.Why += "; robbers in the yard"
	}
	p.addTo(n, f)
}

// proven says by what a queen has proven herself, and what dates her first eggs where
// nobody saw them.
func (n *nucCase) proven() string {
	h, last := n.Holds, n.BroodSeen()
	switch seen := "capped worker brood seen " + n.yard.of(last).ShortFrom(n.yard.today); {
	case h.EggsBy == (book.Brooded{}):
		return seen
	case h.EggsBy.Capped && h.EggsBy.Seen == last:
		return h.EggsSeen(n.yard.today, n.yard.zone)
	default:
		return seen + ", " + h.EggsSeen(n.yard.today, n.yard.zone)
	}
}

// catchFor: who goes to an order is caught on the day that the sheet of the orders names,
// as few days before she leaves as a cage keeps her; until then she lays where she is. On
// small combs that fill up before, she is caught while they have room, and hangs in a
// bank; where she cannot be caged so long she gets room.
func (p *pass) catchFor(n *nucCase, f *Finding) {
	o := n.order
	f.Act, f.Do = ActCatchQueen, "Catch her, cage and mark her"
	if mark := p.marked(n.Nuc); mark != "" {
		f.Do = "Catch and cage her, " + mark
	}
	f.Used = append(f.Used, practice.CagedMost)
	from, best, by := max(o.From, n.yard.day(f.From)), o.By, o.By
	if o.Full != 0 && !o.Room {
		by = max(o.Full, n.yard.day(f.From))
		best = min(best, by)
		f.Why += "; small combs fill up"
		f.Used = append(f.Used, practice.FullBy)
	}
	f.From, f.Best, f.By = course.Days(min(from, best), best, by, n.yard.zone)
	if f.By = p.endOfDay(n.yard, f.By); o.Full != 0 && f.PastDue(p.now) {
		f.What = "ready, combs full"
	}
	f.Why += "; " + o.words(p.today)
	if o.ToBank {
		f.Used = append(f.Used, practice.MatedBankMost)
	}
}

// marked says by what mark a nuc's queen is known; "" if by none.
func (p *pass) marked(n *book.Nuc) string {
	var mark book.QueenMarked
	if id := n.Holds.Queen; !id.IsZero() {
		mark = p.view.Queen(id).Mark
	}
	switch {
	case mark.Colour != "":
		return "marked " + mark.Colour
	case mark.Disc != "":
		return "with disc " + mark.Disc
	default:
		return ""
	}
}

// words say today for which order she is, and where she is until then.
func (o promise) words(today calendar.Day) string {
	if o.ToBank {
		return "banked for order " + o.order
	}
	return "for order " + o.order + ", " + o.on.ShortFrom(today)
}

// fullCombs tells whether a nuc sits on combs of full size.
func fullCombs(n *book.Nuc, numbers practice.Numbers) bool {
	return n.Side >= numbers.Get(practice.FullCombSide)
}

// smallCombs tells whether a nuc is known to sit on smaller ones.
func (p *pass) smallCombs(n *nucCase) bool { return n.Side > 0 && !fullCombs(n.Nuc, p.numbers) }

// fullFrom says that combs are full, or from when.
func fullFrom(full, today calendar.Day) string {
	if full <= today {
		return "small combs are full"
	}
	return "small combs full by " + full.ShortFrom(today)
}

// round100 is a number of cells as it may be said.
func round100(cells float64) float64 { return math.Round(cells/100) * 100 }

// full: small combs are laid up within days to two weeks, by a queen whose bees
// are enough to keep that brood.
func (p *pass) full(n *nucCase) {
	if !n.Condition().Queenright() || !p.smallCombs(n) || n.has.WeakThen() {
		return
	}
	eggs := n.yard.of(n.Holds.FirstEggs)
	f := Finding{
		Rule: Full, Of: n.subject(), Since: n.Holds.FirstEggs.Instant,
		What: "small combs fill up",
		Why:  fmt.Sprintf("laying since %s on %s of %g dm²", eggs.ShortFrom(p.today), count(n.Sides, "side"), n.Side),
		Do:   "Catch her, take a comb of brood, or add room",
		Sure: sureCalendar,
		Used: []practice.Key{practice.FullFrom, practice.FullBy, practice.FullCombSide},
	}
	switch {
	case !n.holds.Proven:
		f.Do = "Catch her once she is proven, take a comb of brood, or add room"
	case n.order.Room:
		f.Do = "Take a comb of brood or add room: she is caught " + n.order.By.ShortFrom(p.today) + " for order " + n.order.order
	}
	from, by := eggs+p.days(practice.FullFrom), eggs+p.days(practice.FullBy)
	best := by
	if full := n.has.Ahead.Full; full != 0 {
		best = min(max(full, from), by)
		f.Sure = sureReckoned
		if full <= by { // a day behind the last one that is told would be a second one
			f.What = fullFrom(full, n.yard.today)
		}
		f.Why += fmt.Sprintf("; brood in %s of %s cells", whole(round100(n.has.Brood)), whole(round100(n.has.Comb)))
		f.Used = append(f.Used, practice.QueenLays, practice.BroodPerBee, practice.BroodShareOfComb)
	}
	f.From, f.Best, f.By = course.Days(from, best, by, n.yard.zone)
	f.Severity = p.open(f.From)
	p.noteOf(n, f)
}
