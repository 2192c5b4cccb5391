package course

import (
	"sync"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
)

// Course answers for the nucs of one view. It remembers the clocks of the
// batches; ask one Course when asking about many nucs. It may be used from
// several goroutines.
type Course struct {
	view   *book.View
	mu     sync.Mutex
	clocks map[book.BatchID]timed
}

// timed is a batch's clock and its middle hour, which takes some work to find.
type timed struct {
	clock  bee.Clock
	middle time.Time
}

// New is the course of a view.
func New(v *book.View) *Course {
	return &Course{view: v, clocks: map[book.BatchID]timed{}}
}

// ByCalendar tells what one nuc holds at the view's instant by the clock
// alone: for a day ahead what is to be expected if nothing is done, for a day
// past what was recorded by then.
func ByCalendar(v *book.View, n *book.Nuc) Presumption { return New(v).Of(n) }

// View is the view the course answers for.
func (c *Course) View() *book.View { return c.view }

// Clock is the clock of a batch's cells, as far as the view knows it: see
// [book.Batch.Clock].
func (c *Course) Clock(id book.BatchID) bee.Clock { return c.timed(id).clock }

// Emerges is the middle hour of a batch: half of its cells are out by then.
// It is zero for a batch whose graft is not in the book.
func (c *Course) Emerges(id book.BatchID) time.Time { return c.timed(id).middle }

func (c *Course) timed(id book.BatchID) timed {
	c.mu.Lock()
	defer c.mu.Unlock()
	t, ok := c.clocks[id]
	if !ok {
		t = c.reckon(id)
		c.clocks[id] = t
	}
	return t
}

func (c *Course) reckon(id book.BatchID) timed {
	if id.IsZero() {
		return timed{}
	}
	b := c.view.Batch(id)
	if b.At.IsZero() {
		return timed{}
	}
	clock := b.Clock(c.view.Numbers())
	return timed{clock, clock.Middle()}
}
