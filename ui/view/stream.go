package view

import (
	"math"
	"time"

	"lidmark/domain/book"
	"lidmark/domain/calendar"
	"lidmark/domain/practice"
	"lidmark/ui/scene"
	"lidmark/ui/state"
)

// stage is a step in the life of a batch: from when on how many are alive, and
// as what.
type stage struct {
	at        time.Time
	n         float64
	fill      scene.Role // as counted
	line      scene.Role // edge, and hatch while only expected
	label     string     // "34 grafted"; none where it goes without saying
	word      string     // what they are then
	low, high float64    // nine in ten times more than low and less than high, where it is only expected
	counted   bool       // somebody counted them, or the book proves how many there are
}

// stream is a batch as a lane draws it.
type stream struct {
	*book.Batch
	stages     []stage
	ends       time.Time
	flightFrom time.Time // mating flights
	flightBy   time.Time
	eggsFrom   time.Time // look for eggs
	eggsBy     time.Time
	laying     []time.Time // when each was first seen laying, while others were not
}

// streamOf reckons a batch's stream: what was counted up to the reading's
// instant, what is to be expected after it by the keeper's rates.
func streamOf(r *state.Reading, b *book.Batch) stream {
	f := flow{r: r, b: b, now: r.View.On(), zone: r.View.Zone(), numbers: r.OwnNumbers(), s: stream{Batch: b}}
	f.inTheBuilder()
	emerges := r.Course.Emerges(b.Batch)
	f.s.flightFrom = r.DayOf(f.after(emerges, practice.FirstMatingFlightFrom)).Start(f.zone) // they fly by daylight
	f.s.flightBy = f.after(emerges, practice.FirstMatingFlightBy)
	f.s.eggsFrom, f.s.eggsBy = f.after(emerges, practice.LookForEggsFrom), f.after(emerges, practice.FirstEggsNineInTenBy)
	f.inNucs(emerges)
	return f.s
}

// flow is a stream being reckoned.
type flow struct {
	r       *state.Reading
	b       *book.Batch
	now     time.Time
	zone    *time.Location
	numbers practice.Numbers
	s       stream
	spread  float64 // the variance of what is expected, in queens
}

func (f *flow) after(t time.Time, k practice.Key) time.Time { return t.Add(f.numbers.Duration(k)) }

func (f *flow) last() float64 {
	if n := len(f.s.stages); n > 0 {
		return f.s.stages[n-1].n
	}
	return 0
}

// counted adds what somebody counted.
func (f *flow) counted(at time.Time, n int, c stageLook) {
	v := float64(n)
	f.spread = 0
	f.s.stages = append(f.s.stages, stage{at: at, n: v, fill: c.fill, line: c.line, label: c.label(v), word: c.is, low: v, high: v, counted: true})
}

// expected adds what is left of the stage before by a rate of the keeper's.
func (f *flow) expected(at time.Time, rate practice.Key, c stageLook) {
	f.expectedOf(at, rate, f.last(), c)
}

// expectedOf adds what is left where the rate is asked of so many of the stage
// before; the others are sure to come through.
func (f *flow) expectedOf(at time.Time, rate practice.Key, asked float64, c stageLook) {
	f.expectedFrom(at, rate, f.last()-asked, asked, c)
}

// expectedFrom adds what is left by a rate of those asked, besides those that are
// sure.
func (f *flow) expectedFrom(at time.Time, rate practice.Key, sure, asked float64, c stageLook) {
	n := asked
	if rate != 0 {
		n, f.spread = link{f.numbers.Get(rate), f.luck(rate)}.of(asked, f.spread)
	}
	n += sure
	const tenth = 1.28 // a normal value is below -1.28 or above 1.28 once in ten each
	sd := tenth * math.Sqrt(f.spread)
	f.s.stages = append(f.s.stages, stage{
		at: at, n: n, fill: c.fill, line: c.line, label: c.label(n), word: c.is,
		low: max(0, n-sd), high: min(n+sd, f.s.stages[len(f.s.stages)-1].high),
	})
}

// luck is how far the rate of a whole batch strays from the keeper's: take and
// mating share the graft and the weather, the other links do not.
func (f *flow) luck(rate practice.Key) float64 {
	if rate == practice.Take || rate == practice.LayingOfAccepted {
		return f.numbers.Get(practice.BatchLuck)
	}
	return 0
}

// link is a step that each comes through with a chance that is itself shared by
// the batch: its mean, and its standard deviation between batches.
type link struct{ mean, luck float64 }

// of is how many come through, and their variance, of so many with a variance:
// by the law of total variance over the number and the chance.
func (l link) of(n, variance float64) (mean, spread float64) {
	p, s := l.mean, l.luck*l.luck
	return n * p, n*(p*(1-p)-s) + variance*(p*p+s) + n*n*s
}

// stageLook is how a stage looks and what it is called.
type stageLook struct {
	fill, line scene.Role
	word       string // in its label; "" where that goes without saying
	is         string // what they are, in full
}

func look(c scene.Condition, word, is string) stageLook {
	return stageLook{c.Fill(), c.Line(), word, is}
}

// label is what stands below a stage of n.
func (c stageLook) label(n float64) string {
	if c.word == "" || math.Round(n) == 0 {
		return ""
	}
	return thousands(int(math.Round(n))) + " " + c.word
}

// inTheBuilder are the stages up to the capped cells.
func (f *flow) inTheBuilder() {
	b := f.b
	raw := stageLook{scene.Off, scene.Ink3, "grafted", "larvae grafted"}
	f.counted(b.At.Instant, b.Larvae, raw)
	raw.word, raw.is = "", "cells taken"
	if b.Taken.Counted() {
		f.counted(b.Taken.At.Instant, b.Taken.N, raw)
	} else {
		f.expected(f.after(b.At.Instant, practice.AcceptedCheck), practice.Take, raw)
		f.atLeast(max(b.Capped.N, f.ripe()))
	}
	capped := look(scene.Cell, "capped", "capped cells")
	switch {
	case b.Capped.Counted():
		f.counted(b.Capped.At.Instant, b.Capped.N, capped)
	case b.Ripe.Counted():
		f.counted(b.Ripe.At.Instant, f.ripe(), capped)
	default:
		f.expected(f.after(b.At.Instant, practice.GraftToCapped), practice.RipeOfTakes, capped)
	}
}

// ripe is how many cells the ripe ones were when they were counted, those given before
// among them; 0 where nobody counted.
func (f *flow) ripe() int {
	if !f.b.Ripe.Counted() {
		return 0
	}
	return max(f.b.Ripe.N, f.b.Living())
}

// atLeast is what the last stage must have been, since so many were counted after it.
func (f *flow) atLeast(counted int) {
	s, n := &f.s.stages[len(f.s.stages)-1], float64(counted)
	s.n, s.low, s.high = max(s.n, n), max(s.low, n), max(s.high, n)
}

// inNucs are the stages from the emergence on.
func (f *flow) inNucs(emerges time.Time) {
	lives := f.r.Lives(f.b.Batch)
	if emerges.After(f.now) {
		f.expectedFrom(emerges, practice.EmergedOfCells, 0, f.living(), look(scene.Virgin, "emerge", "virgins"))
	} else {
		f.counted(emerges, lives.Alive(emerges), look(scene.Virgin, "emerged", "virgins"))
	}
	f.laying(emerges, lives)
	f.s.ends = f.after(f.s.stages[len(f.s.stages)-1].at, practice.ReadyAfterFirstEgg)
}

// living is how many of the last stage's cells can emerge: what was culled, dropped
// or found dead since cannot.
func (f *flow) living() float64 {
	if f.b.Ripe.Counted() && !f.b.Capped.Counted() {
		return float64(f.b.Living())
	}
	return max(0, f.last()-float64(f.b.Cells()-f.b.Living()))
}

// shareInNucs is the share of the living cells that are in nucs, or for which there
// is one: who stays in a cage does not lay.
func (f *flow) shareInNucs() float64 {
	living := f.b.Living()
	if living == 0 {
		return 1
	}
	without := len(f.b.Caged) + f.b.Out + f.r.WithoutNuc(f.b.Batch)
	return float64(max(0, living-without)) / float64(living)
}

// laying are the stages from the look for eggs on.
func (f *flow) laying(emerges time.Time, lives state.Lives) {
	laid, alive := lives.Laid(f.now), lives.Alive(f.now)
	eggs := f.after(emerges, practice.FirstEggsNineInTenBy)
	worth := f.after(emerges, practice.LookForEggsFrom)
	switch {
	case worth.After(f.now):
		due := look(scene.Due, "", "queens due for a look")
		if emerges.Before(f.now) {
			f.expectedOf(worth, practice.AcceptCell, float64(lives.Unseen(f.now)), due)
		} else {
			share := f.shareInNucs()
			f.spread *= share * share
			f.expectedFrom(worth, practice.AcceptCell, 0, f.last()*share, due)
		}
		f.expected(eggs, practice.LayingOfAccepted, look(scene.Laying, "laying", "laying queens"))
	case laid < alive:
		f.partlySeen(lives, worth, laid, alive)
		if unseen := lives.Unseen(f.now); unseen > 0 {
			f.expectedOf(f.now, practice.AcceptCell, float64(unseen), look(scene.Due, "", "queens due for a look"))
		}
		eggs = later(f.now, eggs)
		f.expectedOf(eggs, practice.LayingOfAccepted, f.last()-float64(laid), look(scene.Laying, "expected", "laying queens"))
	default:
		eggs = later(lives.FirstEggs(), worth)
		f.counted(eggs, laid, look(scene.Laying, "laying", "laying queens"))
	}
	capped := f.after(eggs, practice.EggToCappedWorkerBrood)
	if capped.After(f.now) {
		f.expected(capped, 0, look(scene.GoodBrood, "brood", "queens with capped brood"))
	} else {
		f.counted(capped, laid, look(scene.GoodBrood, "brood", "queens with capped brood"))
	}
}

// partlySeen adds the stage in which some were seen laying and others not yet.
func (f *flow) partlySeen(lives state.Lives, worth time.Time, laid, alive int) {
	f.counted(worth, alive, look(scene.Due, "", "queens due for a look"))
	if laid == 0 {
		f.s.stages[len(f.s.stages)-1].label = "none of " + thousands(alive) + " seen laying"
		return
	}
	f.s.laying = lives.Eggs(f.now)
	s := &f.s.stages[len(f.s.stages)-1]
	s.label = thousands(laid) + " of " + thousands(alive) + " seen laying"
	s.word = "queens, " + thousands(laid) + " of them seen laying"
}

func later(a, b time.Time) time.Time {
	if a.After(b) {
		return a
	}
	return b
}

// instantX is where an instant lies in the ribbon.
func instantX(r state.Ribbon, t time.Time, zone *time.Location) float64 {
	d := calendar.DayOf(t, zone)
	return r.Left(d) + r.Column*t.Sub(d.Start(zone)).Hours()/24
}
