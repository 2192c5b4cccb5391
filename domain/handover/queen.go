package handover

import (
	"cmp"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
)

// Queen is one who can be handed over: in a cage or bank, or in a nuc in which she
// has proven herself.
type Queen struct {
	ID     book.QueenID // zero: she has no record of her own yet
	Nuc    book.NucID   // where she lays; zero: she is in a cage
	Bank   bool         // her cage hangs in a colony
	Line   string
	Sure   bool         // nobody doubts whose daughter she is
	Ready  calendar.Day // from when she may go
	Caged  calendar.Day // since when she is in a cage; zero: not
	Mark   book.QueenMarked
	Label  string // of her cage
	Born   calendar.Day
	Closed string       // why she may not leave her yard now; "": she may
	Shut   calendar.Day // until then robbers keep her yard shut, and she is not caught; zero: they do not

	keeps calendar.Day // the last day on which she may go: a cage does not keep her for ever
	full  calendar.Day // the last day on which her small combs have room, unless her bees are few; zero: they are not small
}

// forever is a day beyond all plans.
const forever = calendar.Day(1 << 30)

// stock are all mated queens who are caged, and all who have proven themselves in
// nucs, with the day from which each may go; in walking order, the caged first.
func stock(c *course.Course) (all []Queen) {
	v := c.View()
	keeps := Keeps(v)
	for q := range v.Queens() {
		if q.Caged() && !q.Virgin {
			all = append(all, caged(v, q, keeps(q)))
		}
	}
	slices.SortStableFunc(all, func(a, b Queen) int { return cmp.Compare(a.Caged, b.Caged) })
	shut := shutUntil(c)
	for n := range v.Nucs() {
		if q, ok := laying(c, n); ok {
			q.Shut = shut[n.Yard]
			all = append(all, q)
		}
	}
	return all
}

// Catchable are the queens who have proven themselves in nucs, are of a line that will
// do for an order and may go by its day, in walking order; those whose yard is on
// standstill, or shut beyond the day, with the reason, see [Queen.Closed].
func Catchable(c *course.Course, o *book.Order) (all []Queen) {
	shut := shutUntil(c)
	for n := range c.View().Nucs() {
		if q, ok := laying(c, n); ok && q.Ready <= o.By && o.TakesSure(q.Line, q.Sure) {
			q.Shut = shut[n.Yard]
			q.Closed = q.stays(o.By)
			all = append(all, q)
		}
	}
	return all
}

func caged(v *book.View, q *book.Queen, keeps calendar.Day) Queen {
	_, bank := q.Where.Colony()
	day := q.Since.Day(v.Zone())
	return Queen{
		ID: q.Queen, Bank: bank, Line: q.Line, Sure: q.Descent != book.DescentDoubtful,
		Ready: day, Caged: day, Mark: q.Mark, Label: q.Label, Closed: closedCage(v, q), keeps: keeps,
	}
}

// laying is the proven queen of a nuc. One whose brood nobody has seen capped is
// not promised to anybody.
func laying(c *course.Course, n *book.Nuc) (Queen, bool) {
	p := c.Of(n)
	if n.Holds.Condition != book.GoodBrood || p.Condition != book.GoodBrood || p.ReadyAt.IsZero() {
		return Queen{}, false
	}
	v, zone := c.View(), c.Zone(n.Yard)
	q := Queen{
		ID: n.Holds.Queen, Nuc: n.Nuc, Line: v.LineIn(n), Sure: v.DescentIn(n) != book.DescentDoubtful,
		Ready: calendar.DayOf(p.ReadyAt, zone), Closed: closed(v, n.Yard), keeps: forever, full: fullBy(v, n, zone),
	}
	if !p.Emerged.IsZero() {
		q.Born = calendar.DayOf(p.Emerged, zone)
	}
	if !q.ID.IsZero() {
		q.Mark = v.Queen(q.ID).Mark
	}
	if n.Treated.Waits(v.Today(), zone) {
		q.Ready = max(q.Ready, n.Treated.Until(zone))
	}
	return q, true
}

// closedCage is why a caged queen stays: the yard of the nuc that she was caught in, or
// of the colony that she hangs in, is on standstill.
func closedCage(v *book.View, q *book.Queen) string {
	if s := v.Yard(v.Nuc(q.From).Yard).Standstill; s != nil && !q.From.IsZero() {
		return "caught in a yard on standstill: " + s.What + " suspected"
	}
	if bank, ok := q.Where.Colony(); ok {
		return closed(v, v.Colony(bank).Yard)
	}
	return ""
}

func closed(v *book.View, yard book.YardID) string {
	if s := v.Yard(yard).Standstill; s != nil {
		return "its yard is on standstill: " + s.What + " suspected"
	}
	return ""
}
