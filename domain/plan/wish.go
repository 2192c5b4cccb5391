package plan

import (
	"cmp"
	"math"
	"slices"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
)

// Wish is what a keeper wants, or what he means to graft: so many queens of a line
// by a day, from the nucs of a yard. What is zero is found: the certainty is then
// the keeper's number, the nucs all that are free, the larvae as many as the wish
// needs, the graft the latest in time.
type Wish struct {
	Queens int
	By     calendar.Day
	Laying bool    // laying by then; else ready to hand over
	Sure   float64 // 0 to 1
	Line   string
	Yard   book.YardID
	Nucs   int
	Larvae int          // of each graft; of the first one where Then says others
	Then   Later        // larvae of the later grafts, where they are said one by one
	Graft  calendar.Day // of the first one
	Minute int          // after midnight at which each is grafted; 0: as [Planner.GraftAt] has it
	Grafts int          // how many, a number of days apart; 0 and 1: one
	Apart  int          // days; 0: a week
	From   calendar.Day // no graft before; 0: the day after the view's
	Not    book.BatchID // a planned batch that this one replaces: its nucs are free
}

// Batch is one graft of an answer, with its days and its size.
type Batch struct {
	Ladder
	Graft
	Size
}

// For is its graft for queens who are ready by a day, or lay by then.
func (b Batch) For(day calendar.Day, laying bool) Graft {
	g := b.Graft
	g.Late = 1 - b.Laid.InTime(day, laying)
	return g
}

// Answer is what becomes of a wish.
type Answer struct {
	Wish    // with all that was found
	Rates   Rates
	Batches []Batch      // in the order of their grafts
	Free    int          // nucs that are free for one of its grafts: when the cells of the first are given, or later
	InTime  bool         // some graft day is in time; else Batches are of the first day there is that makes sense, and Nearest says what they are in time for
	Passed  calendar.Day // see [Back]
	Nearest calendar.Day
	Sizing  Sizing  // of one graft; why no number of larvae is enough, and what comes nearest
	Chances Chances // of how many queens are there by the day
	Then    Chances // where none is in time, of how many are there by Nearest; else as Chances
	Chance  float64 // of as many as are wished
	Instead Elsewhere
	Full    Full // the graft that would be in time, where this is the nearest that finds a nuc free, or none does

	shares []int // of the nucs, by graft, as they were parted
	first  int   // nucs that the first graft could have
}

// Elsewhere is the yard with most nucs, where no yard was named and another comes nearer to the
// wish: what it comes to there. Its zero value: none was passed over.
type Elsewhere struct {
	Yard   book.YardID
	Chance float64
}

// UsualApart is how many days lie between two grafts for one promise where nobody says: a habit of
// the week.
const UsualApart = 7

// Answer finds dates and amounts for a wish, or what becomes of a graft. An
// impossible wish gets the reason and what comes nearest. Where no yard is named the one
// with most nucs has it, and where that does not keep it the yard that comes nearest.
func (p *Planner) Answer(w Wish) (best Answer) {
	for i, y := range p.yardsFor(w) {
		w.Yard = y
		a := p.answer(p.filled(w))
		if i == 0 || a.nearer(best) {
			a.Instead = best.Instead
			if i > 0 && a.Instead.Yard.IsZero() {
				a.Instead = Elsewhere{best.Yard, best.Chance}
			}
			best = a
		}
		if best.Chance >= best.Sure-rounding {
			break
		}
	}
	return best
}

// nearer tells whether an answer comes nearer to the wish than another, as far as a reader is told:
// it is surer, else more queens are there by the day, else its graft gives more.
func (a Answer) nearer(than Answer) bool {
	near := func(of Answer) []float64 {
		return []float64{math.Round(100 * of.Chance), math.Round(of.Chances.Mean()), math.Round(of.Then.Mean())}
	}
	return slices.Compare(near(a), near(than)) > 0
}

func (p *Planner) answer(w Wish) Answer {
	a := Answer{Wish: w, Rates: p.rates()}
	a.Rates.Laying, a.Rates.kept = w.Laying, thinned{}
	last := p.last(&a)
	var ladders []Ladder
	for i := max(1, w.Grafts) - 1; i > 0; i-- {
		day := last.Day - calendar.Day(i*w.Apart)
		ladders = append(ladders, p.Ladder(p.graftOf(w, day), cellsGuess(w), w.Yard))
	}
	ladders = append(ladders, last)
	p.size(&a, ladders)
	a.Rates.kept = nil
	return a
}

// place parts the nucs that the keeper means to use among the grafts: as evenly as their
// coming free allows, so that a later graft has some besides those which earlier ones
// leave. Where he says the larvae graft by graft, each in its turn has a nuc for each of
// them, as far as there are any. Those he has beyond what is free are there for all.
// First is how many the first graft could have.
func (p *Planner) place(a *Answer, ladders []Ladder, grafts []Graft) (first int) {
	a.shares = make([]int, len(grafts))
	until := ladders[len(ladders)-1].InNucs(Size{}).To
	free := make([]int, len(ladders))
	for i, l := range ladders {
		free[i] = p.Free(a.Yard, l.Rung(MakeUpNucs).Best, until, a.Not)
		a.Free = max(a.Free, free[i])
	}
	a.Nucs = cmp.Or(a.Nucs, a.Free)
	more, left, there := max(0, a.Nucs-a.Free), a.Nucs, 0
	Again(ladders, grafts)
	for i := range grafts {
		there = max(there, free[i]+more)
		if grafts[i].Again {
			left = a.Nucs
		}
		sharing := len(turnsOf(grafts[i:])[0])
		share := (left + sharing - 1) / sharing
		if a.OneByOne() {
			share = min(left, a.larvaeOf(i, a.Larvae))
		}
		a.shares[i] = min(share, max(0, there-(a.Nucs-left)))
		left -= a.shares[i]
	}
	return min(a.Nucs, free[0]+more)
}

// Again says of each graft of one wish, in their order, whether the queens of all before it are ready, most probably
// the last of them too, before nucs are made up for it: so it has all the nucs once more.
func Again(ladders []Ladder, grafts []Graft) {
	for i := 1; i < len(grafts); i++ {
		grafts[i].Again = ladders[i-1].Rung(Ready).By <= ladders[i].Rung(MakeUpNucs).Best
	}
}

// Turns is how many times its grafts have the nucs, one after the other.
func (a Answer) Turns() (n int) {
	for i, b := range a.Batches {
		if i == 0 || b.Graft.Again {
			n++
		}
	}
	return n
}

// Insured is how sure it would be if one graft of Sizing.Larvae had all nucs, and the
// others were grafted only where it fails; 0 where that is no surer than the grafts as
// they are, these are as sure as is wished, or the first has not all the nucs.
func (a Answer) Insured() float64 {
	second := a.Sizing.Second.AtLeast(a.Queens)
	if len(a.Batches) < 2 || a.first < a.Nucs || a.Turns() > 1 || !a.InTime || a.OneByOne() || a.Chance >= a.Sure-rounding || second <= a.Chance {
		return 0
	}
	return second
}

// filled is a wish with what is usual for what is left open.
func (p *Planner) filled(w Wish) Wish {
	if w.Sure == 0 {
		w.Sure = p.numbers.Get(practice.PlanSure)
	}
	if w.Apart == 0 {
		w.Apart = UsualApart
	}
	if w.From == 0 {
		w.From = p.view.Today() + 1
	}
	if w.Yard.IsZero() {
		w.Yard = p.YardOfMostNucs()
	}
	return w
}

// cellsGuess is how many cells a batch is taken to have for its clock while its
// size is not known: twice what is wished for. Once it is, its ladder is [Planner.Sized].
func cellsGuess(w Wish) int { return cmp.Or(w.Larvae, max(2*w.Queens, 1)) }

// before is how many days the first graft of a wish is before the last one.
func (w Wish) before() calendar.Day { return calendar.Day((max(1, w.Grafts) - 1) * w.Apart) }

// last is the ladder of the last graft: as long after the day that was said for the
// first as the grafts between need, else the latest in time.
func (p *Planner) last(a *Answer) Ladder {
	before := a.before()
	first := a.From + before
	if a.Graft != 0 {
		l := p.Ladder(p.graftOf(a.Wish, a.Graft+before), cellsGuess(a.Wish), a.Yard)
		a.Nearest = p.inTimeFor(l, a.Laying)
		if a.By == 0 {
			a.By = a.Nearest
		}
		a.InTime = a.Nearest <= a.By
		return l
	}
	l, ok := p.Backward(a.By, a.Laying, cellsGuess(a.Wish), a.Yard, first)
	a.InTime, a.Nearest, a.Graft, a.Passed = ok, p.inTimeFor(l.Ladder, a.Laying), l.Day-before, l.Passed
	return l.Ladder
}

// graftOf is the hour of a graft of a wish on a day.
func (p *Planner) graftOf(w Wish, d calendar.Day) time.Time {
	if w.Minute > 0 {
		return d.At(w.Minute/60, w.Minute%60, p.view.Zone())
	}
	return p.GraftAt(d)
}

// inTimeFor is the first day by which the queens of a ladder are in time.
func (p *Planner) inTimeFor(l Ladder, laying bool) calendar.Day {
	if share := p.numbers.Get(practice.PlanInTime); laying {
		return l.Laid.Day(share)
	} else {
		return l.Laid.ReadyDay(share)
	}
}

// size finds how many larvae, and what comes of them by the day. What is not in time is
// sized for the nearest day, for which it is offered.
func (p *Planner) size(a *Answer, ladders []Ladder) {
	z := sizing{a: a, open: a.Nucs == 0, grafts: make([]Graft, len(ladders))}
	z.by(a.Day(), ladders)
	a.first = p.place(a, ladders, z.grafts)
	z.shares = a.shares
	found := a.Larvae == 0
	switch {
	case a.Larvae == 0:
		z.find()
	case len(ladders) > 1 && !a.OneByOne():
		a.Sizing.Larvae, a.Sizing.Second = a.Larvae, z.second(a.Larvae)
	}
	if z.open && a.Sizing.Limit == NoLimit && len(z.grafts) == 1 {
		z.fewestNucs()
	}
	if found && !a.InTime {
		a.Sizing.Limit = LateLimit
	}
	a.Then = z.with(a.Larvae)
	if !a.InTime {
		z.by(a.By, ladders)
	}
	a.Chances = z.with(a.Larvae)
	a.Chance = a.Chances.AtLeast(a.Queens)
	if a.Sizing.Limit != NoLimit {
		a.Sizing.Most = a.Chances.Promise(a.Sure) // by the day, and with all grafts
	}
	for i, l := range ladders {
		s := p.sizeOf(a, z.grafts[i])
		if done, planned := p.view.BatchPlan(a.Not); planned && i == 0 {
			s = s.without(done)
		}
		a.Batches = append(a.Batches, Batch{p.Sized(l, max(1, s.Larvae), s.Nucs, a.Yard), z.grafts[i], s})
	}
}

// Day is the day for which a wish is sized: the nearest, where none is in time for its own.
func (a Answer) Day() calendar.Day {
	if a.InTime {
		return a.By
	}
	return max(a.By, a.Nearest)
}

// sizeOf is what is to be expected of one graft, for what it eats: who comes too late for a
// wish is caught and caged as well.
func (p *Planner) sizeOf(a *Answer, g Graft) Size {
	s := Size{Larvae: g.Larvae, Nucs: g.Nucs, Line: a.Line, Yard: a.Yard, Not: a.Not}
	s.Takes, s.Cells = a.Rates.Takes(g.Larvae), a.Rates.Ripe(g.Larvae)
	along := a.Rates.Along(Graft{Larvae: g.Larvae, Nucs: g.Nucs})
	last := along[len(along)-1]
	s.Queens = last.Chances.Mean()
	s.Incubated, s.Virgins = p.incubated(s.Cells), a.Rates.Virgins
	s.Caged = max(int(math.Ceil(last.Chances.Mean())), last.Likely())
	return s
}
