package plan

import (
	"fmt"
	"math"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// CellsLate is what it costs to give the ripe cells of a batch on the first day after their best
// one on which somebody is free.
type CellsLate struct {
	At     time.Time // when they are given then: as [Planner.GraftAt] has the hour of a day
	Days   int       // after the best day
	Cells  int       // ripe ones
	Lost   float64   // of them, destroyed by At if they stay together so long
	Hard   time.Time // the instant by which they are caged, if they may not be together until At: the last before the hard hour at which somebody is free; zero: nobody cages them
	Queens float64   // laying queens fewer: of those that nucs are given, lost or out by At

	today calendar.Day
}

// CellsLate is that of a batch of a wish, by the keeper's own rates: what a day's work that
// waits costs is reckoned by the same.
func (p *Planner) CellsLate(b Batch) CellsLate {
	best := b.Rung(GiveCells).Best
	again := p.freeAfter(best)
	l := CellsLate{At: p.GraftAt(again), Days: again.Sub(best), today: p.view.Today(), Cells: int(math.Round(b.Size.Cells))}
	own, clock := p.Own(), bee.Batch{Graft: b.Ladder.Graft, Cells: l.Cells}.Clock(p.numbers)
	l.Lost = clock.Loose().Lost(l.At)
	given := func(cells float64) float64 { return min(cells, float64(b.Size.Nucs)) } // more than there are nucs is spare
	cells := float64(l.Cells)
	nucs := given(cells) / max(1, cells)
	l.Queens = (given(cells) - given(cells-l.Lost)) * OfCell(own)
	switch hard := b.Rung(GiveCells).Hard; {
	case !hard.Before(l.At):
	case !p.view.HoursTold() || p.freeOn(best, hard, zoned{p.course.Zone(b.Size.Yard)}, 0): // who is there has no time for more
		l.Hard, l.Queens = p.lastFree(best, hard, zoned{p.course.Zone(b.Size.Yard)}), nucs*OfEmerged(CagedBy(clock, l.At), own)
	default:
		l.Queens += nucs * OfEmerged(LooseBy(clock, l.At), own)
	}
	return l
}

// lastFree is the last instant up to a hard hour, from a day on, at which somebody is free; the hard hour
// itself where nobody told hours.
func (p *Planner) lastFree(from calendar.Day, hard time.Time, z zoned) (last time.Time) {
	if !p.view.HoursTold() {
		return hard
	}
	for who := range p.view.People() {
		for d := from; d <= z.day(hard); d++ {
			begin, until := who.FreeOn(d).Between(d, z.zone)
			if until.After(hard) {
				until = hard
			}
			if until.After(begin) && until.After(last) {
				last = until
			}
		}
	}
	return last
}

// freeAfter is the first day after one on which somebody is free; the next day where nobody is
// within [practice.FreeHourAhead], or nobody told hours.
func (p *Planner) freeAfter(best calendar.Day) calendar.Day {
	for d := best + 1; p.view.HoursTold() && d <= best+p.days(practice.FreeHourAhead); d++ {
		if p.view.MinutesFree(d) > 0 {
			return d
		}
	}
	return best + 1
}

// Late is how late that is: "a day late", "2 days late".
func (l CellsLate) Late() string {
	if l.Days == 1 {
		return "a day late"
	}
	return fmt.Sprintf("%d days late", l.Days)
}

// Words say it in a zone: "by Thu 13 May 15:00: 0 of 24 cells lost", or that they are caged before.
func (l CellsLate) Words(zone *time.Location) string { return "by " + l.Short(zone) }

// Short is [CellsLate.Words] behind another word: "Thu 13 May 15:00, in cages from Wed 12 May 11:00 on: 7 queens
// fewer".
func (l CellsLate) Short(zone *time.Location) string {
	caged := ""
	if !l.Hard.IsZero() {
		caged = ", in cages from " + l.hour(l.Hard, zone) + " on"
	}
	return l.hour(l.At, zone) + caged + ": " + l.costs()
}

func (l CellsLate) hour(t time.Time, zone *time.Location) string {
	return calendar.DayOf(t, zone).ShortFrom(l.today) + t.In(zone).Format(" 15:04")
}

func (l CellsLate) costs() string {
	switch {
	case l.Hard.IsZero():
		return fmt.Sprintf("%.0f of %d cells lost", l.Lost, l.Cells)
	case math.Round(l.Queens) == 1:
		return "1 queen fewer"
	default:
		return fmt.Sprintf("%.0f queens fewer", l.Queens)
	}
}

// OfCell is how many laying queens a ripe cell comes to that a nuc is given, by some numbers.
func OfCell(n practice.Numbers) float64 {
	return n.Get(practice.AcceptCell) * n.Get(practice.LayingOfAccepted)
}

// Emerged is how many of the cells of a batch are virgins when nucs are given them.
type Emerged struct {
	All float64
	Old float64 // of them, out for more than a day
}

// underDay is the age up to which a virgin is taken in as one under a day old.
const underDay = 24 * time.Hour

// CagedBy are the cells of a batch that are out at an instant, each in a cage of its own.
func CagedBy(c bee.Clock, at time.Time) Emerged { return Emerged{c.Out(at), c.Out(at.Add(-underDay))} }

// LooseBy are those that are out and alive at an instant where the cells stay together: as a
// rule the first, who destroys the others.
func LooseBy(c bee.Clock, at time.Time) Emerged {
	all := c.Loose().Virgins(at)
	return Emerged{all, min(all, c.FirstBy(at.Add(-underDay)))}
}

// OfEmerged is how many laying queens fewer it comes to, by some numbers, that nucs are given
// virgins in place of the cells.
func OfEmerged(o Emerged, n practice.Numbers) float64 {
	cell := n.Get(practice.AcceptCell)
	young, old := max(0, cell-n.Get(practice.AcceptVirginUnderDay)), max(0, cell-n.Get(practice.AcceptVirginDaysOld))
	return ((o.All-o.Old)*young + o.Old*old) * n.Get(practice.LayingOfAccepted)
}
