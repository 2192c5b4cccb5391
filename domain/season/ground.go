package season

import (
	"math"
	"slices"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/plan"
	"lidmark/domain/practice"
)

// A span is so much of a good that is taken from one day to another, both included.
type span struct {
	good     int // see [ground]
	from, to calendar.Day
	amount   int32
}

// ground is what batches share, and what is left of each good by day: the nucs of
// each yard, then starters, finishers, places in the incubator, the grafts and the tenths of minutes of a day,
// then what lives: bees and brood for nucs, and of each circle of yards virgins that its
// drones can serve.
type ground struct {
	planner *plan.Planner
	numbers practice.Numbers
	yards   []book.YardID
	circles []circle
	first   calendar.Day
	left    [][]int32 // by good and day
	ladders map[ladderKey]plan.Ladder
}

// ladderKey is a graft of so many larvae; those of none larvae stand for all sizes.
type ladderKey struct {
	yard   book.YardID
	day    calendar.Day
	larvae int
}

// The goods after the nucs of each yard.
const (
	starters = iota
	finishers
	incubator // places
	grafts
	minutes
	bees  // grams that colonies give within a week
	brood // thousandths of combs

	goodsBesides
)

// plenty is of what nobody told how much there is.
const plenty = math.MaxInt32 / 2

// reach is how many days before its graft a batch can take something up, and how
// many after it, at most.
const (
	reachBefore = 90
	reachAfter  = 130
)

// newGround is the ground of some days on which nothing is planned yet.
func newGround(p *plan.Planner, yards []book.YardID, from, until calendar.Day) *ground {
	g := &ground{planner: p, numbers: p.View().Numbers(), yards: yards, circles: circlesOf(p), first: from - reachBefore, ladders: map[ladderKey]plan.Ladder{}}
	days := until.Sub(g.first) + reachAfter
	for range len(yards) + goodsBesides + len(g.circles) {
		g.left = append(g.left, make([]int32, max(0, days)))
	}
	for i, y := range yards {
		g.fill(i, 0)
		for _, free := range p.FreeFrom(y) {
			g.add(span{i, max(free, g.first), g.last(), -1})
		}
	}
	g.fill(g.besides(starters), g.colonies(book.Starter))
	g.fill(g.besides(finishers), g.colonies(book.Finisher))
	g.fill(g.besides(incubator), plenty)
	if places := g.numbers.Get(practice.IncubatorPlaces); places > 0 {
		g.fill(g.besides(incubator), int32(places))
	}
	for _, good := range []int{grafts, minutes, bees, brood} {
		g.fill(g.besides(good), plenty)
	}
	for i := range g.circles {
		g.fill(g.virgins(i), plenty)
	}
	return g
}

func (g *ground) besides(good int) int { return len(g.yards) + good }

// virgins is the good of those who fly on a day to the drones of a circle.
func (g *ground) virgins(circle int) int { return g.besides(goodsBesides) + circle }

func (g *ground) last() calendar.Day { return g.first + calendar.Day(len(g.left[0])) - 1 }

func (g *ground) fill(good int, amount int32) {
	for d := range g.left[good] {
		g.left[good][d] = amount
	}
}

// colonies are those of a role, cell builders among them; plenty where the book has
// none.
func (g *ground) colonies(r book.Role) (n int32) {
	for c := range g.planner.View().Colonies() {
		if c.Is(r) || c.Is(book.CellBuilder) {
			n++
		}
	}
	if n == 0 {
		return plenty
	}
	return n
}

// days are the days of a span that lie on the ground.
func (g *ground) days(s span) []int32 {
	from, to := g.within(s)
	return g.left[s.good][from:to]
}

// within are the numbers of the days of a span that lie on the ground, from the first
// to before the last; none of a span that lies wholly before the ground or after it.
func (g *ground) within(s span) (from, to int) {
	days := len(g.left[s.good])
	from, to = s.from.Sub(g.first), s.to.Sub(g.first)+1
	from = min(max(from, 0), days)
	return from, max(from, min(to, days))
}

// add takes what a span takes; one of a negative amount gives it back.
func (g *ground) add(s span) {
	days := g.days(s)
	for i := range days {
		days[i] -= s.amount
	}
}

// take takes what a way takes; where there is too little of a good, other than one
// that is no matter, it takes nothing and is false.
func (g *ground) take(o option, but int) bool {
	for i, b := range o.of {
		for j, t := range b.takes {
			if !g.addWithin(t) && t.good != but {
				g.undo(o.of[:i+1], j+1)
				return false
			}
		}
	}
	return true
}

// addWithin takes what a span takes; false where less than nothing is left on one of its
// days.
func (g *ground) addWithin(s span) bool {
	days, within := g.days(s), true
	for i := range days {
		days[i] -= s.amount
		within = within && days[i] >= 0
	}
	return within || s.amount <= 0
}

// undo gives back what some batches took, of the last so many spans.
func (g *ground) undo(all []*batched, of int) {
	for i, b := range all {
		takes := b.takes
		if i == len(all)-1 {
			takes = takes[:of]
		}
		for _, t := range takes {
			t.amount = -t.amount
			g.add(t)
		}
	}
}

// misses tells whether there is less than nothing left of a good while a way takes
// some of it.
func (g *ground) misses(o option, good int) bool {
	for _, b := range o.of {
		for _, s := range b.takes {
			if s.amount > 0 && s.good == good && slices.ContainsFunc(g.days(s), func(left int32) bool { return left < 0 }) {
				return true
			}
		}
	}
	return false
}

// none is no good, or no matter which.
const none = -1

// put takes what a way takes, or with -1 gives it back.
func (g *ground) put(o option, times int32) {
	for _, b := range o.of {
		for _, s := range b.takes {
			s.amount *= times
			g.add(s)
		}
	}
}

// yard is the number of a yard; -1 of one that is none of the ground's.
func (g *ground) yard(id book.YardID) int {
	for i, y := range g.yards {
		if y == id {
			return i
		}
	}
	return -1
}

// ladder is the ladder of a graft of so many larvae on a day, its hour being the
// usual one.
func (g *ground) ladder(yard book.YardID, day calendar.Day, larvae int) plan.Ladder {
	key := ladderKey{yard, day, larvae}
	l, ok := g.ladders[key]
	if !ok {
		if larvae == 0 {
			l = g.planner.Ladder(g.planner.GraftAt(day), 1, yard)
		} else {
			l = g.planner.Sized(g.ladder(yard, day, 0), larvae, larvae, yard)
		}
		g.ladders[key] = l
	}
	return l
}
