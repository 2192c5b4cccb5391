package course

import (
	"sync"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// cells is the clock of one cell of a batch given at some time, by what was
// seen of the batch until then: what is seen of those that stayed together says
// nothing sure of her who left.
type cells struct {
	clock bee.Clock
	mu    sync.Mutex
	out   map[int64]float64
	from  map[taken]*emergence
}

// taken is when a cell was given, and at the start of which row it is taken in.
type taken struct {
	at   int64
	row  calendar.Day
	zone *time.Location
}

// emergence is when a cell emerges. Equal ones are one, and have a number.
type emergence struct {
	Emerging
	number int64
}

type cellsKey struct {
	batch      book.BatchID
	signs, log int
}

// cellsOf are the cells of a batch that were given at an instant.
func (c *Course) cellsOf(id book.BatchID, at time.Time) *cells {
	if c.beside != nil {
		return c.beside.cellsOf(id, at)
	}
	b := c.view.Batch(id)
	key := cellsKey{batch: id}
	for key.signs < len(b.Signs) && !b.Signs[key.signs].At.After(at) {
		key.signs++
	}
	for key.log < len(b.Log) && !b.Log[key.log].At.After(at) {
		key.log++
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	known := c.cells[key]
	if known == nil {
		one := b.Bee(1)
		one.Seen, one.Log = b.Signs[:key.signs], b.Log[:key.log]
		known = &cells{clock: one.Clock(c.view.Numbers()), out: map[int64]float64{}, from: map[taken]*emergence{}}
		c.cells[key] = known
	}
	return known
}

// shareOut is the chance that a cell has emerged by an instant.
func (of *cells) shareOut(t time.Time) float64 {
	share, ok := of.out[t.Unix()]
	if !ok {
		share = of.clock.Out(t)
		of.out[t.Unix()] = share
	}
	return share
}

// emerging is when a cell emerges that was given at an event, by its batch's
// clock; a ripe cell of no batch two days on, give or take one.
func (r *reading) emerging(id book.BatchID, at event) *emergence {
	if id.IsZero() || r.view.Batch(id).At.IsZero() {
		ripe := r.days(practice.GraftToEmerge) - r.days(practice.CellsIn)
		var e Emerging
		e.near(int(r.day(at.at.Instant)+ripe-at.row), r.numbers.Get(practice.RipeCellOnDay))
		return r.lives.emergence(e)
	}
	of, key := r.cellsOf(id, at.at.Instant), taken{at.at.Instant.Unix(), at.row, r.zone}
	of.mu.Lock()
	defer of.mu.Unlock()
	known := of.from[key]
	if known == nil {
		known = r.lives.emergence(r.emergingOf(of, at))
		of.from[key] = known
	}
	return known
}

func (r *reading) emergingOf(of *cells, at event) (e Emerging) {
	left := 1 - of.shareOut(at.at.Instant)
	if left < hardlyAny {
		return EmergingIn(0)
	}
	before := 1 - left
	for i := range e {
		by := of.shareOut(r.start(at.row + calendar.Day(i) + 1))
		e[i], before = max(by-before, 0)/left, max(by, before)
	}
	e[cellDays-1] += (1 - before) / left
	return e
}

// near is a day with a share, and the days before and after it with the rest.
func (e *Emerging) near(day int, on float64) {
	beside := (1 - on) / 2
	for by, share := range [...]float64{beside, on, beside} {
		e[min(max(day+by-1, 0), cellDays-1)] += share
	}
}
