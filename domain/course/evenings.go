package course

import (
	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Evenings are [Course.Known] as a keeper reads days: what a nuc may hold at the
// end of each, once its flights are flown and its looks taken; on the view's own
// day at the view's instant.
func (c *Course) Evenings(n *book.Nuc, ahead int) (days []DayChances) {
	a := c.ask(n)
	events, row := a.life()
	if len(events) == 0 {
		return nil
	}
	e := evenings{first: events[0].day, today: a.today, row: row}
	a.replay(events, a.today+calendar.Day(ahead)+1, func(h *Held) { e.take(DayChances{h.Row, h.Chances()}) })
	return e.days
}

// Hindsight are [Course.Was] as a keeper reads days, one for each of
// [Course.Evenings] up to the view's own day: what the nuc held by all that is known
// now, beside what was known then.
func (c *Course) Hindsight(n *book.Nuc) []DayChances {
	a := c.ask(n)
	events, row := a.life()
	if len(events) == 0 {
		return nil
	}
	e := evenings{first: events[0].day, today: a.today, row: row}
	for _, d := range c.Was(n) {
		e.take(d)
	}
	return e.days
}

// evenings are rows of a life, each told of the evening before.
type evenings struct {
	first, today, row calendar.Day // of the life; row is that of the view's instant
	days              []DayChances
}

// take takes the next row.
func (e *evenings) take(d DayChances) {
	switch before := d.Day - 1; {
	case d.Day != e.row && before != e.today:
		e.add(before, d.Chances)
	case d.Day == e.row && before != e.today: // in a forenoon it is last evening's as well
		e.add(before, d.Chances)
		e.add(e.today, d.Chances)
	case d.Day == e.row:
		e.add(e.today, d.Chances)
	}
}

func (e *evenings) add(d calendar.Day, c Chances) {
	if d >= e.first {
		e.days = append(e.days, DayChances{d, c})
	}
}
