package bee

import (
	"math"
	"slices"
	"time"

	"lidmark/domain/practice"
)

// leastExplained is the chance, given all that was seen before, below which a
// sign is not believed: one batch in a million.
const leastExplained = 1e-6

// Clock tells when the cells of one batch emerge.
//
// Each cell is normal about the hour its caste's timetable gives, with a
// spread of its own; a share of the larvae was older than thought and walks
// earlier; and the whole batch shares a shift, normal about zero, for the
// hour of the graft, the breeder's comb and the incubator. The chances of a
// batch are integrated over that shift.
//
// What was seen weighs the shift by the chance of seeing it. SeenCapped and
// SeenOpen count as one typical cell seen past, or short of, its capping;
// TipBare puts that cell's emergence a day on, with a spread. NoneOut and
// OneOut also hold for each cell left: none of them has walked by then. This
// weighing is exact within the model, where cutting off one normal curve for
// the whole would not be: after "none out" the first may still come at once.
// A sign that those before it make all but impossible is left out, and shows
// in [Clock.Doubted].
type Clock struct {
	graft   time.Time
	cells   int
	numbers practice.Numbers
	law     cellLaw
	nodes   []node  // the shift; weighed so that allIn(after) is 1
	after   float64 // hour by which none of the cells was out
	doubted bool
	held    time.Time // the hard hour that has passed; zero: none has
}

// Clock gives the batch's clock with the numbers n.
func (b Batch) Clock(n practice.Numbers) Clock {
	c := Clock{
		graft:   b.Graft,
		cells:   max(b.Cells, 1),
		numbers: n,
		law: cellLaw{
			mean:      b.emergence(n),
			spread:    n.Get(practice.EmergenceSpread),
			overShare: n.Get(practice.OverAgedShare),
			older:     n.Get(practice.OverAgedBy),
		},
	}
	c.nodes = shifts(n.Get(practice.SharedShiftSpread), c.law.spread)
	c.after = math.Inf(-1)
	c.weigh()
	for _, e := range b.Seen {
		c.believe(e, b)
	}
	return c
}

// believe weighs the shared shift by one sign, or doubts it.
func (c *Clock) believe(e Evidence, b Batch) {
	next := *c
	next.nodes = slices.Clone(c.nodes)
	x, from := b.since(e.At), b.lookBefore(e.At)
	capped := c.numbers.Get(practice.QueenCapped) - b.eggAge(c.numbers)
	for i, nd := range next.nodes {
		next.nodes[i].weight *= c.law.likelihood(e.Sign, x-nd.shift, from-nd.shift, capped, c.numbers)
	}
	if e.Sign == NoneOut || e.Sign == OneOut {
		next.after = max(next.after, x)
	}
	if !(next.weigh() > leastExplained) {
		c.doubted = true
		return
	}
	*c = next
}

// weigh scales the weights so that the chance of none out by hour after is 1,
// and gives what it was.
func (c *Clock) weigh() float64 {
	none := c.allIn(c.after)
	for i := range c.nodes {
		c.nodes[i].weight /= none
	}
	return none
}

// allIn is the chance, under the weights of the nodes, that no cell is out by
// hour x.
func (c Clock) allIn(x float64) float64 {
	var sum float64
	for _, nd := range c.nodes {
		sum += nd.weight * power(c.law.in(x-nd.shift), c.cells)
	}
	return sum
}

// Graft is the instant the clock runs from.
func (c Clock) Graft() time.Time { return c.graft }

// Cells is how many cells the clock counts.
func (c Clock) Cells() int { return c.cells }

// Doubted says that something was seen which this batch's clock does not
// explain, and which it leaves out: the graft, the log or the look is wrong.
func (c Clock) Doubted() bool { return c.doubted }

// FirstBy gives the chance that a virgin has walked by t.
func (c Clock) FirstBy(t time.Time) float64 { return c.firstBy(c.hour(t)) }

func (c Clock) firstBy(x float64) float64 {
	if x <= c.after {
		return 0
	}
	return min(max(1-c.allIn(x), 0), 1)
}

// FirstOut gives the instant by which a virgin has walked with chance p, to
// the second. A p outside 10⁻⁶ to 1 − 10⁻⁶ counts as the nearer of the two.
func (c Clock) FirstOut(p float64) time.Time { return c.instant(c.solve(c.firstBy, p)) }

// Even gives the instant by which a virgin has walked with an even chance: it is
// told alike wherever the batch is told of.
func (c Clock) Even() time.Time { return c.FirstOut(0.5) }

// Out gives how many of the cells are expected to have emerged by t, were
// each kept apart.
func (c Clock) Out(t time.Time) float64 { return float64(c.cells) * c.shareOut(c.hour(t)) }

func (c Clock) shareOut(x float64) float64 {
	if x <= c.after {
		return 0
	}
	var in float64
	for _, nd := range c.nodes {
		in += nd.weight * c.law.in(x-nd.shift) * power(c.law.in(c.after-nd.shift), c.cells-1)
	}
	return min(max(1-in, 0), 1)
}

// Middle gives the instant by which half of the cells are expected out.
func (c Clock) Middle() time.Time { return c.instant(c.solve(c.shareOut, 0.5)) }

// Hard gives the last instant at which the cells may still be together: a
// margin before the hour at which the chance of a walking virgin becomes too
// much. One that is held stays.
func (c Clock) Hard() time.Time {
	if !c.held.IsZero() {
		return c.held
	}
	first := c.FirstOut(c.numbers.Get(practice.HardChance))
	return first.Add(-c.numbers.Duration(practice.HardMargin))
}

// Held gives the clock with a hard hour that has passed and stays, whatever is
// learned later.
func (c Clock) Held(hard time.Time) Clock {
	c.held = hard
	return c
}

// Best gives the instant by which the cells are best out, ahead of the hard
// one.
func (c Clock) Best() time.Time {
	return c.Hard().Add(-c.numbers.Duration(practice.BestAheadOfHard))
}

// hour is the time from the graft to t in hours.
func (c Clock) hour(t time.Time) float64 { return t.Sub(c.graft).Hours() }

// instant is hour x from the graft, to the second.
func (c Clock) instant(x float64) time.Time {
	return c.graft.Add(time.Duration(math.Round(x*time.Hour.Seconds())) * time.Second)
}
