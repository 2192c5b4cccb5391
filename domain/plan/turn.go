package plan

import (
	"fmt"
	"math"
	"strings"

	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Turn is how a nuc is worked over a season: at which age its queens are caught at
// the earliest, how long it then waits for the next cell, and how far apart the
// visits are.
type Turn struct {
	Catch int // days since she emerged, 1 or more
	Gap   int // days from the catch to the next cell; 0: at the same visit
	Drive int // days between visits; 0 and 1: any day
	First calendar.Day
	Last  calendar.Day // last day on which a queen is wanted
}

// Yield is what one nuc gives in a season, as a mean over many.
type Yield struct {
	Turn
	Cells  float64 // cells it is given
	Queens float64 // laying queens caught, good enough
	Living float64 // of these, alive 15 weeks later
	Share  float64 // alive 15 weeks after the catch, of those caught at that age
	Known  bool    // a published figure stands behind that share where nobody changed it, see [Yield.Basis]
}

// Yield is what a turn gives. A queen is caught at the first visit at which she is
// old enough and has laid; a nuc without eggs when a virgin is late is given the
// next cell after the gap like one that was caught from. The expected values are
// exact for these rules: they follow from those of the days left.
func (r Rates) Yield(t Turn, n practice.Numbers) Yield {
	y := yielding{turn: t, numbers: n, gives: r.PerCell(), visit: max(1, t.Drive)}
	days := t.Last.Sub(t.First)
	for left := 0; left <= days; left++ {
		y.by = append(y.by, y.cell(left))
	}
	all := Yield{Turn: t, Share: Lives(t.Catch, n), Known: t.Catch >= practiceKnownFrom}
	if days >= 0 {
		e := y.by[days]
		all.Cells, all.Queens, all.Living = e.cells, e.queens, e.living
	}
	return all
}

// Basis is on what that share stands, in a word: the keeper's number where he changed one of it.
func (y Yield) Basis(n practice.Numbers) string {
	for key := range n.Changed() {
		for _, l := range lived {
			if l.key == key && max(l.age-y.Catch, y.Catch-l.age) < livedApart {
				return "your number"
			}
		}
	}
	if y.Known {
		return "published"
	}
	return "common practice, none is published"
}

// livedApart is how many days lie between the ages of which there is a number.
const livedApart = 7

// practiceKnownFrom is the catching age in days from which survival was published:
// Rhodes & Denney 2003 have 28 and 35 d.
const practiceKnownFrom = 28

// expected is what a nuc is expected to give in the days that are left.
type expected struct{ cells, queens, living float64 }

type yielding struct {
	turn    Turn
	numbers practice.Numbers
	gives   float64 // the chance that a cell gives a good queen
	visit   int
	by      []expected // by the days left
}

// cell is what comes of a cell given with so many days left, and of those after it.
func (y *yielding) cell(left int) expected {
	e := expected{cells: 1}
	laid := 0.0  // of those who ever lay, caught at an earlier visit
	empty := 0.0 // seen without eggs before any was old enough to be caught
	for day := y.visit; day <= left; day += y.visit {
		age := day - y.numbers.Days(practice.GraftToEmerge) + y.numbers.Days(practice.CellsIn)
		late := age >= y.numbers.Days(practice.VirginLate)
		if age < y.turn.Catch {
			if late && empty == 0 { // those without eggs are seen now; who lays waits to be old enough
				empty = 1 - y.gives*y.laidBy(age)
				e.add(empty, y.after(left-day))
			}
			continue
		}
		lay := y.laidBy(age)
		p := y.gives * (lay - laid)
		laid = lay
		e.queens += p
		e.living += p * Lives(age, y.numbers)
		e.add(p, y.after(left-day))
		if late {
			e.add(max(0, 1-y.gives*laid-empty), y.after(left-day))
			break
		}
	}
	return e
}

// after is what is still to come from the visit of a catch with so many days left.
func (y *yielding) after(left int) expected {
	wait := (y.turn.Gap + y.visit - 1) / y.visit * y.visit
	if left < wait {
		return expected{}
	}
	return y.by[left-wait]
}

func (e *expected) add(p float64, next expected) {
	e.cells += p * next.cells
	e.queens += p * next.queens
	e.living += p * next.living
}

// laidBy is the share of those who ever lay that have laid by an age in days: normal
// about the middle of first eggs, as wide as the day has it by which nine in ten
// have laid.
func (y *yielding) laidBy(age int) float64 {
	const nineInTen = 1.2816 // standard deviations above the middle
	half, nine := y.numbers.Get(practice.FirstEggsHalfBy), y.numbers.Get(practice.FirstEggsNineInTenBy)
	sd := max(nine-half, 0.5) / nineInTen
	return math.Erfc((half-float64(age)-0.5)/sd/math.Sqrt2) / 2
}

// lived are the ages at which the survival of a caught queen is a number.
var lived = [...]struct {
	age int
	key practice.Key
}{
	{7, practice.LivesCaughtAt7},
	{14, practice.LivesCaughtAt14},
	{21, practice.LivesCaughtAt21},
	{28, practice.LivesCaughtAt28},
	{35, practice.LivesCaughtAt35},
}

// Lives is the share of queens caught at an age in days who live 15 weeks later, by
// straight lines between 7, 14, 21, 28 and 35 d and level beyond. For 7 to 21 d no
// published figure was found.
func Lives(age int, n practice.Numbers) float64 {
	for i, l := range lived {
		switch share := n.Get(l.key); {
		case age <= l.age && i == 0:
			return share
		case age <= l.age:
			was := lived[i-1]
			part := float64(age-was.age) / float64(l.age-was.age)
			return n.Get(was.key) + part*(share-n.Get(was.key))
		}
	}
	return n.Get(lived[len(lived)-1].key)
}

// Yields are the turns of a nuc by catching age, from 14 to 35 d by the week, the
// gap, the visits and the season being those of t.
func (r Rates) Yields(t Turn, n practice.Numbers) []Yield {
	var all []Yield
	for _, l := range lived[1:] {
		t.Catch = l.age
		all = append(all, r.Yield(t, n))
	}
	return all
}

// alike is by how many queens of a nuc at most turns differ that are as good as each other:
// common practice, no source.
const alike = 0.1

// BestTurns are, of some turns, those that give most queens, and those that give most who
// live 15 weeks later: the best and all that are as good within a tenth of a queen.
func BestTurns(all []Yield) (queens, living []Yield) {
	best := func(of func(Yield) float64) (near []Yield) { // by tenths, as they are told
		most := 0.0
		for _, y := range all {
			most = max(most, math.Round(of(y)/alike))
		}
		for _, y := range all {
			if math.Round(of(y)/alike) >= most-1 {
				near = append(near, y)
			}
		}
		return near
	}
	return best(func(y Yield) float64 { return y.Queens }), best(func(y Yield) float64 { return y.Living })
}

// CaughtAt are the ages of turns in words: "caught at 14 d", or of several that they are
// within a tenth of a queen of each other.
func CaughtAt(turns []Yield) string {
	var ages []string
	for _, y := range turns {
		ages = append(ages, fmt.Sprint(y.Catch))
	}
	switch last := len(ages) - 1; last {
	case -1:
		return ""
	case 0:
		return "caught at " + ages[0] + " d"
	default:
		return fmt.Sprintf("caught at %s or %s d, within %.1f of each other", strings.Join(ages[:last], ", "), ages[last], alike)
	}
}

// PerCell is the chance that a cell that is given gives a queen as a wish counts them: a good
// one, whenever she comes.
func (r Rates) PerCell() float64 {
	gives := 1.0
	for _, l := range r.after() {
		gives *= r.Link[l].Mean()
	}
	return gives
}
