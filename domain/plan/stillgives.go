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
	w, r, cells := p.Waiting(b), p.rates(), b.Unplaced()
	if w.Nucs == 0 || cells == 0 {
		return Chances{}
	}
	was, _ := p.view.BatchPlan(b.Batch)
	r.Laying, r.Virgins = laying, was.Virgins
	through := []Link{GraftWorks, Taken, RipeOfTaken}
	switch {
	case b.Uncounted():
		through = nil
	case !b.Capped.Counted() && !b.Ripe.Counted():
		through = through[:2]
	}
	for _, l := range through {
		r.Link[l] = Rate{Default: 1, Weight: math.Inf(1)}
	}
	nucs := cells
	if was.Nucs > 0 {
		nucs = max(0, was.Nucs-len(b.Given))
	}
	return r.Queens(Graft{Larvae: cells, Nucs: nucs, Late: 1 - w.Laid.InTime(by, laying)})
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
