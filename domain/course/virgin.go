package course

import (
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// virgin follows a cell to her emergence, and her to the look for eggs.
func (a asked) virgin() Presumption {
	p := a.recorded()
	if own := a.ownEmerges(); own != 0 {
		p.OwnFrom = a.start(own)
	}
	p.Emerged, p.Told = a.emerged()
	out := a.day(p.Emerged)
	p.OldEnoughFrom = a.start(out + a.days(practice.FirstMatingFlight))
	p.TooLateAt = a.start(out + a.days(practice.VirginTooLate))
	a.lookForEggs(&p, out)
	if p.Condition == book.Cell && a.view.On().Before(p.Emerged) {
		p.Why = a.batchWords("cell") + ", emerges " + out.ShortFrom(a.today) + " by the calendar"
		return p
	}
	if p.Condition == book.Cell {
		p.Condition, p.Seen, p.Since = book.Virgin, false, p.Emerged
	}
	p.Seen = p.Seen && a.sawVirgin()
	p.Age = max(0, a.today.Sub(out))
	p.Why = fmt.Sprintf("%svirgin, %s old%s", a.tipOnly(), Count(p.Age, "day"), byCalendar(p.Told))
	a.due(&p)
	return p
}

// sawVirgin tells whether somebody saw the virgin, or put her in, and no look since
// has missed her. An opened cell is not she.
func (a asked) sawVirgin() bool {
	h := a.nuc.Holds
	saw := h.Condition == book.Virgin && h.Since == h.Given
	for _, l := range a.nuc.Looks {
		switch {
		case l.At.Before(h.Given):
		case l.Queen == book.VirginSeen, l.Queen == book.QueenSeen:
			saw = true
		case l.Queen == book.NoneSeen:
			saw = false
		}
	}
	return saw
}

// tipOnly says that nobody has seen the virgin, only the cell she left, and
// when.
func (a asked) tipOnly() string {
	var tip time.Time
	for _, l := range a.nuc.Looks {
		if l.At.Before(a.nuc.Holds.Given) {
			continue
		}
		if l.Queen == book.VirginSeen || l.Queen == book.QueenSeen {
			return ""
		}
		if l.Cell == book.CellOpenAtTip && tip.IsZero() {
			tip = l.At.Instant
		}
	}
	if tip.IsZero() {
		return ""
	}
	return fmt.Sprintf("cell open at the tip %s; ", a.day(tip).ShortFrom(a.today))
}

// due turns a virgin whose look has come into one due for it, and says when
// it is too late.
func (a asked) due(p *Presumption) {
	look := a.day(p.LookFrom)
	if a.today < look {
		return
	}
	p.Condition, p.Seen, p.Since = book.Due, false, p.LookFrom
	p.Why = fmt.Sprintf("%s old%s, due for a look", Count(p.Age, "day"), byCalendar(p.Told))
	if !p.NoEggsOn.IsZero() {
		p.Why = fmt.Sprintf("%s old%s, no eggs on %s", Count(p.Age, "day"), byCalendar(p.Told), a.day(p.NoEggsOn).ShortFrom(a.today))
	}
	if !a.view.On().Before(p.TooLateAt) {
		p.Why += ": too late to mate"
	}
}

// emerged is the most probable instant she walked, and whether it was told.
// A cell was still shut when it was given; a virgin seen was out by then.
func (a asked) emerged() (t time.Time, told bool) {
	h := a.nuc.Holds
	if !h.Emerged.IsZero() {
		return h.Emerged, true
	}
	t = a.reckoned()
	if h.Condition == book.Virgin && t.After(h.Since.Instant) {
		t = h.Since.Instant
	}
	givenAsCell := h.Condition == book.Cell || h.Given.Before(h.Since)
	if givenAsCell && t.Before(h.Given.Instant) {
		t = h.Given.Instant
	}
	return t, false
}

func (a asked) reckoned() time.Time {
	h := a.nuc.Holds
	batch := h.Batch
	if batch.IsZero() && !h.Queen.IsZero() {
		batch = a.view.Queen(h.Queen).Batch
	}
	if t := a.Emerges(batch); !t.IsZero() {
		return t
	}
	if h.Condition == book.Cell {
		ripe := a.days(practice.GraftToEmerge) - a.days(practice.CellsIn)
		return h.Given.Instant.Add(time.Duration(ripe) * 24 * time.Hour)
	}
	if own := a.ownEmerges(); own != 0 && h.Given.IsZero() {
		return a.start(own)
	}
	return h.Since.Instant
}

// ownEmerges is the day on which a queen of the nuc's own raising usually
// emerges, or none: no open brood was there to raise her on, or her cells were
// broken down when no larva was young enough for new ones.
func (a asked) ownEmerges() calendar.Day {
	n := a.nuc
	if n.Brood.Open.IsZero() {
		return 0
	}
	left := a.day(n.Brood.Open.Instant)
	young := a.days(practice.OwnCellsOnLarvaeUnder) + calendar.Day(a.numbers.Get(practice.WorkerHatches)/24)
	if lost := n.Queenless; !lost.IsZero() && a.day(lost.Instant) > left+young {
		return 0
	}
	if b := n.OwnCells.Broken; !b.IsZero() && a.day(b.Instant) >= left+a.days(practice.BreakDownOwnCellsFrom) {
		return 0
	}
	return left + a.days(practice.OwnQueenEmerges)
}

// lookForEggs sets the next look for the eggs of a queen who emerged on a day:
// not before she is likely to lay, and some days after a look that found none.
func (a asked) lookForEggs(p *Presumption, out calendar.Day) {
	from := out + a.days(practice.LookForEggsFrom)
	best := out + max(a.days(practice.FirstEggsNineInTenBy), a.days(practice.LookForEggsFrom))
	by := max(best, from+a.days(practice.LookAgainFrom))
	last, looked := a.lookWithoutEggs(out)
	if looked {
		p.NoEggsOn = a.start(last)
		if again := last + a.days(practice.LookAgainFrom); again > from {
			from, best, by = again, again, max(again, last+a.days(practice.LookAgainBy))
		}
	}
	if eggs := a.eggsLikely(out); eggs > from {
		p.Delayed = true
		from, best, by = eggs, max(best, eggs), max(by, eggs+a.days(practice.LookAgainFrom))
	}
	a.lookOn(p, from, best, by)
}

// eggsLikely is the day on which eggs are likely enough to be worth a look, of
// those queens who will lay at all, as the weather was and is foretold; held
// within the ages at which queens lay and mate. It is 0 where nobody told any
// weather: the calendar alone speaks then.
func (a asked) eggsLikely(out calendar.Day) calendar.Day {
	if !a.yard.told(out, max(out, a.today)+weatherAhead) {
		return 0
	}
	h := a.Held(a.nuc)
	if h.From == 0 {
		return 0
	}
	laid := a.eggsOf(h).Day(a.numbers.Get(practice.LookForEggsChance))
	return min(max(laid+1, out+a.days(practice.LookForEggsNotBefore)), out+a.days(practice.VirginLate))
}

// weatherAhead is how many days ahead any forecast makes the weather told. It is a
// convention of the reckoning, not of the trade: one told for later alone says
// hardly more than the month.
const weatherAhead = 7

// lookWithoutEggs is the last day on which a queen who emerged on a day was
// old enough to lay and a look found no eggs.
func (a asked) lookWithoutEggs(out calendar.Day) (calendar.Day, bool) {
	for i := len(a.nuc.Looks) - 1; i >= 0; i-- {
		l := a.nuc.Looks[i]
		day := a.day(l.At.Instant)
		if l.At.Before(a.nuc.Holds.Given) || day < out+a.days(practice.LookForEggsNotBefore) {
			break
		}
		if l.Eggs == book.NoEggs || l.Queen == book.VirginSeen {
			return day, true
		}
	}
	return 0, false
}
