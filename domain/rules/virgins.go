package rules

import (
	"fmt"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/course"
	"lidmark/domain/practice"
)

// awaited tells whether a nuc has a queen, in the cell or out, whose eggs
// nobody has seen.
func (n *nucCase) awaited() bool {
	c := n.holds.Calendar
	return c == book.Cell || c == book.Virgin || c == book.Due
}

// virginsTime: watched from about two weeks of age, late over three, too late
// to mate from about four. Where a cell is to spare for her nuc no later day is told
// beside it.
func (p *pass) virginsTime(n *nucCase) {
	if !n.awaited() || n.holds.Calendar == book.Cell || n.spare != nil {
		return
	}
	out := n.yard.day(n.holds.Emerged)
	from := out + p.days(practice.VirginWatch)
	if n.yard.today < from {
		return
	}
	f := Finding{
		Rule: VirginsTime, Of: n.subject(), Since: n.holds.Emerged,
		What: fmt.Sprintf("%s old and not seen laying", count(n.holds.Age, "day")),
		Why:  fmt.Sprintf("emerged %s; late from %d days, too late to mate from %d (%s)", out.ShortFrom(p.today), p.days(practice.VirginLate), p.days(practice.VirginTooLate), n.yard.day(n.holds.TooLateAt).ShortFrom(p.today)),
		Do:   "Look, then leave her or give a new cell",
		Sure: sureCalendar,
		Used: []practice.Key{practice.VirginWatch, practice.VirginLate, practice.VirginTooLate},
	}
	f.From, f.Best, f.By = course.Days(from, out+p.days(practice.VirginLate), n.yard.day(n.holds.TooLateAt)-1, n.yard.zone)
	if !p.now.Before(n.holds.TooLateAt) {
		f.What, f.Act = "too late to mate", ActLookInside // she is not taken out unlooked
		f.Takes = ActTakeOutQueen.Minutes(p.numbers, false)
		f.Do = "Look; without eggs take her out, or unite"
		f.Why = fmt.Sprintf("%s old, emerged %s", count(n.holds.Age, "day"), out.ShortFrom(p.today))
		p.lookedTooLate(n, &f)
	}
	p.addTo(n, f)
}

// begunLate: eggs from a queen who was too old to mate by then are to be trusted only
// when there is good brood of them, which proves that she did.
func (p *pass) begunLate(n *nucCase, f *Finding) {
	if !n.holds.BegunLate {
		return
	}
	age := int(n.Holds.FirstEggs.Instant.Sub(n.holds.Emerged).Hours() / 24)
	f.Why += fmt.Sprintf("; she began late, first eggs %s at %s, and from %d it is too late to mate: ", howDated(n.Holds.EggsBy), count(age, "day"), p.numbers.Days(practice.VirginTooLate))
	if n.holds.Proven {
		f.Why += "her worker brood proves that she did"
	} else {
		f.Why += "doubtful"
		f.Do += ": see good brood before you trust her"
	}
	f.Used = append(f.Used, practice.VirginTooLate)
}

// howDated tells first eggs that were seen from those that brood dates.
func howDated(by book.Brooded) string {
	if by == (book.Brooded{}) {
		return "seen"
	}
	return "by her brood"
}

// lookedTooLate: a look that found no eggs when it was too late to mate has
// settled it but for worker brood of hers since: she is not taken out unlooked.
func (p *pass) lookedTooLate(n *nucCase, f *Finding) {
	looked := n.holds.NoEggsOn
	if looked.IsZero() || looked.Before(n.holds.TooLateAt) {
		return
	}
	day := n.yard.day(looked)
	switch few := n.has.TooFew(p.numbers); {
	case n.still() && few:
		f.Do = "Look; without worker brood take her out, too few bees for a cell, and nothing is united on a standstill"
	case n.still():
		f.Do = "Look; without worker brood take her out, then give a cell"
	case few:
		f.Do = "Look; without worker brood shake out or unite, too few bees for a cell"
	default:
		f.Do = "Look; without worker brood take her out, then give a cell or unite"
	}
	f.Why += ", no eggs on " + day.ShortFrom(p.today)
	f.From, f.Best, f.By = course.Days(day, day, day+p.days(practice.LookAgainBy), n.yard.zone)
	f.Used = append(f.Used, practice.LookAgainBy)
}

// lookEggs: the first look that is worth while.
func (p *pass) lookEggs(n *nucCase) {
	if !n.awaited() || !n.holds.NoEggsOn.IsZero() || !p.now.Before(n.holds.TooLateAt) {
		return
	}
	f := p.eggs(n)
	f.Rule = LookEggs
	f.What = "a look for eggs is ahead"
	if n.holds.Calendar == book.Due {
		f.What = book.Due.String()
	}
	f.Why = n.holds.Why
	n.weather(&f)
	n.spareCell(&f)
	p.addTo(n, f)
}

// weather says that a look is later than by the calendar, by the hours there were
// to fly.
func (n *nucCase) weather(f *Finding) {
	if !n.holds.Delayed {
		return
	}
	f.Sure = sureWeather
	f.Why += "; by the hours fit to fly, eggs are likely from " + n.yard.day(n.holds.LookFrom).ShortFrom(n.yard.today)
	f.Used = append(f.Used, practice.LookForEggsChance, practice.FirstMatingFlight, practice.MatedPerHour)
}

// late: no eggs at a look, so another in a few days, until it is too late.
func (p *pass) late(n *nucCase) {
	if !n.awaited() || n.holds.NoEggsOn.IsZero() || !p.now.Before(n.holds.TooLateAt) {
		return
	}
	f := p.eggs(n)
	f.Rule = Late
	f.Since = n.holds.NoEggsOn
	f.What = "late: no eggs yet"
	f.Why = fmt.Sprintf("%s old, no eggs on %s", count(n.holds.Age, "day"), n.yard.day(n.holds.NoEggsOn).ShortFrom(p.today))
	f.Used = append(f.Used, practice.LookAgainFrom, practice.LookAgainBy)
	p.ownQueen(n, &f)
	n.weather(&f)
	n.spareCell(&f)
	p.addTo(n, f)
}

// ownQueen: where brood was left to raise one on, the queen looked for may be
// the nuc's own, and a cell would be torn down.
func (p *pass) ownQueen(n *nucCase, f *Finding) {
	if n.holds.OwnFrom.IsZero() || p.now.Before(n.holds.OwnFrom) {
		return
	}
	left := n.yard.of(n.Brood.Open)
	emerges := practice.Of(practice.OwnQueenEmerges)
	from := left + calendar.Day(emerges.Min) + p.days(practice.LookForEggsNotBefore)
	by := left + calendar.Day(emerges.Max) + p.days(practice.FirstEggsNineInTenBy)
	f.Do = "Look for opened own cells on the comb face and for eggs; no cell yet"
	f.Why += fmt.Sprintf("; left on young brood %s, a queen of its own could begin to lay %s to %s", left.ShortFrom(p.today), from.ShortFrom(p.today), by.ShortFrom(p.today))
	f.Used = append(f.Used, practice.OwnQueenEmerges)
}

func (p *pass) eggs(n *nucCase) Finding {
	return Finding{
		Of: n.subject(), Act: ActLookForEggs, Since: n.holds.Emerged,
		From: n.holds.LookFrom, Best: n.holds.LookBest, By: n.holds.LookBy,
		Do: "Look for eggs", Sure: sureCalendar,
		Used: []practice.Key{practice.LookForEggsFrom, practice.FirstEggsNineInTenBy, practice.LookForEggsNotBefore},
	}
}
