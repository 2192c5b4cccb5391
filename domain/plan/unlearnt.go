package plan

import (
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
)

// Unlearnt are the chances of how many queens are ready by a day, or laying by then, of those
// of a batch of whom nobody knows more than the keeper's rates: so many that were given and not
// looked at since, and with cells also those that are still to be given. All of them share
// the luck of their batch, so giving cells makes nothing surer. The zero day is ever.
func (p *Planner) Unlearnt(l Left, given int, cells bool, by calendar.Day, laying bool) Chances {
	if given == 0 && (!cells || l.Cells == 0) {
		return Chances{}
	}
	key := unlearntKey{l.Batch.Batch, l.Cells, l.Nucs, given, cells, by, laying}
	p.mu.Lock()
	c, known := p.unlearnt[key]
	p.mu.Unlock()
	if known {
		return c
	}
	if by == 0 {
		c = p.everOf(l, given, cells, laying)
	} else {
		in := p.laidOf(l.Batch.At.Instant, l.yard).InTime(by, laying)
		c = p.Unlearnt(l, given, cells, 0, laying).inTime(in)
	}
	p.mu.Lock()
	p.unlearnt[key] = c
	p.mu.Unlock()
	return c
}

// unlearntKey is all on which [Planner.Unlearnt] stands, besides the view.
type unlearntKey struct {
	batch  book.BatchID
	left   int // cells
	nucs   int // for them
	given  int
	cells  bool
	by     calendar.Day
	laying bool
}

// everOf is [Planner.Unlearnt] of those who are ready or lay ever.
func (p *Planner) everOf(l Left, given int, cells, laying bool) Chances {
	r, placed := p.rates(), []float64{1}
	r.Laying, r.Virgins = laying, l.Plan.Virgins
	if cells {
		w := p.Grafted(l.Batch)
		placed = Chances{r.toPlace(l)}.inTime(1 - p.lostLate(w.Ladder, w.Size)).of
	}
	c := chain{rates: r, all: []Stage{{Placed, 1, Chances{append(make([]float64, given), placed...)}}}}
	c.links(r.after())
	return Chances{c.last()}
}

// AsPlanned is the chance that a grafted batch gives so many queens by a day as it was when it was
// planned: by the keeper's rates without what the batch itself tells. The hour on its day at which
// it was grafted is as planned.
func (p *Planner) AsPlanned(l Left, queens int, by calendar.Day) float64 {
	p.mu.Lock()
	r, known := p.without[l.Batch.Batch]
	p.mu.Unlock()
	if !known {
		r = ratesOf(p.view, func(c *counting, b *book.Batch) {
			if b.Batch != l.Batch.Batch {
				c.reared(b)
				c.given(b)
			}
		})
		p.mu.Lock()
		p.without[l.Batch.Batch] = r
		p.mu.Unlock()
	}
	r.Virgins = l.Plan.Virgins
	of := l.Plan
	if at := l.Batch.At.Instant.In(p.view.Zone()); calendar.DayOf(at, p.view.Zone()) == of.Day {
		of.Minute = at.Hour()*60 + at.Minute()
	}
	g := p.GraftFor(of, by, false)
	g.Nucs = of.Nucs
	return r.Queens(g).AtLeast(queens)
}

// toPlace are the chances of how many cells of a batch will still be placed. What is counted is
// taken as it is, the rest goes by the rates: of the ripe ones that there will be in all, at
// least as many as are used already, so many more.
func (r Rates) toPlace(l Left) []float64 {
	b := l.Batch
	if l.Cells == 0 || b.Capped.Counted() || b.Ripe.Counted() {
		n := min(l.Cells, l.Nucs)
		return append(make([]float64, n), 1)
	}
	ripe := append(make([]float64, b.Cells()), 1)
	c := chain{rates: r, all: []Stage{{Grafted, 1, Chances{ripe}}}}
	links := r.before()
	if b.Taken.Counted() {
		links = links[1:]
	} else {
		c.works()
	}
	c.links(links)
	return placed(more(c.last(), b.Cells()-l.Cells), l.Nucs)
}

// more are the chances of how many there are beyond some that there are for sure.
func more(of []float64, there int) []float64 {
	if there == 0 {
		return of
	}
	of, sum := slices.Clone(of[there:]), 0.0
	for _, p := range of {
		sum += p
	}
	if sum == 0 {
		return []float64{1}
	}
	for n := range of {
		of[n] /= sum
	}
	return of
}

// With are the chances of these queens and of others together.
func (c Chances) With(o Chances) Chances {
	if len(c.of) == 0 {
		return o
	}
	if len(o.of) == 0 {
		return c
	}
	return Chances{convolved(c.of, o.of)}
}
