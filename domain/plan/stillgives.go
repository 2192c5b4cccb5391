package plan

import (
	"math"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// StillGives are the chances of how many queens those cells of a grafted batch that are not
// given yet make ready by a day, or laying by then. What is counted of it is taken as it is, the rest goes by
// the keeper's rates; none once the last day to give them is past.
func (p *Planner) StillGives(b *book.Batch, by calendar.Day, laying bool) Chances {
	return p.unlearnt(b, 0, by, laying)
}

// unlearnt is [Planner.StillGives] with some that are given already and that nobody has looked
// at since: the luck of a batch is shared by all of whom nothing is known, so that giving
// its cells makes nothing surer. Only cells that nobody counted have one apart.
func (p *Planner) unlearnt(b *book.Batch, given int, by calendar.Day, laying bool) Chances {
	w := p.Waiting(b)
	was, _ := p.view.BatchPlan(b.Batch)
	cells := b.Unplaced()
	if w.Nucs == 0 {
		cells = 0
	}
	nucs := cells
	if was.Nucs > 0 {
		nucs = min(cells, max(0, was.Nucs-len(b.Given)))
	}
	ripe := []Link{GraftWorks, Taken, RipeOfTaken}
	counted := !b.Uncounted() && (b.Capped.Counted() || b.Ripe.Counted())
	late := 1 - w.Laid.InTime(by, laying)
	r := p.rates()
	r.Laying, r.Virgins = laying, was.Virgins
	switch {
	case cells+given == 0:
		return Chances{}
	case cells == 0 || counted:
		return r.through(ripe...).Queens(Graft{Larvae: cells + given, Nucs: nucs + given, Late: late})
	case given > 0:
		return p.unlearnt(b, 0, by, laying).With(r.through(ripe...).Queens(Graft{Larvae: given, Nucs: given, Late: late}))
	case b.Uncounted():
		ripe = nil
	default:
		ripe = ripe[:2]
	}
	return r.through(ripe...).Queens(Graft{Larvae: cells, Nucs: nucs, Late: late})
}

// through are the rates of what has come through some links.
func (r Rates) through(links ...Link) Rates {
	for _, l := range links {
		r.Link[l] = Rate{Default: 1, Weight: math.Inf(1)}
	}
	return r
}

// With are the chances of these queens and of others together.
func (c Chances) With(o Chances) Chances {
	if len(c.of) == 0 {
		return o
	}
	of := make([]float64, c.Most()+o.Most()+1)
	for n, p := range c.of {
		for m := range o.Most() + 1 {
			of[n+m] += p * o.Exactly(m)
		}
	}
	return Chances{of}
}
