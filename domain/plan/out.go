package plan

import (
	"math"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Windows are the days of a grafted batch in a zone, by its own clock; its cells are best in nucs on
// a day on which somebody has the time for it. They hold for a batch whose graft is in the
// book.
func (p *Planner) Windows(b *book.Batch, zone *time.Location) []bee.Window {
	z := zoned{zone}
	graft, all := b.At.Day(zone), p.course.Clock(b.Batch).Windows(zone)
	in, give := &all[bee.CellsIn-1], p.giving(b, z)
	in.Best = give.Best.Sub(graft)
	in.From = min(in.From, in.Best)
	in.By = max(in.By, in.Best)
	return all
}

// giving is the rung on which the cells of a grafted batch are given, by its own clock.
func (p *Planner) giving(b *book.Batch, z zoned) Rung {
	clock, graft := p.course.Clock(b.Batch), b.At.Day(z.zone)
	in := clock.Windows(z.zone)[bee.CellsIn-1]
	give := Rung{Step: GiveCells, From: graft + calendar.Day(in.From), Best: graft + calendar.Day(in.Best), Hard: clock.Hard()}
	give.By = z.day(give.Hard)
	give.Best = p.whenFree(give, z, float64(p.reared().RipeOf(b))*p.numbers.Get(practice.MinutesGiveCell))
	return give
}

// CellsTaken tells whether the cells of a grafted batch are taken as given as planned, since a day
// ahead is looked at: see [Planner.Taken]. Once a virgin was seen among them they are not.
func (p *Planner) CellsTaken(b *book.Batch) bool {
	if p.view.From() == p.view.Today() || b.Unplaced() == 0 || !b.Walking.IsZero() {
		return false
	}
	return p.Taken(p.giving(b, p.zonedOf(b)))
}

// zonedOf is where the cells of a grafted batch go.
func (p *Planner) zonedOf(b *book.Batch) zoned {
	was, _ := p.view.BatchPlan(b.Batch)
	return zoned{p.course.Zone(p.yardOf(b, was))}
}

// BestOut is the instant by which the cells of a grafted batch are best out: that of its
// clock for their best day, or the free hour that is nearest to it.
func (p *Planner) BestOut(b *book.Batch, zone *time.Location) time.Time {
	z, clock := zoned{zone}, p.course.Clock(b.Batch)
	day := b.At.Day(zone) + calendar.Day(p.Windows(b, zone)[bee.CellsIn-1].Best)
	best := p.freeNear(clock.BestOn(day, zone), day, z)
	if hard := clock.Hard(); best.After(hard) {
		return hard
	}
	return best
}

// freeNear is the instant of a day at which somebody is free that is nearest to another
// of it; that one itself where nobody is.
func (p *Planner) freeNear(at time.Time, day calendar.Day, z zoned) (near time.Time) {
	near = at
	apart := time.Duration(math.MaxInt64)
	for who := range p.view.People() {
		hours := who.FreeOn(day)
		if hours.Minutes() == 0 {
			continue
		}
		from, until := hours.Between(day, z.zone)
		when := at
		switch {
		case at.Before(from):
			when = from
		case at.After(until):
			when = until
		}
		if off := when.Sub(at).Abs(); off < apart {
			near, apart = when, off
		}
	}
	return near
}
