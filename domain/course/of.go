package course

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/practice"
)

// Of tells what a nuc most probably holds at the view's instant: for a day ahead
// what is to be expected if nothing is done, for a day past what was recorded by
// then. The condition follows the clock; where nobody saw it and [Course.Held] makes
// another more probable than not, it follows that.
func (c *Course) Of(n *book.Nuc) Presumption {
	a := c.ask(n)
	p := a.byCalendar()
	a.lead(&p)
	return p
}

func (a asked) byCalendar() Presumption {
	switch n := a.nuc; n.Condition() {
	case book.Empty:
		return a.empty()
	case book.NoQueen:
		return a.noQueen()
	case book.Cell, book.Virgin:
		return a.virgin()
	case book.Laying, book.GoodBrood:
		return a.laying()
	default:
		return a.trouble()
	}
}

func (a asked) recorded() Presumption {
	h := a.nuc.Holds
	return Presumption{Condition: h.Condition, Seen: h.Seen, Since: h.Since.Instant}
}

func (a asked) empty() Presumption {
	p := a.recorded()
	p.Seen, p.Why = true, "empty"
	if n := a.nuc; !n.Ended.IsZero() {
		p.Why = fmt.Sprintf("empty, %s on %s", n.EndedBy, a.day(n.Ended.Instant).ShortFrom(a.today))
	}
	return p
}

func (a asked) trouble() Presumption {
	p := a.recorded()
	p.Condition = a.nuc.Condition()
	if p.Condition == book.BeingRobbed {
		p.Seen, p.Since = true, a.nuc.RobbedAt.Instant
	}
	p.Why = fmt.Sprintf("%s, seen %s", p.Condition, a.day(p.Since).ShortFrom(a.today))
	a.age(&p)
	return p
}

// noQueen: the nuc may raise a queen of its own if open brood was left; if
// not, it gets laying workers.
func (a asked) noQueen() Presumption {
	p := a.recorded()
	lost := a.nuc.Queenless
	p.Why = "no queen since " + a.day(lost.Instant).ShortFrom(a.today)
	without := a.nuc.Brood.Open
	if without.Before(lost) {
		without = lost
	}
	workers := a.day(without.Instant) + a.days(practice.LayingWorkersFrom)
	p.LayingWorkersAt = a.start(workers)
	if own := a.ownEmerges(); own != 0 {
		p.OwnFrom = a.start(own)
		p.Seen = p.Seen && a.today < own
		a.lookForEggs(&p, own)
		p.Why += "; a virgin of its own is possible from " + own.ShortFrom(a.today)
		return p
	}
	if a.today >= workers {
		p.Condition, p.Seen, p.Since = book.LayingWorkers, false, p.LayingWorkersAt
		p.Why = fmt.Sprintf("%s, %d days: laying workers to be expected", p.Why, a.today.Sub(a.day(lost.Instant)))
	}
	return p
}

// laying: eggs become capped brood, and she becomes ready.
func (a asked) laying() Presumption {
	p := a.recorded()
	eggs := a.day(a.nuc.Holds.FirstEggs.Instant)
	seen := a.nuc.Holds.EggsSeen(a.today, a.zone)
	p.Why = "laying, " + seen
	a.age(&p)
	ready := eggs + a.days(practice.ReadyAfterFirstEgg)
	if !p.Emerged.IsZero() {
		ready = max(ready, a.day(p.Emerged)+a.days(practice.LeastAgeAtHandOver))
		p.BegunLate = a.nuc.Holds.FirstEggs.Instant.Sub(p.Emerged) >= a.numbers.Duration(practice.VirginTooLate)
	}
	p.Proven = a.nuc.Holds.Condition == book.GoodBrood
	p.ReadyAt = a.start(ready)
	capped := eggs + a.days(practice.EggToCappedWorkerBrood)
	switch {
	case p.Condition == book.GoodBrood:
		p.Why = "good brood, seen " + a.nuc.BroodSeen().Day(a.zone).ShortFrom(a.today)
		return p
	case a.today >= capped:
		p.Condition, p.Seen, p.Since = book.GoodBrood, false, a.start(capped)
		p.Why = "good brood by the calendar, " + seen
	}
	best := max(capped, eggs+a.days(practice.ReadyAfterFirstEgg))
	a.lookOn(&p, capped, best, max(best, eggs+a.days(practice.FullBy)))
	return p
}
