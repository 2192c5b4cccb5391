package rules

import (
	"fmt"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

var clashKeys = []practice.Key{practice.CellsInFrom, practice.HardChance, practice.HardMargin}

// sameNucs: the cells of two batches are ripe together, and there are nucs
// for one of them only.
func (p *pass) sameNucs() {
	for i, b := range p.batches {
		for _, a := range p.batches[:i] {
			if a.over || b.over || !p.overlap(a, b) || b.ready == b.left || a.ready == 0 {
				continue
			}
			p.add(b.yard, p.clash(SameNucs, a, b, Finding{
				What: fmt.Sprintf("%s and %s want the same nucs", batchWord(a.Batch), batchWord(b.Batch)),
				Why:  fmt.Sprintf("%d and %d cells, %s ready", a.left, b.left, count(a.ready+b.ready, "nuc")),
				Do:   fmt.Sprintf("Make up more nucs, or give %s and cage the rest", batchWord(a.Batch)),
			}))
		}
	}
}

// overlap tells whether the cells of two batches can go into nucs on the same
// day.
func (p *pass) overlap(a, b *batchCase) bool {
	return !p.from(a).After(b.hard) && !p.from(b).After(a.hard)
}

func (p *pass) clash(r Rule, a, b *batchCase, f Finding) Finding {
	f.Rule, f.Of, f.Also = r, b.Batch.Batch.Subject(), []book.Subject{a.Batch.Batch.Subject()}
	f.From, f.By, f.Hard = p.now, a.hard, true
	f.Sure, f.Used = sureCalendar, clashKeys
	return f
}

// sameFinisher: the cells of two batches hang in one colony.
func (p *pass) sameFinisher() {
	at := map[book.ColonyID]*batchCase{}
	for _, b := range p.batches {
		if b.over || b.Left() == 0 || b.Incubate || b.Finisher.IsZero() {
			continue
		}
		a, taken := at[b.Finisher]
		if !taken {
			at[b.Finisher] = b
			continue
		}
		p.add(b.yard, p.clash(SameFinisher, a, b, Finding{
			What: fmt.Sprintf("%s and %s hang in %s", batchWord(a.Batch), batchWord(b.Batch), p.view.Colony(b.Finisher).Name),
			Why:  fmt.Sprintf("the first virgin of %s can walk after %s and would destroy the cells of both", batchWord(a.Batch), hour(p.today, a.hard, a.yard.zone)),
			Do:   fmt.Sprintf("Take out the cells of %s in time", batchWord(a.Batch)),
		}))
	}
}

// sameDay: two batches are best out on one day that has too few free minutes.
func (p *pass) sameDay() {
	for i, b := range p.batches {
		for _, a := range p.batches[:i] {
			day := b.yard.day(b.best)
			if a.over || b.over || a.yard.day(a.best) != day || day < p.today {
				continue
			}
			need := float64(a.left+b.left) * p.numbers.Get(practice.MinutesGiveCell)
			if free := p.view.MinutesFree(day); p.view.HoursTold() && float64(free) < need {
				p.add(b.yard, p.clash(SameDay, a, b, Finding{
					What: fmt.Sprintf("%s and %s both on %s", batchWord(a.Batch), batchWord(b.Batch), day.ShortFrom(p.today)),
					Why:  fmt.Sprintf("%d cells take %.0f min, %d min are free", a.left+b.left, need, free),
					Do:   "Give one batch a day earlier, or find hands",
				}))
			}
		}
	}
}

// noHands: nobody has a free hour on the day of a hard deadline before it. For
// a deadline on short notice, at six in the morning, that is the day before.
func (p *pass) noHands() {
	if !p.view.HoursTold() {
		return
	}
	for _, f := range p.found {
		if !f.Hard || f.Rule != CellsOut && f.Rule != WildCells || f.By.Before(p.now) {
			continue
		}
		y := p.yard(f.Yard)
		day := y.day(f.By.Add(-p.numbers.Duration(practice.ShortNotice)))
		if p.freeBefore(day, f.By, y.zone) {
			continue
		}
		p.add(y, Finding{
			Rule: NoHands, Of: f.Of, Since: p.now, From: f.From, Best: f.Best, By: f.By, Hard: true,
			What: fmt.Sprintf("nobody is free on %s", beforeOn(day, f.By, y)),
			Why:  f.What, Do: p.lastFree(y, day), Sure: sureRecorded, Used: []practice.Key{practice.ShortNotice},
		})
	}
}

// beforeOn is a day and the hour on it, or on the next, before which it counts.
func beforeOn(d calendar.Day, by time.Time, y *yardCase) string {
	if y.day(by) == d {
		return fmt.Sprintf("%s before %s", d.ShortFrom(y.today), by.In(y.zone).Format("15:04"))
	}
	return d.ShortFrom(y.today)
}

// freeBefore tells whether anybody has a free hour on a day before an instant.
func (p *pass) freeBefore(d calendar.Day, by time.Time, zone *time.Location) bool {
	for person := range p.view.People() {
		h := person.FreeOn(d)
		if from, until := h.Between(d, zone); h.Minutes() > 0 && from.Before(by) && until.After(p.now) {
			return true
		}
	}
	return false
}

// lastFree says when somebody is free before a day.
func (p *pass) lastFree(y *yardCase, day calendar.Day) string {
	for d := day - 1; d >= y.today; d-- {
		if p.view.MinutesFree(d) > 0 {
			return fmt.Sprintf("Do it by %s, the last day somebody is free", d.ShortFrom(p.today))
		}
	}
	return "Find somebody: nobody is free before it"
}
