package plan

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Planned is a planned batch with all that follows from it.
type Planned struct {
	book.BatchPlan
	Ladder   Ladder
	Size     Size
	Needs    []Need
	Given    []Given // who gives the bees of its starters, and the bees and brood of its nucs
	Minutes  []Minutes
	ByPerson []DayParts // those minutes by day; none where nobody's hours are known
	Stages   []Stage    // how many are left after each link
	Chances  Chances    // of how many queens there are by its day, or the sooner one on which its orders leave; of how many ever, where it has none
	Wished   Wished     // how sure its queens are with those of the other grafts of its wish; zero where none are wished by a day
	Assumes  []string   // goods of which less is there than is needed, and on which its chances count: see [Assumed]; nucs are not among them where the book knows any, see [Planner.Dealt]
	NotMade  bool       // it has lapsed, see [book.View.NotGrafted]: nothing is reckoned of it but its ladder
}

// Planned reckons a planned batch with the keeper's numbers and rates as they stand.
func (p *Planner) Planned(b book.BatchPlan) Planned {
	d := Planned{BatchPlan: b, Ladder: p.LadderOf(b), Size: p.SizeOf(b), NotMade: p.notMade(b)}
	if d.NotMade {
		return d
	}
	d.Needs, d.Minutes = p.Needs(d.Ladder, d.Size), p.Minutes(d.Ladder, d.Size)
	d.Assumes = Assumed(slices.DeleteFunc(slices.Clone(d.Needs), func(n Need) bool { return n.Good == Nucs && p.toldNucs(b.Yard) }))
	d.ByPerson = p.ByPerson(d.Minutes)
	d.Given = p.Given(Wanting{d.Ladder, d.Size})[0]
	by, _ := p.leavesBy(b)
	d.Stages = p.ratesFor(b).Along(p.GraftFor(b, by, b.Laying))
	d.Chances = d.Stages[len(d.Stages)-1].Chances
	d.Wished, _ = p.Wished(b)
	return d
}

// notMade tells whether a batch stands in the book as it is told, planned, and has lapsed.
func (p *Planner) notMade(b book.BatchPlan) bool {
	stands, ok := p.view.BatchPlan(b.Batch)
	return ok && stands.Day == b.Day && p.view.NotGrafted(b)
}

// GraftFor is the graft of a planned batch for queens who are ready by a day, or lay by
// then; ever, for the zero day. It has the nucs that it is dealt, see [Planner.Dealt], and where nobody is
// free to give its cells it loses what giving them late costs.
func (p *Planner) GraftFor(b book.BatchPlan, by calendar.Day, laying bool) Graft {
	g := Graft{Larvae: b.Larvae, Nucs: p.Dealt(b)}
	if !by.IsZero() {
		g.Late = 1 - p.LadderOf(b).Laid.InTime(by, laying)
	}
	g.Late = 1 - (1-g.Late)*(1-p.lostLate(p.LadderOf(b), p.SizeOf(b)))
	return g
}

// ratesFor are the keeper's rates for what a planned batch gives, and what is counted of it.
func (p *Planner) ratesFor(b book.BatchPlan) Rates {
	r := p.rates()
	r.Laying, r.Virgins = b.Laying, b.Virgins
	return r
}

// Sureness is the chance of the queens that are wished of it by its day, with the other grafts
// of its wish; of one queen, where none are told; none of one that was not made.
func (d Planned) Sureness() float64 {
	if d.NotMade {
		return 0
	}
	if d.Wished.All > 0 {
		return d.Wished.Chance
	}
	return d.Chances.AtLeast(max(1, d.Queens))
}
