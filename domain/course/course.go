package course

import (
	"sync"
	"time"

	"lidmark/domain/bee"
	"lidmark/domain/book"
	"lidmark/domain/weather"
)

// Course answers for the nucs of one view. It remembers the clocks of the
// batches; ask one Course when asking about many nucs. It may be used from
// several goroutines.
type Course struct {
	view   *book.View
	lives  *lives
	beside *Course // whose weather holds here too, or nil
	mu     sync.Mutex
	clocks map[book.BatchID]timed
	cells  map[cellsKey]*cells
	yards  map[book.YardID]*yardDays

	laid, laidBefore map[book.YardID]*spots // by the view, and by the one before it
}

// timed is a batch's clock and its middle hour, which takes some work to find.
type timed struct {
	clock  bee.Clock
	middle time.Time
}

// New is the course of a view.
func New(v *book.View) *Course { return Again(v, nil) }

// Again is the course of a view that goes on from another's, which may be nil:
// what was reckoned there for the same numbers is not reckoned again.
func Again(v *book.View, was *Course) *Course {
	c := &Course{
		view: v, clocks: map[book.BatchID]timed{}, cells: map[cellsKey]*cells{}, yards: map[book.YardID]*yardDays{},
		laid: map[book.YardID]*spots{},
	}
	if was != nil && was.view.Numbers() == v.Numbers() {
		c.lives = was.lives
		c.goOn(was)
		return c
	}
	c.lives = newLives(NewModel(v.Numbers()))
	return c
}

// ByCalendar tells what one nuc holds at the view's instant, as [Course.Of] a new
// course: the condition by the clock, the day of its next look by the weather too.
func ByCalendar(v *book.View, n *book.Nuc) Presumption { return New(v).Of(n) }

// Beside is the course of a view of a few nucs beside another's of the whole
// book: the weather of that one's yards holds, whatever the view knows of it.
func Beside(v *book.View, whole *Course) *Course {
	c := Again(v, whole)
	c.beside = whole
	return c
}

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

// Model is the course of a queen by the day, by the keeper's numbers.
func (c *Course) Model() *Model { return c.lives.model }

// Weather is the weather of a yard.
func (c *Course) Weather(id book.YardID) *weather.Yard { return c.yardDays(id).weather }

func (c *Course) yardDays(id book.YardID) *yardDays {
	if c.beside != nil {
		return c.beside.yardDays(id)
	}
	c.mu.Lock()
	defer c.mu.Unlock()
	y := c.yards[id]
	if y == nil {
		y = newYardDays(c.view, id)
		c.yards[id] = y
	}
	return y
}
