package plan

import (
	"fmt"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Mind is something to be minded of a graft, and what to do about it; Do may be empty.
type Mind struct {
	Why, Do string
	By      practice.Key // the number by which it is so, where that may be another with this keeper's bees; 0: none
	Season  bool         // it is about the season, not about what nobody told
}

// Used are the numbers by which it is so, as far as they may be others with this keeper's bees.
func (m Mind) Used() []practice.Key {
	if m.By == 0 {
		return nil
	}
	return []practice.Key{m.By}
}

// without is a mind of a graft with what its queens want of drones.
func (m Mind) without(p *Planner, yard book.YardID, graft calendar.Day) Mind {
	if says, by := p.droneless(yard, graft); by != 0 {
		m.Why, m.By = m.Why+"; "+says, by
	}
	return m
}

// keptLong is from how many days on, between the day by which queens are there and the
// day for which they are wished, it is told that nobody reckons what is lost meanwhile.
// Common practice, no source.
const keptLong = 30

// Minds are what is to be minded of an answer: why it grafts so early, or not before
// spring, weather that nobody told, and the season.
func (p *Planner) Minds(a Answer) (all []Mind) {
	first := a.Batches[0]
	if a.Full.Day != 0 {
		all = append(all, p.full(a))
	}
	if m, ok := p.lessPlanned(a); ok {
		all = append(all, m)
	}
	switch {
	case !a.InTime && a.Graft > a.From && p.lets(a.Yard, a.From) < makesSense:
		all = append(all, Mind{
			Why: fmt.Sprintf("no graft from %s on makes sense before %s: the yard's weather lets fewer than half of the queens lay who would in fair weather", p.said(a.From), p.said(first.Day)),
			Do:  "Take queens of an earlier graft, or another day", Season: true,
		}.without(p, a.Yard, a.From))
	case a.InTime && a.Passed != 0:
		all = append(all, Mind{
			Why:    fmt.Sprintf("grafted so early for the weather: %s is the latest day in time, and of its queens who would lay in fair weather %s do", p.said(a.Passed), OfHundred(p.lets(a.Yard, a.Passed))),
			Season: true,
		}.without(p, a.Yard, a.Passed))
	}
	for _, b := range a.Batches {
		for _, m := range p.MindsOf(b.Ladder, a.Yard) {
			if !slices.Contains(all, m) {
				all = append(all, m)
			}
		}
	}
	if there := p.inTimeFor(a.Batches[len(a.Batches)-1].Ladder, a.Laying); a.InTime && a.By.Sub(there) >= keptLong {
		all = append(all, Mind{
			Why: fmt.Sprintf("%s are there by %s: what is lost of them until %s is not reckoned", OfHundred(p.numbers.Get(practice.PlanInTime)), p.said(there), p.said(a.By)),
			Do:  p.kept(a, there), Season: true,
		})
	}
	if e := a.Instead; !e.Yard.IsZero() {
		all = append(all, Mind{Why: fmt.Sprintf("in %s and not in %s, where most nucs stand: there it is %s", p.view.Yard(a.Yard).Name, p.view.Yard(e.Yard).Name, OfHundred(e.Chance)), Season: true})
	}
	return all
}

// kept says how long the queens of an answer keep who are there by a day.
func (p *Planner) kept(a Answer, there calendar.Day) string {
	full, banked := a.Batches[0].Laid.Day(middle)+p.days(practice.FullBy), there+p.days(practice.MatedBankMost)
	says := fmt.Sprintf("Small nucs are full by about %s, and a bank keeps mated queens until about %s", p.said(full), p.said(banked))
	switch {
	case a.By <= banked:
		return says
	case a.Passed != 0: // no later graft makes sense
		return says + ": nothing of this keeps them so long. Give their nucs room"
	default:
		return says + ": nothing of this keeps them so long. Graft later, or give their nucs room"
	}
}

// MindsOf are what is to be minded of one graft: that its yard is on standstill, that it comes
// when the weather lets too few of its queens lay, and weather that nobody told.
func (p *Planner) MindsOf(l Ladder, yard book.YardID) (all []Mind) {
	if m, ok := p.Still(yard); ok {
		all = append(all, m)
	}
	if m, ok := p.OutOfSeason(yard, l.Day); ok {
		all = append(all, m)
	}
	if m, ok := p.Flown(l, yard).untold(); ok {
		all = append(all, m)
	}
	return all
}

// Still is what is to be minded of queens who are to mate in a yard on standstill: they may not
// leave it. What they are reckoned as takes it to end in time, as nobody knows when it does.
func (p *Planner) Still(yard book.YardID) (m Mind, ok bool) {
	if yard.IsZero() {
		return m, false
	}
	y := p.view.Yard(yard)
	if y.Standstill == nil {
		return m, false
	}
	return Mind{
		Why: fmt.Sprintf("%s is on standstill, %s suspected since %s: until that ends no queen may leave it and its colonies give nothing; reckoned as if it ended in time",
			y.Name, y.Standstill.What, p.said(y.Standstill.Since.Day(p.view.Zone()))),
		Do: "Set the nucs in another yard, or ring whoever waits for its queens", Season: true,
	}, true
}

// OutOfSeason is what is to be minded of a graft on a day, where the yard's weather lets
// fewer than half lay of those who would in fair weather.
func (p *Planner) OutOfSeason(yard book.YardID, graft calendar.Day) (m Mind, ok bool) {
	share := p.lets(yard, graft)
	if share >= makesSense {
		return m, false
	}
	m.Season = true
	m.Why = fmt.Sprintf("grafted on %s %s of the queens lay who would in fair weather", p.said(graft), OfHundred(share))
	if last, ok := p.LastOf(yard, graft); ok && last < graft {
		m.Why += "; the last graft that makes sense is on " + p.said(last)
	}
	m = m.without(p, yard, graft)
	if next := p.Soonest(yard, graft); next > graft {
		m.Do = "Graft from " + p.said(next) + " on"
	}
	return m, true
}

// LastOf is [Planner.LastGraft] of the season in which a graft is, or of the one before.
func (p *Planner) LastOf(yard book.YardID, graft calendar.Day) (last calendar.Day, ok bool) {
	if p.lets(yard, graft) >= makesSense {
		return p.LastGraft(yard, graft)
	}
	return p.LastGraft(yard, min(graft, p.view.Today()+1))
}

// said is a day for a reader, with its year where that is not the one of today.
func (p *Planner) said(d calendar.Day) string { return d.ShortFrom(p.view.Today()) }
