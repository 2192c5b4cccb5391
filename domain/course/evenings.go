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
	last := a.today + calendar.Day(ahead)
	add := func(d calendar.Day, h *Held) {
		if d >= events[0].day {
			days = append(days, DayChances{d, h.Chances()})
		}
	}
	a.replay(events, last+1, func(h *Held) {
		switch before := h.Row - 1; {
		case h.Row != row && before != a.today:
			add(before, h)
		case h.Row == row && before != a.today: // in a forenoon it is last evening's as well
			add(before, h)
			add(a.today, h)
		case h.Row == row:
			add(a.today, h)
		}
	})
	return days
}
