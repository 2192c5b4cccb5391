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
	low, high float64    // nine in ten times more than low and less than high, where it is only expected
}

// stream is a batch as a lane draws it.
type stream struct {
	*book.Batch
	stages     []stage
	ends       time.Time
	flightFrom time.Time // mating flights
	flightBy   time.Time
}

// streamOf reckons a batch's stream: what was counted up to the reading's
// instant, what is to be expected after it by the keeper's rates.
func streamOf(r *state.Reading, b *book.Batch) stream {
	f := flow{r: r, b: b, now: r.View.On(), zone: r.View.Zone(), numbers: r.Numbers(), s: stream{Batch: b}}
	f.inTheBuilder()
	emerges := r.Course.Emerges(b.Batch)
	f.s.flightFrom = f.after(emerges, practice.FirstMatingFlightFrom)
	f.s.flightBy = f.after(emerges, practice.FirstMatingFlightBy)
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
	f.s.stages = append(f.s.stages, stage{at: at, n: v, fill: c.fill, line: c.line, label: c.label(v), low: v, high: v})
}

// expected adds what is left of the stage before by a rate of the keeper's,
// with the luck of the draw and that of the whole batch.
func (f *flow) expected(at time.Time, rate practice.Key, c stageLook) {
	n, p := f.last(), 1.0
	if rate != 0 {
		p = f.numbers.Get(rate)
		luck := n * f.numbers.Get(practice.BatchLuck)
		f.spread = f.spread*p*p + n*p*(1-p) + luck*luck*p*(1-p)
	}
	const tenth = 1.28 // a normal value is below -1.28 or above 1.28 once in ten each
	sd := tenth * math.Sqrt(f.spread)
	f.s.stages = append(f.s.stages, stage{
		at: at, n: n * p, fill: c.fill, line: c.line, label: c.label(n * p),
		low: max(0, n*p-sd), high: n*p + sd,
	})
}

// stageLook is how a stage looks and what it is called.
type stageLook struct {
	fill, line scene.Role
	word       string
}

func look(c scene.Condition, word string) stageLook { return stageLook{c.Fill(), c.Line(), word} }

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
	raw := stageLook{scene.Off, scene.Ink3, "grafted"}
	f.counted(b.At.Instant, b.Larvae, raw)
	raw.word = ""
	if b.Taken.Counted() {
		f.counted(b.Taken.At.Instant, b.Taken.N, raw)
	} else {
		f.expected(f.after(b.At.Instant, practice.AcceptedCheck), practice.Take, raw)
	}
	if b.Capped.Counted() {
		f.counted(b.Capped.At.Instant, b.Capped.N, look(scene.Cell, "capped"))
	} else {
		f.expected(f.after(b.At.Instant, practice.GraftToCapped), practice.RipeOfTakes, look(scene.Cell, "capped"))
	}
}

// inNucs are the stages from the emergence on.
func (f *flow) inNucs(emerges time.Time) {
	lives := f.r.Lives(f.b.Batch)
	if emerges.After(f.now) {
		f.expected(emerges, practice.EmergedOfCells, look(scene.Virgin, "emerge"))
	} else {
		f.counted(emerges, lives.Alive(emerges), look(scene.Virgin, "emerged"))
	}
	f.laying(emerges, lives)
	f.s.ends = f.after(f.s.stages[len(f.s.stages)-1].at, practice.ReadyAfterFirstEgg)
}

// laying are the stages from the look for eggs on.
func (f *flow) laying(emerges time.Time, lives state.Lives) {
	laid, alive := lives.Laid(f.now), lives.Alive(f.now)
	eggs := f.after(emerges, practice.FirstEggsNineInTenBy)
	worth := f.after(emerges, practice.LookForEggsFrom)
	switch {
	case worth.After(f.now):
		f.expected(worth, 0, look(scene.Due, ""))
		f.expected(eggs, practice.LayingOfAccepted, look(scene.Laying, "laying"))
	case laid < alive:
		f.counted(worth, alive, look(scene.Due, ""))
		f.s.stages[len(f.s.stages)-1].label = thousands(laid) + " of " + thousands(alive) + " laying"
		eggs = later(f.now, eggs)
		f.expected(eggs, practice.LayingOfAccepted, look(scene.Laying, "laying"))
	default:
		eggs = later(lives.FirstEggs(), worth)
		f.counted(eggs, laid, look(scene.Laying, "laying"))
	}
	capped := f.after(eggs, practice.EggToCappedWorkerBrood)
	if capped.After(f.now) {
		f.expected(capped, 0, look(scene.GoodBrood, "brood"))
	} else {
		f.counted(capped, laid, look(scene.GoodBrood, "brood"))
	}
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
